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
    private final Layout planned;
    private final double leastScatter;
    private final Monitor paceMonitor;
    private final Monitor spreadMonitor;
    private final HandTimed handTimed;
    private Optional<Monitor.Result> latest = Optional.empty();
    private Layout layout;

    /** What the last look saw: a lap that is left out brings no new look. */
    private Layout seen = Layout.of(new double[0], new int[0], new boolean[0]);

    private SessionWatch(Course course, TrialSettings settings) {
        this.course = course;
        this.settings = settings;
        this.pace = new Watch(Math.log1p(settings.levelMargin()));
        this.layout = course.layOut();
        this.plan = settings.plan().map(Plan::of).orElseGet(() -> Plan.asDriven(layout));
        this.planned = plan.layout();
        this.leastScatter = course.leastScatter();
        int laps = course.laps();
        this.paceMonitor = new Monitor(settings.alpha(), settings.prior(), false, leastScatter, laps);
        this.spreadMonitor = new Monitor(settings.alpha(), settings.prior(), true, 0.3 * Math.sqrt(leastScatter), laps);
        this.handTimed = new HandTimed(settings, course.handNoise());
    }

    static SessionWatch of(Course course, TrialSettings settings) {
        SessionWatch watch = new SessionWatch(course, settings);
        watch.lookAfterEveryLap();
        return watch;
    }

    private void lookAfterEveryLap() {
        int laps = course.laps();
        boolean[] counts = new boolean[laps];
        int step = Math.max(1, (laps + LOOK_AFTER_EVERY_LAP_UP_TO - 1) / LOOK_AFTER_EVERY_LAP_UP_TO);
        for (int driven = 1; driven <= laps; driven++) {
            boolean afterSide = course.isAfter(driven - 1);
            boolean look = driven % step == 0 || driven == laps;
            if (step == 1) {
                course.count(driven, afterSide, counts);
            } else if (look) {
                course.count(driven, counts);
            }
            if (look) {
                lookAfter(driven, counts);
            }
        }
        pace.latest()
                .ifPresent(look -> paceMonitor
                        .finestLook(layout, look.lap(), planned)
                        .ifPresent(result -> {
                            latest = Optional.of(result);
                            paceLook(result, look.lap()).ifPresent(pace::seeAgain);
                        }));
    }

    private Optional<Look> paceLook(Monitor.Result result, int driven) {
        return settings.handTimed() ? handTimed.look(layout, driven, planned, result) : Optional.of(result.look());
    }

    private void lookAfter(int driven, boolean[] counts) {
        Layout now = course.layOut(driven, counts);
        if (now.isSameAs(seen)) {
            return;
        }
        seen = now;
        Optional<Monitor.Result> result = paceMonitor.look(now, driven, planned);
        if (result.isEmpty()) {
            return;
        }
        layout = now;
        latest = result;
        paceLook(result.get(), driven).ifPresent(pace::see);
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

    /** The laps that counted at the last look that could say something; without one, those that count at the end. */
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
