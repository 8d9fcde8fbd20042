package org.lapwright.core.stats;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Upper tail of Student's t distribution, and its normal equivalent.
 *
 * <p>Probabilities are those of Hipparchus. Its quantile fails below about 1e-30, which a boundary asks for at the first
 * looks, so quantiles are found here.
 */
public final class StudentTail {
    /** A smaller tail counts as this: its quantile is beyond any use, and for one degree of freedom beyond 1e99. */
    public static final double LEAST_TAIL = 1e-100;

    /** Above this tail the quantile of Hipparchus serves. */
    private static final double NEAR = 0.1;

    private static final double QUANTILE_ACCURACY = 1e-13;

    private StudentTail() {}

    /**
     * Probability of exceeding a value.
     *
     * @param t the value, not NaN
     * @param nu degrees of freedom, above 0
     * @return the probability, 0 to 1
     */
    public static double probability(double t, double nu) {
        return new TDistribution(nu).cumulativeProbability(-t);
    }

    /**
     * The value exceeded with a given probability.
     *
     * @param tail the probability, 0 to 1; below {@link #LEAST_TAIL} it counts as that
     * @param nu degrees of freedom, at least 1
     * @return the value
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static double quantile(double tail, double nu) {
        if (!(tail >= 0 && tail <= 1 && nu >= 1)) {
            throw new IllegalArgumentException(
                    "probability is %s and degrees of freedom %s; they must be from 0 to 1 and at least 1"
                            .formatted(tail, nu));
        }
        if (tail > 0.5) {
            return -quantile(1 - tail, nu);
        }
        TDistribution distribution = new TDistribution(nu, QUANTILE_ACCURACY);
        return tail > NEAR
                ? -distribution.inverseCumulativeProbability(tail)
                : farQuantile(distribution, Math.max(tail, LEAST_TAIL));
    }

    /**
     * Newton's method on log(tail) against log(t): the curve is concave, and straight far out, so that every step but
     * the first comes from the far side and none overshoots.
     */
    private static double farQuantile(TDistribution distribution, double tail) {
        double t = NormalTail.quantile(tail);
        for (int i = 0; i < 60; i++) {
            double reached = distribution.cumulativeProbability(-t);
            double step = Math.log(reached / tail) * reached / (t * distribution.density(t));
            t *= Math.exp(step);
            if (Math.abs(step) < 1e-14) {
                break;
            }
        }
        return t;
    }

    /**
     * The normal deviate with the same tail as a t statistic.
     *
     * @param t the statistic, not NaN
     * @param nu its degrees of freedom, above 0
     * @return z with the sign of {@code t}; within ±37.5
     */
    public static double toNormal(double t, double nu) {
        return Math.copySign(NormalTail.quantile(probability(Math.abs(t), nu)), t);
    }
}
