package org.lapwright.core.trial;

import java.util.List;
import org.lapwright.core.trial.session.NoisePrior;

/**
 * The numbers behind a verdict, so that every one can be opened.
 *
 * @param autocorrelation of neighbouring laps, as used
 * @param runShare run-to-run variance over lap variance, as used
 * @param lapScatter standard deviation of a lap about the fit, as a share of the lap
 * @param driftShare drift over 60 laps, as a share of the lap
 * @param warmUpShare extra time of the first lap of a run, as a share of the lap
 * @param planText the plan judged by
 * @param alpha chance of a wrong "faster" or "slower"
 * @param levelMargin margin of a level verdict, as a share of the lap
 * @param prior the belief about the driver that went in
 * @param looks one after every lap from the first on which there were enough
 */
public record Working(
        double autocorrelation,
        double runShare,
        double lapScatter,
        double driftShare,
        double warmUpShare,
        String planText,
        double alpha,
        double levelMargin,
        NoisePrior prior,
        List<Look> looks) {
    /** Copies the list. */
    public Working {
        looks = List.copyOf(looks);
    }
}
