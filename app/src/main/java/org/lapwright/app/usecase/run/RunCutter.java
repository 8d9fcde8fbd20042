package org.lapwright.app.usecase.run;

import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.DriveStore.Press;
import org.lapwright.core.laps.pass.Pass;

/**
 * Cuts a stream of passes into the runs of a plan where nobody presses anything: a run is over when it has its laps, and the next
 * one begins with the first pass after a pause, for working on a car takes longer than a lap. The same passes give the same runs,
 * live or replayed.
 */
public final class RunCutter {
    private static final double NS = 1e-9;

    private final NewDrive fixed;
    private final double pauseS;
    private final Reckoning reckoning;
    private long lastNs = Long.MIN_VALUE;
    private String lastClock = "";

    /**
     * A cutter.
     *
     * @param fixed plan, laps to warm up and lane
     * @param pauseS shortest pause between two runs, s
     */
    public RunCutter(NewDrive fixed, double pauseS) {
        this.fixed = fixed;
        this.pauseS = pauseS;
        this.reckoning = new Reckoning(fixed);
    }

    /** Takes a pass and says how far the drive has come. */
    public Progress take(Pass pass) {
        if (pass.lane() == fixed.laneNumber() && pass.gate() == 0) {
            String clock = pass.source() + "\n" + pass.boot();
            double since = clock.equals(lastClock) ? (pass.stamp().timeNs() - lastNs) * NS : Double.POSITIVE_INFINITY;
            Progress progress = reckoning.progress();
            if (progress.isRunDone() && !progress.isDone(fixed.plan()) && since >= pauseS) {
                reckoning.take(new DriveEvent.Pressed(Press.NEXT_RUN, "after a pause"));
            }
            lastNs = pass.stamp().timeNs();
            lastClock = clock;
        }
        reckoning.take(new DriveEvent.Passed(pass));
        return reckoning.progress();
    }

    /** How far the drive has come. */
    public Progress progress() {
        return reckoning.progress();
    }
}
