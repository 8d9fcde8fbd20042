package org.lapwright.core.laps;

import java.util.Arrays;
import org.lapwright.core.stats.RobustLocation;

/** What the step of the clock that timed some laps means for their scatter. */
public final class ClockStep {
    private static final double[] STEPS = {1, 0.1, 0.01, 0.001, 1e-4, 1e-5};
    private static final double FINEST_STEP = 1e-6;

    private ClockStep() {}

    /** The coarsest decimal step of which every lap is a multiple, s; at least a microsecond. */
    public static double stepS(double[] seconds) {
        for (double step : STEPS) {
            if (Arrays.stream(seconds).allMatch(t -> Math.abs(t / step - Math.rint(t / step)) < 1e-6)) {
                return step;
            }
        }
        return FINEST_STEP;
    }

    /** Scatter that the step alone gives (a uniform error), as a share of the lap; above 0. */
    public static double leastScatter(double[] seconds) {
        return seconds.length == 0 ? FINEST_STEP : stepS(seconds) / Math.sqrt(12) / RobustLocation.median(seconds);
    }
}
