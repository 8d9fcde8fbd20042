package org.lapwright.core.trial.session;

import org.lapwright.core.units.Check;

/**
 * What is believed of a driver's noise before the session: it steadies what a few laps cannot tell.
 *
 * @param autocorrelation of neighbouring laps, 0 to 0.8
 * @param autocorrelationLaps how many laps that belief weighs
 * @param runShare variance from run to run over the variance of laps within a run, 0 to 4
 * @param sessions how many earlier sessions of this driver it was learned from
 */
public record NoisePrior(double autocorrelation, double autocorrelationLaps, double runShare, int sessions) {
    /** For a driver of whom nothing is known. */
    public static final NoisePrior DEFAULT = new NoisePrior(0.25, 20, 0.1, 0);

    /** Checks the ranges. */
    public NoisePrior {
        Check.inRange(autocorrelation, 0, 0.8, "autocorrelation of laps", "");
        Check.inRange(autocorrelationLaps, 0, 1e6, "weight of the autocorrelation", "laps");
        Check.inRange(runShare, 0, 4, "run-to-run share of the variance", "");
    }
}
