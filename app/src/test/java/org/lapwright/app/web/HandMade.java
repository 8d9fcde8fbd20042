package org.lapwright.app.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
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
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.ladder.LadderEntry;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;
import org.lapwright.core.units.Interval;

/**
 * Verdicts, stints and ladders made by plain arithmetic, so that the pages can be tested without the method behind the
 * real ones. Only the shape is right: nothing here is a reference for the numbers.
 */
final class HandMade {
    private HandMade() {}

    /** Kinds by the plain median, pace and spread by median and deviations. */
    static Stint stint(TimedRun run) {
        return pooled(List.of(run));
    }

    private static Stint pooled(List<TimedRun> runs) {
        List<Lap> laps = runs.stream().flatMap(run -> laps(run).stream()).toList();
        double[] clean = laps.stream()
                .filter(Lap::counts)
                .mapToDouble(Lap::seconds)
                .sorted()
                .toArray();
        double pace = median(clean);
        double spread = 1.4826
                * median(Arrays.stream(clean)
                        .map(x -> Math.abs(x - pace))
                        .sorted()
                        .toArray());
        boolean two = clean.length >= 2;
        return new Stint(
                laps,
                clean.length,
                when(clean.length > 0, pace),
                when(two, spread),
                when(two, spread),
                when(clean.length > 0, clean.length > 0 ? clean[0] : 0),
                when(two, two ? clean[(int) (0.8 * (clean.length - 1))] : 0),
                two ? Optional.of(new Interval(clean[clean.length / 2], clean[clean.length - 1])) : Optional.empty(),
                when(clean.length >= 3, -0.0012),
                when(clean.length >= 5, 0.21),
                when(clean.length >= 5, 0.66 * clean.length),
                when(
                        !laps.isEmpty(),
                        laps.stream().mapToDouble(Lap::seconds).average().orElse(0)));
    }

    private static List<Lap> laps(TimedRun run) {
        double middle = median(
                run.laps().stream().mapToDouble(TimedLap::seconds).sorted().toArray());
        List<Lap> laps = new ArrayList<>();
        for (TimedLap timed : run.laps()) {
            LapKind kind = kind(timed.seconds() / middle, timed.number());
            Lap lap = new Lap(timed, kind, kind, middle, middle * 1.06, Optional.empty());
            Optional<Overrule> word = run.overrules().stream()
                    .filter(overrule -> overrule.lap() == timed.number())
                    .findFirst();
            laps.add(word.map(lap::overruledBy).orElse(lap));
        }
        return laps;
    }

    private static LapKind kind(double over, int number) {
        if (over < 0.6) {
            return LapKind.DOUBLE;
        }
        if (over <= 1.06) {
            return LapKind.CLEAN;
        }
        if (Math.abs(over - 2) < 0.06) {
            return LapKind.MISSED;
        }
        return number == 1 ? LapKind.FIRST : over > 1.12 ? LapKind.OFF : LapKind.SLOW;
    }

    /** A verdict by the difference of two means. */
    static Verdict judge(Session session, TrialSettings settings) {
        Stint before = pooled(runs(session, Side.BEFORE));
        Stint after = pooled(runs(session, Side.AFTER));
        List<JudgedRun> judged = session.runs().stream()
                .map(run -> new JudgedRun(run.side(), stint(run.run())))
                .toList();
        Set<Caveat> caveats = caveats(session, settings);
        if (before.cleanLaps() < 5 || after.cleanLaps() < 5) {
            caveats.add(Caveat.TOO_FEW_LAPS);
            return new Verdict(
                    Decision.MORE_LAPS,
                    Optional.empty(),
                    Optional.empty(),
                    new LapsNeeded(OptionalInt.empty(), false, OptionalInt.empty()),
                    OptionalInt.empty(),
                    before,
                    after,
                    judged,
                    Optional.empty(),
                    caveats);
        }
        List<Look> looks = looks(session);
        Look last = looks.get(looks.size() - 1);
        double pace = before.paceS().getAsDouble();
        Interval share = new Interval(last.delta() - last.halfWidth(), last.delta() + last.halfWidth());
        Decision decision = last.crossed()
                ? last.delta() < 0 ? Decision.FASTER : Decision.SLOWER
                : last.isLevel(settings.levelMargin()) ? Decision.LEVEL : Decision.MORE_LAPS;
        OptionalInt decidedAt =
                looks.stream().filter(Look::crossed).mapToInt(Look::lap).findFirst();
        return new Verdict(
                decision,
                Optional.of(new Difference(
                        last.delta() * pace, share.times(pace), last.delta(), share, 1 - settings.alpha())),
                Optional.of(consistency(before, after)),
                decision == Decision.MORE_LAPS
                        ? new LapsNeeded(OptionalInt.of(8), false, OptionalInt.of(60))
                        : LapsNeeded.NONE,
                decidedAt,
                before,
                after,
                judged,
                Optional.of(working(settings, session, looks)),
                caveats);
    }

