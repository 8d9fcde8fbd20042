package org.lapwright.core.trial;

import org.lapwright.core.units.Interval;

/**
 * After minus before on pace; negative is faster.
 *
 * @param seconds the estimate, s a lap
 * @param intervalS where it lies, s a lap, valid however often one looked; ends may be infinite with very few laps
 * @param share the estimate as a share of the pace before, such as -0.01
 * @param intervalShare where that lies
 * @param confidence 1 - alpha of the interval
 */
public record Difference(double seconds, Interval intervalS, double share, Interval intervalShare, double confidence) {}
