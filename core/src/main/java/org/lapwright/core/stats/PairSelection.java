package org.lapwright.core.stats;

/**
 * Order statistics of all pairwise sums or differences of sorted samples, without forming the pairs.
 *
 * <p>The answer is bracketed by two values that pairs really take. Each round counts the pairs up to a point between
 * them in one pass (the pairs form a matrix sorted by rows and columns, as in Johnson and Mizoguchi 1978, SIAM J.
 * Comput. 7) and moves one end to the nearest pair. The point is the middle of the two on the scale of the bit
 * patterns, so 64 rounds always suffice and the answer is the exact double, not an approximation to it. Time O(n) a
 * round, memory O(1).
 */
final class PairSelection {
    private PairSelection() {}

    /** A multiset of pairwise values that can be counted up to a limit. */
    abstract static class Pairs {
        /** Greatest value counted by the last call. */
        double inside;

        /** Least value not counted by the last call. */
        double outside;

        abstract long count(double limit);
    }

    /** Sums x_i + x_j with i &lt;= j. */
    static final class Sums extends Pairs {
        private final double[] x;

        Sums(double[] sorted) {
            x = sorted;
        }

        @Override
        long count(double limit) {
            inside = Double.NEGATIVE_INFINITY;
            outside = Double.POSITIVE_INFINITY;
            long total = 0;
            int j = x.length - 1;
            for (int i = 0; i <= j; i++) {
                while (j >= i && x[i] + x[j] > limit) {
                    outside = Math.min(outside, x[i] + x[j]);
                    j--;
                }
                if (j >= i) {
                    inside = Math.max(inside, x[i] + x[j]);
                    total += j - i + 1;
                }
            }
            return total;
        }
    }

    /** Differences x_j - x_i with i &lt; j. */
    static final class Differences extends Pairs {
        private final double[] x;

        Differences(double[] sorted) {
            x = sorted;
        }

        @Override
        long count(double limit) {
            inside = Double.NEGATIVE_INFINITY;
            outside = Double.POSITIVE_INFINITY;
            long total = 0;
            int j = 1;
            for (int i = 0; i < x.length - 1; i++) {
                j = Math.max(j, i + 1);
                while (j < x.length && x[j] - x[i] <= limit) {
                    j++;
                }
                if (j > i + 1) {
                    inside = Math.max(inside, x[j - 1] - x[i]);
                    total += j - i - 1;
                }
                if (j < x.length) {
                    outside = Math.min(outside, x[j] - x[i]);
                }
            }
            return total;
        }
    }

    /** Differences b_j - a_i between two samples. */
    static final class Shifts extends Pairs {
        private final double[] a;
        private final double[] b;

        Shifts(double[] sortedA, double[] sortedB) {
            a = sortedA;
            b = sortedB;
        }

        @Override
        long count(double limit) {
            inside = Double.NEGATIVE_INFINITY;
            outside = Double.POSITIVE_INFINITY;
            long total = 0;
            int j = 0;
            for (double from : a) {
                while (j < b.length && b[j] - from <= limit) {
                    j++;
                }
                if (j > 0) {
                    inside = Math.max(inside, b[j - 1] - from);
                    total += j;
                }
                if (j < b.length) {
                    outside = Math.min(outside, b[j] - from);
                }
            }
            return total;
        }
    }

    /**
     * The k-th smallest value.
     *
     * @param k rank from 1
     * @param least the least value of all pairs
     * @param greatest the greatest value of all pairs
     */
    static double kth(Pairs pairs, long k, double least, double greatest) {
        double low = least;
        double high = greatest;
        while (low < high) {
            if (pairs.count(between(low, high)) >= k) {
                high = pairs.inside;
            } else {
                low = pairs.outside;
            }
        }
        return low;
    }

    /** The median of {@code total} values: the middle one, or the mean of the two middle ones. */
    static double median(Pairs pairs, long total, double least, double greatest) {
        double lower = kth(pairs, (total + 1) / 2, least, greatest);
        if (total % 2 == 1 || pairs.count(lower) > total / 2) {
            return lower;
        }
        return (lower + pairs.outside) / 2;
    }

    /** A double from {@code low} on but below {@code high}, halfway by bit pattern. */
    private static double between(double low, double high) {
        long a = toOrdered(low);
        long b = toOrdered(high);
        long middle = (a & b) + ((a ^ b) >> 1);
        return Double.longBitsToDouble(middle ^ ((middle >> 63) & Long.MAX_VALUE));
    }

    /** Bits of a double as a whole number that grows with the double; both zeros give 0. */
    private static long toOrdered(double value) {
        long bits = Double.doubleToRawLongBits(value + 0.0);
        return bits ^ ((bits >> 63) & Long.MAX_VALUE);
    }
}
