package org.lapwright.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.stats.model.RunGls;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

class JudgeTest {
    private static TimedRun alike(double seconds, int laps) {
        return TimedRun.of(DoubleStream.generate(() -> seconds).limit(laps).toArray());
    }

    @Test
    void nothingDrivenIsNotEnough() {
        Verdict verdict = Judge.judge(new Session(List.of()), TrialSettings.DEFAULT);
        assertThat(verdict.decision()).isEqualTo(Decision.MORE_LAPS);
        assertThat(verdict.difference()).isEmpty();
        assertThat(verdict.caveats()).containsExactly(Caveat.TOO_FEW_LAPS);
        assertThat(verdict.needed().eachWay()).hasValue(5);
    }

    @Test
    void fiveLapsASideGiveAFirstLook() {
        SplittableRandom random = new SplittableRandom(3);
        Session four = SessionNoise.INDEPENDENT.session(RunPlan.parse("AB x 4"), -0.2, random);
        assertThat(Judge.judge(four, TrialSettings.DEFAULT).difference()).isEmpty();
        Session six = SessionNoise.INDEPENDENT.session(RunPlan.parse("AB x 6"), -0.2, random);
        Verdict verdict = Judge.judge(six, TrialSettings.DEFAULT);
        assertThat(verdict.difference()).isPresent();
        assertThat(verdict.caveats()).contains(Caveat.ONE_RUN_A_SIDE, Caveat.PLAN_AS_DRIVEN);
    }

    @Test
    void aLookThatSaysNothingLeavesTheOneBefore() {
        Session session = new Session(List.of(
                new DrivenRun(Side.BEFORE, TimedRun.of(6.5, 6.5, 6.5, 6.5, 6.5)),
                new DrivenRun(Side.AFTER, TimedRun.of(6.5, 6.5, 6.5, 6.5, 6.891, 0.001)),
                new DrivenRun(Side.BEFORE, TimedRun.of()),
                new DrivenRun(Side.BEFORE, TimedRun.of(6.518, 6.629, 6.5, 0.127, 0.037, 0.069))));
        Verdict verdict = Judge.judge(session, TrialSettings.DEFAULT.withHandTimed(true));
        assertThat(verdict.difference()).isPresent();
        assertThat(verdict.consistency()).isPresent();
    }

    @Test
    void lapsWithoutAnyScatterAreJudgedByTheClock() {
        Verdict verdict = Judge.judge(Session.of(alike(7.0, 20), alike(6.8, 20)), TrialSettings.DEFAULT);
        assertThat(verdict.decision()).isEqualTo(Decision.FASTER);
        assertThat(verdict.caveats()).contains(Caveat.NO_SCATTER);
        assertThat(verdict.consistency().orElseThrow().spreadRatio()).isEmpty();
    }

    @Test
    void noDifferenceAtAllIsLevel() {
        Verdict verdict = Judge.judge(Session.of(alike(7.001, 30), alike(7.001, 30)), TrialSettings.DEFAULT);
        assertThat(verdict.decision()).isEqualTo(Decision.LEVEL);
        assertThat(verdict.needed()).isEqualTo(LapsNeeded.NONE);
    }

    @Test
    void laterLapsNeverTakeAVerdictBack() {
        RunPlan plan = RunPlan.parse("ABBAAB x 10");
        for (int seed = 0; seed < 40; seed++) {
            Session session = SessionNoise.REALISTIC.session(plan, -0.012, new SplittableRandom(seed));
            Verdict end = Judge.judge(session, TrialSettings.DEFAULT.withPlan(plan));
            if (end.decidedAtLap().isPresent()) {
                int lap = end.decidedAtLap().getAsInt();
                Verdict then = Judge.judge(session.upTo(lap), TrialSettings.DEFAULT.withPlan(plan));
                assertThat(then.decision()).isEqualTo(end.decision());
                assertThat(Judge.judge(session.upTo(lap - 1), TrialSettings.DEFAULT.withPlan(plan))
                                .decision())
                        .isEqualTo(Decision.MORE_LAPS);
            }
        }
    }

    @Test
    void aSmallDifferenceNeedsMoreLapsThanALargeOne() {
        RunPlan plan = RunPlan.parse("ABBAAB x 10");
        int compared = 0;
        for (int seed = 0; seed < 20; seed++) {
            Session session = SessionNoise.REALISTIC
                    .session(plan, -0.015, new SplittableRandom(seed))
                    .upTo(26);
            Verdict verdict = Judge.judge(session, TrialSettings.DEFAULT.withPlan(plan));
            double found = Math.abs(verdict.difference().orElseThrow().share());
            if (verdict.decision() == Decision.MORE_LAPS && found > 2 * TrialSettings.DEFAULT.levelMargin()) {
                int each = verdict.needed().eachWay().orElse(LapsNeeded.BEYOND_REASON - 1);
                assertThat(each).isPositive();
                assertThat(verdict.needed().forMargin().orElse(LapsNeeded.BEYOND_REASON))
                        .isGreaterThan(each);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(5);
    }

    /** What is forecast has to come about as often as it says: 80 % of sessions are decided after so many laps. */
    @Test
    void theForecastIsTrueToItsPower() {
        NoisePrior usual = NoisePrior.DEFAULT;
        double gain = Math.log1p(-0.0145);
        // The scatter of a lap with its autocorrelation: what SessionNoise adds of its own, over the root of 1 - 0.3².
        double scatter = SessionNoise.REALISTIC.scatter() / Math.sqrt(1 - 0.3 * 0.3);
        Forecast forecast = new Forecast(new RunGls(usual.autocorrelation(), usual.runShare()), 0.05, scatter);
        int eachWay = forecast.newSession(gain).orElseThrow();
        int lapsPerRun = (eachWay + 1) / 2;
        RunPlan plan = RunPlan.parse("ABBA x " + lapsPerRun);
        int decided = 0;
        int sessions = 400;
        for (int seed = 0; seed < sessions; seed++) {
            Session session = SessionNoise.REALISTIC.session(plan, gain, new SplittableRandom(900 + seed));
            decided +=
                    Judge.judge(session, TrialSettings.DEFAULT.withPlan(plan)).decision() == Decision.FASTER ? 1 : 0;
        }
        assertThat(decided / (double) sessions)
                .as("found with %d laps each way, forecast for 0.8", eachWay)
                .isBetween(0.68, 0.92);
    }

    @Test
    void drivingAfterFirstIsSaid() {
        Session session = SessionNoise.REALISTIC.session(RunPlan.parse("BA x 12"), 0, new SplittableRandom(5));
        assertThat(Judge.judge(session, TrialSettings.DEFAULT).caveats()).contains(Caveat.AFTER_FIRST);
    }

    @Test
    void aPlanIsReadAsPeopleWriteIt() {
        assertThat(RunPlan.parse("abba X 10").text()).isEqualTo("ABBA x 10");
        assertThat(RunPlan.parse("A B B A × 8 laps").text()).isEqualTo("ABBA x 8");
        assertThatThrownBy(() -> RunPlan.parse("ABBA")).hasMessageContaining("such as ABBA x 10");
        assertThatThrownBy(() -> RunPlan.parse("AAA x 10")).hasMessageContaining("needs A (before) and B (after)");
        assertThatThrownBy(() -> RunPlan.parse("AB x 0")).hasMessageContaining("from 3 to 500");
    }
}
