package org.lapwright.core.trial;

import java.util.Optional;
import org.lapwright.core.trial.session.TrialSettings;

/** Watches a session lap by lap, on pace and on consistency. */
final class SessionWatch {
    /** From so many laps on, looks are spread out: a look costs time in proportion to the laps before it. */
    private static final int LOOK_AFTER_EVERY_LAP_UP_TO = 1000;

    private final Course course;
    private final TrialSettings settings;
    private final Plan plan;
    private final Watch pace;
    private final Watch spread = new Watch(0);
    private final double leastScatter;
    private Optional<Monitor.Result> latest = Optional.empty();
    private Layout layout;

    /** What the last look saw: a lap that is left out brings no new look. */
    private Layout seen = Layout.of(new double[0], new int[0], new boolean[0]);

    private SessionWatch(Course course, TrialSettings settings) {
        this.course = course;
        this.settings = settings;
        this.pace = new Watch(Math.log1p(settings.levelMargin()));
        boolean[] counts = new boolean[course.laps()];
        course.count(course.laps(), false, counts);
        course.count(course.laps(), true, counts);
        this.layout = course.layOut(course.laps(), counts);
        this.plan = settings.plan().map(Plan::of).orElseGet(() -> Plan.asDriven(layout));
        this.leastScatter = course.leastScatter();
    }

    static SessionWatch of(Course course, TrialSettings settings) {
        SessionWatch watch = new SessionWatch(course, settings);
        watch.lookAfterEveryLap();
        return watch;
    }

    private void lookAfterEveryLap() {
        int laps = course.laps();
        Monitor paceMonitor = new Monitor(settings.alpha(), settings.prior(), false, leastScatter, laps);
        Monitor spreadMonitor =
                new Monitor(settings.alpha(), settings.prior(), true, 0.3 * Math.sqrt(leastScatter), laps);
        HandTimed handTimed = new HandTimed(settings, course.handNoise());
        Layout planned = plan.layout();
        boolean[] counts = new boolean[laps];
        int step = Math.max(1, (laps + LOOK_AFTER_EVERY_LAP_UP_TO - 1) / LOOK_AFTER_EVERY_LAP_UP_TO);
        for (int driven = 1; driven <= laps; driven++) {
            boolean afterSide = course.isAfter(driven - 1);
            boolean look = driven % step == 0 || driven == laps;
            if (step == 1) {
                course.count(driven, afterSide, counts);
            } else if (look) {
                course.count(driven, false, counts);
                course.count(driven, true, counts);
            }
            if (look) {
                lookAfter(driven, counts, planned, paceMonitor, spreadMonitor, handTimed);
            }
        }
        pace.latest()
                .ifPresent(look -> paceMonitor
                        .finestLook(layout, look.lap(), planned)
                        .ifPresent(result -> {
                            latest = Optional.of(result);
                            paceLook(result, look.lap(), planned, handTimed).ifPresent(pace::seeAgain);
                        }));
    }

    private Optional<Look> paceLook(Monitor.Result result, int driven, Layout planned, HandTimed handTimed) {
        return settings.handTimed() ? handTimed.look(layout, driven, planned, result) : Optional.of(result.look());
    }

    private void lookAfter(
            int driven,
            boolean[] counts,
            Layout planned,
            Monitor paceMonitor,
            Monitor spreadMonitor,
            HandTimed handTimed) {
        Layout now = course.layOut(driven, counts);
        if (now.isSameAs(seen)) {
            return;
        }
        seen = now;
        layout = now;
        Optional<Monitor.Result> result = paceMonitor.look(layout, driven, planned);
        if (result.isEmpty()) {
            return;
        }
        latest = result;
        paceLook(result.get(), driven, planned, handTimed).ifPresent(pace::see);
        spreadMonitor
                .look(
                        layout.withValues(Residuals.rootsAboutRunMedians(
                                layout, result.get().residuals())),
                        driven,
                        planned)
                .ifPresent(found -> spread.see(found.look()));
    }

    Watch pace() {
        return pace;
    }

    Watch spread() {
        return spread;
    }

    Plan plan() {
        return plan;
    }

    /** The laps that count, all of them. */
    Layout layout() {
        return layout;
    }

    /** The last fit of the pace; empty with too few laps. */
    Optional<Monitor.Result> latest() {
        return latest;
    }

    double leastScatter() {
        return leastScatter;
    }
}
