package org.lapwright.core.trial;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Sorting;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.stats.model.RunGls;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;
import org.lapwright.core.units.Interval;

/**
 * Judges a session: did the change help, on pace and on consistency.
 *
 * <p>Laps are sorted into kinds first, blind to the side. Then every lap is followed by a look, as if the racer peeked
 * each time, and the first look to cross the boundary decides; see {@link Monitor} for the method of one look.
 */
public final class Judge {
    private static final double COARSE_CLOCK = 0.25;
    private static final double UNEVEN_SHARE = 0.1;
    private static final int UNEVEN_LAPS = 3;

    private final Session session;
    private final TrialSettings settings;
    private final List<JudgedRun> runs;
    private final Stint before;
    private final Stint after;
    private final SessionWatch watch;

    private Judge(Session session, TrialSettings settings) {
        this.session = session;
        this.settings = settings;
        this.runs = judgedRuns(session);
        this.before = pooled(Side.BEFORE);
        this.after = pooled(Side.AFTER);
        this.watch = SessionWatch.of(new Course(session), settings);
    }

    /**
     * The verdict on a session.
     *
     * @param session the runs in the order driven; any number of laps, even none
     * @param settings what the racer fixed beforehand
     * @return the verdict, {@link Decision#MORE_LAPS} when there are too few laps; never NaN
     */
    public static Verdict judge(Session session, TrialSettings settings) {
        return new Judge(session, settings).verdict();
    }

    private Verdict verdict() {
        Optional<Look> look = watch.pace().latest();
        return new Verdict(
                watch.pace().decision(),
                look.map(this::difference),
                look.map(found -> SpreadComparison.of(watch, before, after, settings.alpha())),
                needed(),
                watch.pace().decidedAt(),
                before,
                after,
                runs,
                watch.latest().map(this::working),
                caveats());
    }

    private Difference difference(Look look) {
        double pace = before.paceS().orElseThrow();
        Interval share =
                new Interval(Math.expm1(look.delta() - look.halfWidth()), Math.expm1(look.delta() + look.halfWidth()));
        double effect = Math.expm1(look.delta());
        return new Difference(pace * effect, share.times(pace), effect, share, 1 - settings.alpha());
    }

    private Working working(Monitor.Result result) {
        return new Working(
                result.autocorrelation(),
                result.runShare(),
                result.scatter(),
                result.fit().coefficient(Layout.DRIFT),
                result.fit().coefficient(Layout.WARM_UP),
                watch.plan().text(),
                settings.alpha(),
                settings.levelMargin(),
                settings.prior(),
                watch.pace().looks());
    }

    private LapsNeeded needed() {
        if (watch.pace().decision() != Decision.MORE_LAPS) {
            return LapsNeeded.NONE;
        }
        Optional<Monitor.Result> latest = watch.latest();
        if (latest.isEmpty() || watch.pace().latest().isEmpty()) {
            int missing = Math.max(
                    Math.max(
                            Monitor.LEAST_LAPS_A_SIDE - before.cleanLaps(),
                            Monitor.LEAST_LAPS_A_SIDE - after.cleanLaps()),
                    (Monitor.LEAST_LAPS - before.cleanLaps() - after.cleanLaps() + 1) / 2);
            OptionalInt first = OptionalInt.of(Math.max(1, missing));
            return new LapsNeeded(first, false, first);
        }
        Monitor.Result result = latest.get();
        Forecast forecast = new Forecast(
                new RunGls(result.autocorrelation(), result.runShare()), settings.alpha(), result.scatter());
        double delta = watch.pace().latest().get().delta();
        OptionalInt forMargin = forecast.newSession(Math.log1p(settings.levelMargin()));
        OptionalInt drivingOn = forecast.drivingOn(watch.plan(), watch.layout(), delta);
        return drivingOn.isPresent()
                ? new LapsNeeded(drivingOn, false, forMargin)
                : new LapsNeeded(forecast.newSession(delta), true, forMargin);
    }

    private Set<Caveat> caveats() {
        EnumSet<Caveat> caveats = EnumSet.noneOf(Caveat.class);
        if (watch.pace().latest().isEmpty()) {
            caveats.add(Caveat.TOO_FEW_LAPS);
            return caveats;
        }
        Look look = watch.pace().latest().get();
        add(caveats, Caveat.ONE_RUN_A_SIDE, session.runs(Side.BEFORE) <= 1 && session.runs(Side.AFTER) <= 1);
        add(caveats, Caveat.HAND_TIMED, settings.handTimed());
        add(caveats, Caveat.PLAN_AS_DRIVEN, settings.plan().isEmpty());
        add(caveats, Caveat.BEYOND_PLAN, settings.plan().isPresent() && look.informationFraction() > 1.02);
        add(caveats, Caveat.DECIDED_EARLIER, watch.pace().decidedEarlierOnly());
        add(caveats, Caveat.AFTER_FIRST, session.runs().get(0).side() == Side.AFTER);
        double scatter = watch.latest().orElseThrow().scatter();
        add(caveats, Caveat.NO_SCATTER, scatter <= watch.leastScatter());
        add(
                caveats,
                Caveat.COARSE_CLOCK,
                scatter > watch.leastScatter() && watch.leastScatter() > COARSE_CLOCK * scatter);
        add(caveats, Caveat.UNEVEN_EXCLUSIONS, excludedUnevenly());
        return caveats;
    }

    private static void add(Set<Caveat> caveats, Caveat caveat, boolean applies) {
        if (applies) {
            caveats.add(caveat);
        }
    }

    private boolean excludedUnevenly() {
        double shareBefore = excludedShare(before);
        double shareAfter = excludedShare(after);
        int apart = Math.abs(
                (before.laps().size() - before.cleanLaps()) - (after.laps().size() - after.cleanLaps()));
        return apart >= UNEVEN_LAPS && Math.abs(shareAfter - shareBefore) > UNEVEN_SHARE;
    }

    private static double excludedShare(Stint stint) {
        long lost = stint.laps().stream()
                .filter(lap -> !lap.counts() && lap.kind() != LapKind.FIRST)
                .count();
        return lost / (double) Math.max(1, stint.laps().size());
    }

    private Stint pooled(Side side) {
        List<Lap> laps = new ArrayList<>();
        for (JudgedRun run : runs) {
            if (run.side() == side) {
                laps.addAll(run.stint().laps());
            }
        }
        return Stint.of(laps);
    }

    private static List<JudgedRun> judgedRuns(Session session) {
        List<List<Lap>> sortedBefore = Sorting.sort(runsOf(session, Side.BEFORE));
        List<List<Lap>> sortedAfter = Sorting.sort(runsOf(session, Side.AFTER));
        List<JudgedRun> judged = new ArrayList<>();
        int b = 0;
        int a = 0;
        for (DrivenRun run : session.runs()) {
            List<Lap> laps = run.side() == Side.BEFORE ? sortedBefore.get(b++) : sortedAfter.get(a++);
            judged.add(new JudgedRun(run.side(), Stint.of(laps)));
        }
        return judged;
    }

    private static List<TimedRun> runsOf(Session session, Side side) {
        return session.runs().stream()
                .filter(run -> run.side() == side)
                .map(DrivenRun::run)
                .toList();
    }
}
