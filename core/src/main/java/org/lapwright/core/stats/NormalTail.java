package org.lapwright.core.stats;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Upper tail of the standard normal distribution, to full relative precision however far out.
 *
 * <p>Hipparchus has the probability to that precision but not the quantile, which it takes from 2 p - 1: below 1e-16 it
 * answers infinity.
 */
public final class NormalTail {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** Down to here the quantile of Hipparchus is a good first guess. */
    private static final double FAR = 1e-6;

    private NormalTail() {}

    /**
     * Probability of exceeding a value, Φ(-z).
     *
     * @param z the value, not NaN
     * @return the probability, 0 to 1; not below {@link Double#MIN_NORMAL}, which is reached at z = 37.5
     */
    public static double probability(double z) {
        return Math.max(NORMAL.cumulativeProbability(-z), Double.MIN_NORMAL);
    }

    /**
     * The value exceeded with a given probability.
     *
     * @param tail the probability, 0 to 1; below {@link Double#MIN_NORMAL} it counts as that
     * @return the value, from -37.5 to 37.5
     * @throws IllegalArgumentException if the probability is NaN or outside its range
     */
    public static double quantile(double tail) {
        if (!(tail >= 0 && tail <= 1)) {
            throw new IllegalArgumentException("probability is %s; it must be from 0 to 1".formatted(tail));
        }
        if (tail > 0.5) {
            return -quantile(1 - tail);
        }
        double p = Math.max(tail, Double.MIN_NORMAL);
        double z = p > FAR ? -NORMAL.inverseCumulativeProbability(p) : Math.sqrt(-2 * Math.log(p));
        // Newton's method on the logarithm, which is nearly a parabola out there.
        for (int i = 0; i < 6; i++) {
            double reached = NORMAL.cumulativeProbability(-z);
            double step = Math.log(reached / p) * reached / NORMAL.density(z);
            z += step;
            if (Math.abs(step) < 1e-15 * z) {
                break;
            }
        }
        return z;
    }
}
