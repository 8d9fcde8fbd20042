package org.lapwright.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** What has to hold for every session. */
class JudgeLawTest {
    private static final RunPlan PLAN = RunPlan.parse("ABBA x 8");

    @Provide
    Arbitrary<Session> sessions() {
        return Combinators.combine(Arbitraries.longs(), Arbitraries.of(0.0, -0.01, 0.02, -0.03))
                .as((seed, effect) -> SessionNoise.REALISTIC.session(PLAN, effect, new SplittableRandom(seed)));
    }

    /** Anything a list of laps can hold: few, many, alike, absurd. */
    @Provide
    Arbitrary<Session> wildSessions() {
        Arbitrary<Double> anyLap = Arbitraries.oneOf(
                Arbitraries.doubles()
                        .between(TimedLap.SHORTEST_S, TimedLap.LONGEST_S)
                        .ofScale(3),
                Arbitraries.doubles().between(6.5, 7.5).ofScale(3),
                Arbitraries.of(7.0, 7.0, 7.001, 14.0, 0.001, 3600.0));
        Arbitrary<DrivenRun> run = Combinators.combine(
                        Arbitraries.of(Side.class), anyLap.list().ofMaxSize(25))
                .as((side, laps) -> new DrivenRun(
                        side,
                        TimedRun.of(
                                laps.stream().mapToDouble(Double::doubleValue).toArray())));
        return run.list().ofMaxSize(6).map(Session::new);
    }

    @Property(tries = 100)
    void swappingTheSidesMirrorsTheVerdict(@ForAll("sessions") Session session) {
        Session swapped = new Session(session.runs().stream()
                .map(run -> new DrivenRun(run.side() == Side.BEFORE ? Side.AFTER : Side.BEFORE, run.run()))
                .toList());
        Verdict straight = Judge.judge(session, TrialSettings.DEFAULT);
        Verdict mirrored = Judge.judge(swapped, TrialSettings.DEFAULT);
        assertThat(mirrored.decision())
                .isEqualTo(
                        switch (straight.decision()) {
                            case FASTER -> Decision.SLOWER;
                            case SLOWER -> Decision.FASTER;
                            case LEVEL -> Decision.LEVEL;
                            case MORE_LAPS -> Decision.MORE_LAPS;
                        });
        assertThat(mirrored.decidedAtLap()).isEqualTo(straight.decidedAtLap());
        if (straight.difference().isPresent()) {
            double factor = 1 + straight.difference().get().share();
            assertThat(1 + mirrored.difference().orElseThrow().share()).isCloseTo(1 / factor, within(1e-6));
        }
    }

    @Property(tries = 100)
    void aTenthSlowerTrackChangesNoShare(@ForAll("sessions") Session session) {
        Session slower = new Session(session.runs().stream()
                .map(run -> new DrivenRun(
                        run.side(),
                        TimedRun.of(run.run().laps().stream()
                                .mapToDouble(lap -> 1.1 * lap.seconds())
                                .toArray())))
                .toList());
        Verdict straight = Judge.judge(session, TrialSettings.DEFAULT);
        Verdict scaled = Judge.judge(slower, TrialSettings.DEFAULT);
        assertThat(scaled.decision()).isEqualTo(straight.decision());
        if (straight.difference().isPresent()) {
            assertThat(scaled.difference().orElseThrow().share())
                    .isCloseTo(straight.difference().get().share(), within(1e-7));
        }
    }

    @Property(tries = 100)
    void aLapThatIsLeftOutMovesNothing(
            @ForAll("sessions") Session session,
            @ForAll @IntRange(max = 3) int run,
            @ForAll @IntRange(max = 8) int at,
            @ForAll long seed) {
        double odd = 0.5 + 30 * new SplittableRandom(seed).nextDouble();
        List<DrivenRun> runs = new ArrayList<>(session.runs());
        TimedRun old = runs.get(run).run();
        List<TimedLap> laps = new ArrayList<>(old.laps());
        laps.add(Math.min(at, laps.size()), new TimedLap(99, odd));
        runs.set(
                run,
                new DrivenRun(
                        runs.get(run).side(), new TimedRun(laps, List.of(new Overrule(99, LapKind.SLOW, "a cat")))));
        Verdict straight = Judge.judge(session, TrialSettings.DEFAULT);
        Verdict with = Judge.judge(new Session(runs), TrialSettings.DEFAULT);
        assertThat(with.decision()).isEqualTo(straight.decision());
        assertThat(with.difference()).isEqualTo(straight.difference());
        assertThat(with.consistency().flatMap(Consistency::spreadRatio))
                .isEqualTo(straight.consistency().flatMap(Consistency::spreadRatio));
    }

    @Property(tries = 300)
    void nothingIsEverNotANumber(@ForAll("wildSessions") Session session, @ForAll boolean byHand) {
        Verdict verdict = Judge.judge(session, TrialSettings.DEFAULT.withHandTimed(byHand));
        verdict.difference().ifPresent(difference -> {
            assertThat(difference.seconds()).isFinite();
            assertThat(difference.intervalS().low()).isNotNaN();
            assertThat(difference.intervalS().high()).isNotNaN();
            assertThat(difference.intervalS().contains(difference.seconds())).isTrue();
        });
        verdict.consistency()
                .flatMap(Consistency::spreadRatio)
                .ifPresent(ratio -> assertThat(ratio).isFinite());
        verdict.working().ifPresent(working -> assertThat(working.lapScatter()).isPositive());
        for (JudgedRun run : verdict.runs()) {
            run.stint().paceS().ifPresent(pace -> assertThat(pace).isFinite());
            run.stint().timePerLapS().ifPresent(time -> assertThat(time).isFinite());
        }
        assertThat(verdict.decision()).isNotNull();
    }

    @Property(tries = 50)
    void oneMissedPassMovesNothingUnlessABorderlineLapChangesItsKind(@ForAll("sessions") Session session) {
        List<DrivenRun> runs = new ArrayList<>(session.runs());
        DrivenRun last = runs.get(3);
        double[] seconds = DoubleStream.concat(
                        last.run().laps().stream().mapToDouble(TimedLap::seconds), DoubleStream.of(14.02))
                .toArray();
        runs.set(3, new DrivenRun(last.side(), TimedRun.of(seconds)));
        Verdict straight = Judge.judge(session, TrialSettings.DEFAULT);
        Verdict with = Judge.judge(new Session(runs), TrialSettings.DEFAULT);
        if (straight.difference().isPresent()) {
            Difference before = straight.difference().get();
            double width =
                    before.intervalShare().high() - before.intervalShare().low();
            double allowed = countingLaps(straight).equals(countingLaps(with)) ? 1e-12 : 0.25 * width;
            assertThat(with.difference().orElseThrow().share()).isCloseTo(before.share(), within(allowed));
        }
    }

    private static List<String> countingLaps(Verdict verdict) {
        return verdict.runs().stream()
                .map(run -> run.stint().laps().stream()
                        .filter(Lap::counts)
                        .map(lap -> Integer.toString(lap.number()))
                        .collect(Collectors.joining(" ")))
                .toList();
    }
}
