package org.lapwright.core.stats;

import java.util.Arrays;

/** Checks on samples, and sorted copies. */
public final class Samples {
    /** Greatest magnitude accepted, so that sums of squares cannot overflow. */
    public static final double LARGEST = 1e150;

    private Samples() {}

    /**
     * Checks that a sample is long enough and finite.
     *
     * @param sample the numbers
     * @param least least number of values
     * @param name what they are, for the message
     * @return {@code sample} itself
     * @throws IllegalArgumentException if there are fewer than {@code least} values, or one is NaN, infinite or beyond
     *     {@link #LARGEST} in magnitude
     */
    public static double[] require(double[] sample, int least, String name) {
        if (sample.length < least) {
            throw new IllegalArgumentException(
                    "%s has %d values; at least %d are needed".formatted(name, sample.length, least));
        }
        for (int i = 0; i < sample.length; i++) {
            if (!(Math.abs(sample[i]) <= LARGEST)) {
                throw new IllegalArgumentException("value %d of %s is %s; it must be finite and at most %s in magnitude"
                        .formatted(i + 1, name, sample[i], LARGEST));
            }
        }
        return sample;
    }

    /**
     * A checked copy in ascending order.
     *
     * @param sample the numbers
     * @param least least number of values
     * @param name what they are, for the message
     * @return the sorted copy
     * @throws IllegalArgumentException as {@link #require}
     */
    public static double[] sorted(double[] sample, int least, String name) {
        double[] copy = require(sample, least, name).clone();
        Arrays.sort(copy);
        return copy;
    }

    /**
     * The median of a sorted sample: the middle value, or the mean of the two middle ones.
     *
     * @param sorted values in ascending order, at least one
     * @return the median
     */
    public static double medianOfSorted(double[] sorted) {
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }
}
