package org.lapwright.app.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.Caveat;
import org.lapwright.core.trial.Consistency;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.Difference;
import org.lapwright.core.trial.JudgedRun;
import org.lapwright.core.trial.LapsNeeded;
import org.lapwright.core.trial.Look;
import org.lapwright.core.trial.OffRates;
import org.lapwright.core.trial.SteadyDecision;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.Working;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;
import org.lapwright.core.units.Interval;

/** Comparisons and verdicts for tests of the store; the laps mean nothing. */
final class Sample {
    /** A verdict on nothing. */
    static final Verdict TOO_FEW = new Verdict(
            Decision.MORE_LAPS,
            Optional.empty(),
            Optional.empty(),
            new LapsNeeded(OptionalInt.empty(), false, OptionalInt.empty()),
            OptionalInt.empty(),
            stint(),
            stint(),
            List.of(),
            Optional.empty(),
            Set.of(Caveat.TOO_FEW_LAPS));

    private static final String[] TEXTS = {
        "Dunlin",
        "O'Brien \"the\" \\ car",
        "x'); DROP TABLE raw_lap; --",
        "Größe ½ № 7",
        "速い車",
        "🏎️👩‍🔧",
        "a%b_c",
        "<b>&amp;"
    };

    private Sample() {}

    /** One run a side on lane red of the Shed loop. */
    static KeptComparison of(String car, Side stays, double before, double after) {
        return on("Shed loop", car, stays, before, after);
    }

    /** A change by these words, driven. */
    static KeptComparison change(String car, String words, boolean stays) {
        KeptComparison plain = of(car, stays ? Side.AFTER : Side.BEFORE, 6.2, 6.1);
        return new KeptComparison(
                car,
                plain.track(),
                plain.lane(),
                plain.driver(),
                plain.conditions(),
                words,
                plain.stays(),
                plain.session(),
                plain.settings(),
                false);
    }

    static KeptComparison on(String track, String car, Side stays, double before, double after) {
        return new KeptComparison(
                car,
                track,
                "red",
                "driver",
                "",
                "changed",
                stays,
                Session.of(TimedRun.of(before), TimedRun.of(after)),
                TrialSettings.DEFAULT,
                false);
    }

    static KeptComparison example(KeptComparison kept) {
        return new KeptComparison(
                kept.car(),
                kept.track(),
                kept.lane(),
                kept.driver(),
                kept.conditions(),
                kept.change(),
                kept.stays(),
                kept.session(),
                kept.settings(),
                true);
    }

    /** A comparison with these texts. */
    static KeptComparison named(String car, String track, String lane, String driver, String change) {
        return new KeptComparison(
                car,
                track,
                lane,
                driver,
                "",
                change,
                Side.AFTER,
                Session.of(TimedRun.of(6.1), TimedRun.of(6.0)),
                TrialSettings.DEFAULT,
                false);
    }

    /** The same number gives the same comparison: any field may hold anything that it may hold. */
    static KeptComparison numbered(int number) {
        Random random = new Random(number);
        List<DrivenRun> runs = new ArrayList<>();
        for (int i = random.nextInt(5); i >= 0; i--) {
            runs.add(new DrivenRun(random.nextBoolean() ? Side.BEFORE : Side.AFTER, run(random)));
        }
        return new KeptComparison(
                text(random) + number % 7,
                text(random),
                random.nextBoolean() ? text(random) : "",
                random.nextBoolean() ? text(random) : "",
                random.nextBoolean() ? text(random) : "",
                random.nextBoolean() ? text(random) + "\n\tnumber " + number : "",
                random.nextBoolean() ? Side.BEFORE : Side.AFTER,
                new Session(runs),
                settings(random),
                random.nextInt(4) == 0);
    }

    private static String text(Random random) {
        return TEXTS[random.nextInt(TEXTS.length)];
    }

    private static TimedRun run(Random random) {
        List<TimedLap> laps = new ArrayList<>();
        List<Overrule> words = new ArrayList<>();
        for (int i = random.nextInt(8); i > 0; i--) {
            laps.add(new TimedLap(1 + random.nextInt(50), 0.001 + 100 * random.nextDouble()));
            if (random.nextInt(6) == 0) {
                LapKind kind = LapKind.values()[random.nextInt(LapKind.values().length)];
                words.add(new Overrule(1 + random.nextInt(50), kind, text(random)));
            }
        }
        return new TimedRun(laps, words);
    }

    private static TrialSettings settings(Random random) {
        Optional<RunPlan> plan = random.nextBoolean()
                ? Optional.of(new RunPlan(List.of(Side.BEFORE, Side.AFTER, Side.AFTER), 3 + random.nextInt(400)))
                : Optional.empty();
        return new TrialSettings(
                0.001 + 0.299 * random.nextDouble(),
                0.1 * random.nextDouble(),
                random.nextBoolean(),
                plan,
                new NoisePrior(
                        0.8 * random.nextDouble(),
                        1e6 * random.nextDouble(),
                        4 * random.nextDouble(),
                        random.nextInt(1000)));
    }

    /** A verdict with every part filled in, open ends and absent numbers among them. */
    static Verdict full() {
        Interval open = new Interval(Double.NEGATIVE_INFINITY, 0.25);
        return new Verdict(
                Decision.FASTER,
                Optional.of(new Difference(-0.1, open, -0.015, new Interval(-0.02, -0.01), 0.95)),
                Optional.of(new Consistency(
                        SteadyDecision.STEADIER,
                        Optional.of(0.8),
                        Optional.empty(),
                        new OffRates(
                                new OffRates.Rate(1, 30, new Interval(0.01, 0.17)),
                                new OffRates.Rate(0, 30, new Interval(0, 0.11)),
                                1))),
                new LapsNeeded(OptionalInt.of(0), false, OptionalInt.empty()),
                OptionalInt.of(23),
                stint(6.5, 6.6),
                stint(6.4),
                List.of(new JudgedRun(Side.BEFORE, stint(6.5, 6.6)), new JudgedRun(Side.AFTER, stint(6.4))),
                Optional.of(new Working(
                        0.3,
                        0.1,
                        0.01,
                        0.002,
                        0.004,
                        "AB x 3",
                        0.05,
                        0.003,
                        NoisePrior.DEFAULT,
                        List.of(new Look(10, -0.01, 0.004, 7, 2.5, 0.4, 2.1, 3.8, Double.POSITIVE_INFINITY)))),
                Set.of(Caveat.PLAN_AS_DRIVEN, Caveat.ONE_RUN_A_SIDE));
    }

    private static Stint stint(double... seconds) {
        List<Lap> laps = TimedRun.of(seconds).laps().stream()
                .map(lap -> new Lap(lap, LapKind.CLEAN, LapKind.CLEAN, 0, 0, Optional.empty()))
                .toList();
        OptionalDouble pace = seconds.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(seconds[0]);
        OptionalDouble none = OptionalDouble.empty();
        return new Stint(
                laps,
                laps.size(),
                pace,
                none,
                none,
                pace,
                none,
                Optional.empty(),
                none,
                none,
                none,
                OptionalDouble.empty());
    }
}
