package org.lapwright.core.fit;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What is believed of a number: normal, cut off where the number would make no sense.
 *
 * @param middle most likely value, inside the range
 * @param deviation standard deviation before anything is cut off, above 0
 * @param low least value that makes sense
 * @param high greatest value that makes sense
 */
public record Belief(double middle, double deviation, double low, double high) {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** Beyond so many deviations nothing is cut off that anybody would see. */
    private static final double FAR = 8;

    private static final int STEPS = 400;

    /** Checks the numbers. */
    public Belief {
        if (!(low <= middle && middle <= high && low < high && deviation > 0 && deviation < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a belief of %s ± %s from %s to %s cannot be; the middle must lie in the range and the deviation be above 0"
                            .formatted(middle, deviation, low, high));
        }
    }

    /** Cut off nowhere. */
    public static Belief normal(double middle, double deviation) {
        return new Belief(middle, deviation, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** The value that as many values lie below as standard normal numbers lie below {@code z}. */
    public double at(double z) {
        double from = (low - middle) / deviation;
        double to = (high - middle) / deviation;
        if (from < -FAR && to > FAR) {
            return middle + deviation * z;
        }
        double below = NORMAL.cumulativeProbability(from);
        double share = below + NORMAL.cumulativeProbability(z) * (NORMAL.cumulativeProbability(to) - below);
        double value = middle + deviation * NORMAL.inverseCumulativeProbability(Math.min(Math.max(share, 0), 1));
        return Math.min(Math.max(value, low), high);
    }

    /** Mean of what is left after the cuts. */
    public double mean() {
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            sum += at(quantile((i + 0.5) / STEPS));
        }
        return sum / STEPS;
    }

    /** Standard deviation of what is left after the cuts. */
    public double spread() {
        double mean = mean();
        double squares = 0;
        for (int i = 0; i < STEPS; i++) {
            double off = at(quantile((i + 0.5) / STEPS)) - mean;
            squares += off * off;
        }
        return Math.sqrt(squares / STEPS);
    }

    /** The standard normal number that this share of them lies below. */
    static double quantile(double share) {
        return NORMAL.inverseCumulativeProbability(share);
    }
}
