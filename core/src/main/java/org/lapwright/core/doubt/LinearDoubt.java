package org.lapwright.core.doubt;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.lapwright.core.units.Interval;

/**
 * A computed number with the uncertainty that the law of propagation gives it.
 *
 * @param value the number at the best estimates
 * @param standardUncertainty one standard deviation; infinite when an uncertain input allows no slope
 * @param effectiveDegreesOfFreedom Welch and Satterthwaite (GUM G.2b); infinite when all uncertainties are known, and when
 *     inputs are correlated, where the formula does not hold
 * @param parts what each input brings, in the order of the inputs
 */
public record LinearDoubt(
        double value, double standardUncertainty, double effectiveDegreesOfFreedom, List<Part> parts) {
    /** Copies the list. */
    public LinearDoubt {
        parts = List.copyOf(parts);
    }

    /**
     * What one input brings.
     *
     * @param sensitivity change of the number for one unit of the input, c; infinite where no slope could be found
     * @param amount c u: signed change of the number for one standard uncertainty of the input; 0 for an exact input
     */
    public record Part(double sensitivity, double amount) {}

    /**
     * The interval at a level: value ± t u, with t of the effective degrees of freedom (GUM G.3).
     *
     * @param level above 0 and below 1
     */
    public Interval interval(double level) {
        Levels.check(level);
        double half = standardUncertainty == 0 ? 0 : factor(level) * standardUncertainty;
        return new Interval(value - half, value + half);
    }

    private double factor(double level) {
        double p = (1 + level) / 2;
        return Double.isInfinite(effectiveDegreesOfFreedom)
                ? new NormalDistribution().inverseCumulativeProbability(p)
                : new TDistribution(effectiveDegreesOfFreedom).inverseCumulativeProbability(p);
    }
}
