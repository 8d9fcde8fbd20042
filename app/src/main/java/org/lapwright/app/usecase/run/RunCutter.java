package org.lapwright.app.usecase.run;

import java.util.Optional;
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
    private Optional<Pass> last = Optional.empty();

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
            double since = last.filter(before -> isOfOneClock(before, pass))
                    .map(before -> (pass.stamp().timeNs() - before.stamp().timeNs()) * NS)
                    .orElse(Double.POSITIVE_INFINITY);
            Progress progress = reckoning.progress();
            if (progress.isRunDone() && !progress.isDone(fixed.plan()) && since >= pauseS) {
                reckoning.take(new DriveEvent.Pressed(Press.NEXT_RUN, "after a pause"));
            }
            last = Optional.of(pass);
        }
        reckoning.take(new DriveEvent.Passed(pass));
        return reckoning.progress();
    }

    private static boolean isOfOneClock(Pass one, Pass other) {
        return one.source().equals(other.source()) && one.boot().equals(other.boot());
    }

    /** How far the drive has come. */
    public Progress progress() {
        return reckoning.progress();
    }
}
