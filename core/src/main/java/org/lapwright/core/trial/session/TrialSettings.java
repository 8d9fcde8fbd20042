package org.lapwright.core.trial.session;

import java.util.Optional;
import org.lapwright.core.units.Check;

/**
 * What the racer fixes before the laps are judged.
 *
 * @param alpha chance of a wrong "faster" or "slower" that is put up with, 0.001 to 0.3; 0.05 by default
 * @param levelMargin share of a lap that does not matter, 0 to 0.1; 0.003 by default
 * @param handTimed whether a person pressed a button, so that neighbouring laps share a press
 * @param plan the runs planned; without one, the runs as driven are taken for the plan
 * @param prior what is known of this driver's noise
 */
public record TrialSettings(
        double alpha, double levelMargin, boolean handTimed, Optional<RunPlan> plan, NoisePrior prior) {
    /** As most racers want it. */
    public static final TrialSettings DEFAULT =
            new TrialSettings(0.05, 0.003, false, Optional.empty(), NoisePrior.DEFAULT);

    /** Checks the ranges. */
    public TrialSettings {
        Check.inRange(alpha, 0.001, 0.3, "chance of a wrong verdict", "");
        Check.inRange(levelMargin, 0, 0.1, "margin of a level verdict, as a share of the lap", "");
    }

    /**
     * The chance of a wrong verdict that goes with a confidence, rounded so that 0.95 gives 0.05 and not
     * 0.05000000000000004.
     */
    public static double alphaOf(double confidence) {
        return Math.round((1 - confidence) * 1e9) / 1e9;
    }

    /** The same with another plan. */
    public TrialSettings withPlan(RunPlan newPlan) {
        return new TrialSettings(alpha, levelMargin, handTimed, Optional.of(newPlan), prior);
    }

    /** The same with other beliefs about the driver. */
    public TrialSettings withPrior(NoisePrior newPrior) {
        return new TrialSettings(alpha, levelMargin, handTimed, plan, newPrior);
    }

    /** The same for laps timed by hand, or not. */
    public TrialSettings withHandTimed(boolean byHand) {
        return new TrialSettings(alpha, levelMargin, byHand, plan, prior);
    }
}
