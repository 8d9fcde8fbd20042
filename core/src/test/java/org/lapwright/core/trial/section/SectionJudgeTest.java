package org.lapwright.core.trial.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.laps.pass.LapSplits;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.Judge;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** Sections of laps that were made up with a known change in one of them. */
class SectionJudgeTest {
    private static final RunPlan PLAN = RunPlan.parse("ABBA x 15");
    private static final TrialSettings SETTINGS = TrialSettings.DEFAULT.withPlan(PLAN);
    private static final double[] SECTIONS_S = {2.1, 1.4, 2.8};
    private static final double SCATTER = 0.01;

    private final List<DrivenRun> runs = new ArrayList<>();
    private final List<List<LapSplits>> splits = new ArrayList<>();

    /** Laps of three sections; the change takes seconds off the second. */
    private void drive(double gainS, SplittableRandom chance) {
        runs.clear();
        splits.clear();
        for (Side side : PLAN.order()) {
            List<LapSplits> laps = new ArrayList<>();
            for (int lap = 0; lap < PLAN.lapsPerRun(); lap++) {
                double[] sections = SECTIONS_S.clone();
                sections[1] -= side == Side.AFTER ? gainS : 0;
                for (int i = 0; i < sections.length; i++) {
                    sections[i] *= 1 + SCATTER * chance.nextGaussian();
                }
                laps.add(lap(sections));
            }
            run(side, laps);
        }
    }

    private void run(Side side, List<LapSplits> laps) {
        runs.add(new DrivenRun(
                side, TimedRun.of(laps.stream().mapToDouble(LapSplits::lapS).toArray())));
        splits.add(laps);
    }

    private static LapSplits lap(double... sections) {
        TreeMap<Integer, Double> at = new TreeMap<>();
        double sum = 0;
        for (int i = 0; i < sections.length - 1; i++) {
            sum += sections[i];
            at.put(i + 1, sum);
        }
        return new LapSplits(sum + sections[sections.length - 1], at);
    }

    private List<JudgedSection> judged() {
        return SectionJudge.judge(new Session(runs), splits, SETTINGS, Judge::judge);
    }

    @Test
    void theGainIsFoundWhereItIs() {
        drive(0.04, new SplittableRandom(3));
        List<JudgedSection> sections = judged();
        assertThat(sections).extracting(JudgedSection::number).containsExactly(1, 2, 3);
        assertThat(sections)
                .extracting(each -> each.verdict().decision())
                .containsExactly(Decision.MORE_LAPS, Decision.FASTER, Decision.MORE_LAPS);
        assertThat(sections.get(1).verdict().difference().orElseThrow().seconds())
                .isCloseTo(-0.04, within(0.012));
        assertThat(sections.get(1).verdict().difference().orElseThrow().confidence())
                .isCloseTo(1 - 0.05 / 3, within(1e-12));
    }

    /** Of all sessions with a change that does nothing, at most one in twenty may name any section. */
    @Test
    void sectionsTogetherFoolNobodyMoreOftenThanALap() {
        SplittableRandom chance = new SplittableRandom(11);
        int fooled = 0;
        for (int i = 0; i < 200; i++) {
            drive(0, chance);
            boolean any = judged().stream()
                    .anyMatch(each -> each.verdict().decision() == Decision.FASTER
                            || each.verdict().decision() == Decision.SLOWER);
            fooled += any ? 1 : 0;
        }
        assertThat(fooled).isLessThanOrEqualTo(10);
    }

    @Test
    void aLapThatCameOffAndAGateThatSawNothingLeaveTheirSectionsOut() {
        drive(0, new SplittableRandom(5));
        List<LapSplits> first = new ArrayList<>(splits.get(0));
        first.set(4, lap(2.1, 5.4, 2.8));
        TreeMap<Integer, Double> onlySecond = new TreeMap<>();
        onlySecond.put(2, 3.5);
        first.set(7, new LapSplits(6.3, onlySecond));
        runs.remove(0);
        splits.remove(0);
        List<DrivenRun> others = List.copyOf(runs);
        List<List<LapSplits>> otherSplits = List.copyOf(splits);
        runs.clear();
        splits.clear();
        run(Side.BEFORE, first);
        runs.addAll(others);
        splits.addAll(otherSplits);
        List<JudgedSection> sections = judged();
        assertThat(sections.get(0).verdict().before().laps()).hasSize(28);
        assertThat(sections.get(1).verdict().before().laps()).hasSize(28);
        assertThat(sections.get(2).verdict().before().laps()).hasSize(29);
        assertThat(sections.get(2).verdict().after().laps()).hasSize(30);
    }

    @Test
    void withoutASectionGateThereAreNoSections() {
        run(Side.BEFORE, List.of(lap(6), lap(6.1)));
        run(Side.AFTER, List.of(lap(6)));
        assertThat(judged()).isEmpty();
    }

    @Test
    void lapsAndSplitsHaveToBelongTogether() {
        run(Side.BEFORE, List.of(lap(2, 4)));
        splits.set(0, List.of());
        assertThatThrownBy(this::judged).hasMessageContaining("run 1 has 1 laps and splits of 0");
    }
}
