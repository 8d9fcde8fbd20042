package org.lapwright.core.advice;

import java.util.OptionalInt;
import org.lapwright.core.stats.design.Power;
import org.lapwright.core.stats.design.RunNoise;

/**
 * How many laps prove a gain, with how a driver's laps scatter.
 *
 * @param spread standard deviation of one lap as a share of the lap
 * @param autocorrelation of neighbouring laps
 * @param runShare variance from run to run over that of the laps within one
 * @param lapsInRun laps of one run
 */
public record Proof(double spread, double autocorrelation, double runShare, int lapsInRun) {
    /** A driver of whom nothing is known: 1 % (statistics of the verdict), 10 laps a run. */
    public static final Proof USUAL = new Proof(0.01, 0.25, 0.1, 10);

    private static final double ALPHA = 0.05;
    private static final double POWER = 0.8;
    private static final int MOST_LAPS = 2000;

    /**
     * Laps on both sides together that show a gain with 80 % chance at 5 % risk, in whole runs, A B B A; empty when more than 2 000
     * would be needed, or nothing is gained.
     *
     * @param gainS gain, s
     * @param lapS the lap, s
     */
    public OptionalInt laps(double gainS, double lapS) {
        if (!(gainS > 0 && lapS > 0)) {
            return OptionalInt.empty();
        }
        double effect = gainS / lapS;
        double variance = new RunNoise(spread, autocorrelation, Math.sqrt(runShare) * spread).meanVariance(lapsInRun);
        double runs = Power.ofSingleLook(ALPHA, POWER).runsPerSide(effect, variance);
        double laps = 2 * Math.max(2, Math.ceil(runs)) * lapsInRun;
        return laps > MOST_LAPS ? OptionalInt.empty() : OptionalInt.of((int) laps);
    }
}
