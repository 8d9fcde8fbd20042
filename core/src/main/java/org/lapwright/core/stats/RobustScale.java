package org.lapwright.core.stats;

import java.util.Arrays;

/**
 * How far a sample scatters, however gross a few of its values are.
 *
 * <p>Results have the unit of the values and estimate the standard deviation if the bulk is normal. A sample of equal
 * values has scale 0.
 */
public final class RobustScale {
    /** Makes the median absolute deviation of normal values their standard deviation: 1/Φ⁻¹(3/4), rounded as in R. */
    public static final double MAD_CONSISTENCY = 1.4826;

    /** The same for Q_n: 1/(√2 Φ⁻¹(5/8)), as in robustbase since 0.93; Rousseeuw and Croux rounded it to 2.2219. */
    public static final double QN_CONSISTENCY = 2.21914;

    /** The same for S_n (Rousseeuw and Croux 1993, section 2). */
    public static final double SN_CONSISTENCY = 1.1926;

    /** Factors of Q_n for 2 to 12 values, as in robustbase since 0.93. */
    private static final double[] QN_SMALL = {
        .399356, .99365, .51321, .84401, .61220, .85877, .66993, .87344, .72014, .88906, .75743
    };

    /** Factors of S_n for 2 to 9 values (Croux and Rousseeuw 1992, COMPSTAT). */
    private static final double[] SN_SMALL = {.743, 1.851, .954, 1.351, .993, 1.198, 1.005, 1.131};

    private RobustScale() {}

    /**
     * The median absolute deviation from the median, times {@link #MAD_CONSISTENCY}.
     *
     * @param sample at least one value, in any order
     * @return the scale
     * @throws IllegalArgumentException if the sample is empty or not finite
     */
    public static double mad(double[] sample) {
        return MAD_CONSISTENCY * rawMad(sample);
    }

    /**
     * The median absolute deviation from the median, unscaled.
     *
     * @param sample at least one value, in any order
     * @return the median absolute deviation
     * @throws IllegalArgumentException if the sample is empty or not finite
     */
    public static double rawMad(double[] sample) {
        double[] deviations = Samples.require(sample, 1, "sample").clone();
        double centre = Selection.median(deviations, deviations.length);
        for (int i = 0; i < deviations.length; i++) {
            deviations[i] = Math.abs(deviations[i] - centre);
        }
        return Selection.median(deviations, deviations.length);
    }

    /**
     * Q_n: a low order statistic of all pairwise distances, with consistency and small-sample factors.
     *
     * <p>Half of the values may be gross; at the normal distribution it is as good as the standard deviation of 82 %
     * as many values. Exact; O(n log n) time, O(n) memory.
     *
     * @param sample at least two values, in any order
     * @return the scale
     * @throws IllegalArgumentException if there are fewer than two values or one is not finite
     * @see <a href="https://doi.org/10.1080/01621459.1993.10476408">Rousseeuw and Croux 1993, J. Amer. Statist. Assoc.
     *     88</a>
     */
    public static double qn(double[] sample) {
        return qnOfSorted(Samples.sorted(sample, 2, "sample"));
    }

    /**
     * {@link #qn} for a sample already in order; not checked.
     *
     * @param sorted at least two finite values, ascending
     * @return the scale
     */
    public static double qnOfSorted(double[] sorted) {
        return qnFactor(sorted.length) * rawQnOfSorted(sorted);
    }

    /**
     * The order statistic behind {@link #qn}: of the distances |x_i - x_j|, i &lt; j, the one of rank h(h-1)/2 with
     * h = n/2 + 1 (rounded down).
     *
     * @param sorted at least two finite values, ascending; not checked
     * @return the distance
     */
    public static double rawQnOfSorted(double[] sorted) {
        int n = sorted.length;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < n; i++) {
            least = Math.min(least, sorted[i] - sorted[i - 1]);
        }
        return PairSelection.kth(new PairSelection.Differences(sorted), qnRank(n), least, sorted[n - 1] - sorted[0]);
    }

    /**
     * Rank, from 1, of the distance that Q_n uses.
     *
     * @param n number of values, at least 2
     * @return h(h-1)/2 with h = n/2 + 1
     */
    static long qnRank(int n) {
        long h = n / 2 + 1L;
        return h * (h - 1) / 2;
    }

    /**
     * What turns the order statistic of Q_n into the scale: {@link #QN_CONSISTENCY} times the small-sample factor of
     * robustbase.
     *
     * @param n number of values, at least 2
     * @return the factor
     */
    public static double qnFactor(int n) {
        if (n <= 12) {
            return QN_CONSISTENCY * QN_SMALL[n - 2];
        }
        double m = n;
        double excess = n % 2 == 1
                ? (1.60188 + (-2.1284 - 5.172 / m) / m) / m
                : (3.67561 + (1.9654 + (6.987 - 77 / m) / m) / m) / m;
        return QN_CONSISTENCY / (1 + excess);
    }

    /**
     * S_n: the low median over i of the high median over j of |x_i - x_j|, with consistency and small-sample factors.
     *
     * @param sample at least two values, in any order
     * @return the scale
     * @throws IllegalArgumentException if there are fewer than two values or one is not finite
     * @see <a href="https://doi.org/10.1080/01621459.1993.10476408">Rousseeuw and Croux 1993, J. Amer. Statist. Assoc.
     *     88</a>
     */
    public static double sn(double[] sample) {
        double[] sorted = Samples.sorted(sample, 2, "sample");
        int n = sorted.length;
        double[] highMedians = new double[n];
        for (int i = 0; i < n; i++) {
            highMedians[i] = nearest(sorted, i, n / 2);
        }
        Arrays.sort(highMedians);
        double factor = n <= 9 ? SN_SMALL[n - 2] : n % 2 == 1 ? n / (n - 0.9) : 1;
        return SN_CONSISTENCY * factor * highMedians[(n + 1) / 2 - 1];
    }

    /** Distance from value {@code i} to its {@code k}-th nearest neighbour: a window of k + 1 values has to hold both. */
    private static double nearest(double[] sorted, int i, int k) {
        int low = Math.max(0, i - k);
        int high = Math.min(i, sorted.length - 1 - k);
        // As the window moves right its left end comes nearer and its right end goes away: find where they cross.
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[i] - sorted[middle] <= sorted[middle + k] - sorted[i]) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        double right = reach(sorted, i, low, k);
        return low > Math.max(0, i - k) ? Math.min(right, reach(sorted, i, low - 1, k)) : right;
    }

    private static double reach(double[] sorted, int i, int from, int k) {
        return Math.max(sorted[i] - sorted[from], sorted[from + k] - sorted[i]);
    }
}