    private static Set<Caveat> caveats(Session session, TrialSettings settings) {
        Set<Caveat> caveats = EnumSet.noneOf(Caveat.class);
        if (session.runs().size() == 2) {
            caveats.add(Caveat.ONE_RUN_A_SIDE);
        }
        if (settings.handTimed()) {
            caveats.add(Caveat.HAND_TIMED);
        }
        if (settings.plan().isEmpty()) {
            caveats.add(Caveat.PLAN_AS_DRIVEN);
        }
        return caveats;
    }

    private static Consistency consistency(Stint before, Stint after) {
        double ratio =
                after.spreadS().getAsDouble() / Math.max(1e-9, before.spreadS().getAsDouble());
        boolean tells = ratio > 0 && ratio < 1e6;
        return new Consistency(
                SteadyDecision.MORE_LAPS,
                tells ? Optional.of(ratio) : Optional.empty(),
                tells ? Optional.of(new Interval(ratio * 0.7, ratio * 1.4)) : Optional.empty(),
                new OffRates(rate(before), rate(after), 0.62));
    }

    private static OffRates.Rate rate(Stint stint) {
        double share = stint.offs() / (double) stint.laps().size();
        return new OffRates.Rate(stint.offs(), stint.laps().size(), new Interval(share / 2, Math.min(1, share + 0.15)));
    }

    private static Working working(TrialSettings settings, Session session, List<Look> looks) {
        String plan = settings.plan().map(RunPlan::text).orElse("as driven, " + session.laps());
        return new Working(
                0.24,
                0.1,
                0.0065,
                -0.0021,
                0.0094,
                plan,
                settings.alpha(),
                settings.levelMargin(),
                settings.prior(),
                looks);
    }

    private static List<Look> looks(Session session) {
        List<Look> looks = new ArrayList<>();
        for (int lap = 10; lap <= session.laps(); lap++) {
            double[] a = cleanLogs(session.upTo(lap), Side.BEFORE);
            double[] b = cleanLogs(session.upTo(lap), Side.AFTER);
            if (a.length >= 3 && b.length >= 3) {
                double se = Math.sqrt(variance(a) / a.length + variance(b) / b.length);
                double delta = mean(b) - mean(a);
                double fraction = lap / (double) session.laps();
                double bound = 2.394 / Math.sqrt(fraction);
                looks.add(new Look(
                        lap,
                        delta,
                        se,
                        a.length + b.length - 4.0,
                        1 / (se * se + 1e-12),
                        fraction,
                        delta / (se + 1e-12),
                        bound,
                        bound * 1.2 * se));
            }
        }
        return looks;
    }

    private static List<TimedRun> runs(Session session, Side side) {
        return session.runs().stream()
                .filter(run -> run.side() == side)
                .map(DrivenRun::run)
                .toList();
    }

    private static double[] cleanLogs(Session session, Side side) {
        return runs(session, side).stream()
                .flatMap(run -> laps(run).stream())
                .filter(Lap::counts)
                .mapToDouble(lap -> Math.log(lap.seconds()))
                .toArray();
    }

    /** Cars by the median of all their laps. */
    static List<LadderEntry> rank(List<CarLaps> cars, NoisePrior prior) {
        List<LadderEntry> entries = new ArrayList<>();
        for (CarLaps car : cars) {
            Stint stint = pooled(car.runs());
            if (stint.cleanLaps() >= 2) {
                double pace = stint.paceS().getAsDouble();
                double half = 2.2 * stint.spreadS().getAsDouble() / Math.sqrt(stint.cleanLaps());
                entries.add(new LadderEntry(
                        car.car(), 0, stint.cleanLaps(), pace, pace, new Interval(pace - half, pace + half), 1));
            }
        }
        entries.sort(Comparator.comparingDouble(LadderEntry::paceS));
        return placed(entries);
    }

    private static List<LadderEntry> placed(List<LadderEntry> entries) {
        List<LadderEntry> placed = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            LadderEntry entry = entries.get(i);
            boolean tied = i > 0
                    && entries.get(i - 1).intervalS().high() > entry.intervalS().low();
            int place = tied ? placed.get(i - 1).place() : i + 1;
            placed.add(new LadderEntry(
                    entry.car(),
                    place,
                    entry.laps(),
                    entry.measuredS(),
                    entry.paceS(),
                    entry.intervalS(),
                    i + 1 == entries.size() ? 1 : 0.83));
        }
        return placed;
    }

    private static OptionalDouble when(boolean there, double value) {
        return there ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static double median(double[] sorted) {
        int n = sorted.length;
        return n == 0 ? 0 : 0.5 * (sorted[(n - 1) / 2] + sorted[n / 2]);
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(0);
    }

    private static double variance(double[] values) {
        double mean = mean(values);
        return Arrays.stream(values).map(x -> (x - mean) * (x - mean)).sum() / (values.length - 1);
    }
}
