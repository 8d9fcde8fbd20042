package org.lapwright.core.stats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The Theil–Sen line: slope the median over all pairs, intercept the median of what is left. Up to 29 % of the points
 * may be gross.
 *
 * @see <a href="https://doi.org/10.1080/01621459.1968.10480934">Sen 1968, J. Amer. Statist. Assoc. 63</a>
 */
public final class TheilSen {
    /** Up to so many points all slopes are formed; beyond, they are counted, and the median is found by bisection. */
    private static final int ALL_PAIRS_UP_TO = 1000;

    /** Bisection ends at this share of the range of neighbouring slopes, or after so many rounds. */
    private static final double ACCURACY = 1e-12;

    private static final int MOST_ROUNDS = 60;

    private TheilSen() {}

    /**
     * Fits a line. Pairs of points at the same x say nothing about the slope and are left out.
     *
     * <p>Exact up to 1000 points in O(n²). Beyond that the slope is a median to within 1e-12 of the range of slopes
     * between neighbours, in O(n log n); of an even number it may be any value between the two middle ones.
     *
     * @param x where the points lie, in any order
     * @param y their values, as many as {@code x}
     * @return the line; empty if all points have the same x
     * @throws IllegalArgumentException if the lengths differ, there is no point, or a number is not finite
     */
    public static Optional<TrendLine> fit(double[] x, double[] y) {
        Samples.require(x, 1, "x");
        Samples.require(y, 1, "y");
        if (x.length != y.length) {
            throw new IllegalArgumentException(
                    "x has %d values and y %d; they must be as many".formatted(x.length, y.length));
        }
        int[] order = IntStream.range(0, x.length)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(i -> x[i]).thenComparingDouble(i -> y[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] xs = Arrays.stream(order).mapToDouble(i -> x[i]).toArray();
        double[] ys = Arrays.stream(order).mapToDouble(i -> y[i]).toArray();
        if (xs[0] == xs[xs.length - 1]) {
            return Optional.empty();
        }
        double slope = xs.length <= ALL_PAIRS_UP_TO ? medianOfAll(xs, ys) : medianByCounting(xs, ys);
        double[] rest = residuals(xs, ys, slope, new double[xs.length]);
        return Optional.of(new TrendLine(Selection.median(rest, rest.length), slope));
    }

    private static double medianOfAll(double[] x, double[] y) {
        int n = x.length;
        double[] slopes = new double[n * (n - 1) / 2];
        int count = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (x[j] > x[i]) {
                    slopes[count++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        return Selection.median(slopes, count);
    }

    /** A pair has a slope below v exactly if y - v x falls from its left point to its right one: count inversions. */
    private static double medianByCounting(double[] x, double[] y) {
        int n = x.length;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int[] pair : neighbours(x)) {
            // Points at one x are in order of y, so the outermost ones bound every slope across the gap.
            low = Math.min(low, (y[pair[2]] - y[pair[1]]) / (x[pair[2]] - x[pair[1]]));
            high = Math.max(high, (y[pair[3]] - y[pair[0]]) / (x[pair[2]] - x[pair[1]]));
        }
        double[] work = new double[n];
        double[] rest = new double[n];
        long pairs = distinctPairs(x);
        double enough = (high - low) * ACCURACY;
        double[] guess = guess(x, y, work);
        for (int round = 0; round < MOST_ROUNDS && high - low > enough; round++) {
            double middle =
                    round < 2 && guess[round] > low && guess[round] < high ? guess[round] : low + (high - low) / 2;
            if (2 * inversions(residuals(x, y, middle, rest), work) <= pairs) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low + (high - low) / 2;
    }

    /** Either side of where the median most likely is, from the slopes between points half the sample apart. */
    private static double[] guess(double[] x, double[] y, double[] work) {
        int half = x.length / 2;
        int count = 0;
        for (int i = 0; i + half < x.length; i++) {
            if (x[i + half] > x[i]) {
                work[count++] = (y[i + half] - y[i]) / (x[i + half] - x[i]);
            }
        }
        if (count == 0) {
            return new double[] {Double.NaN, Double.NaN};
        }
        double[] slopes = Arrays.copyOf(work, count);
        double middle = Selection.median(work, count);
        for (int i = 0; i < count; i++) {
            work[i] = Math.abs(slopes[i] - middle);
        }
        double reach = 6 * Selection.median(work, count) / Math.sqrt(count);
        return new double[] {middle - reach, middle + reach};
    }

    /** For each gap in x: first and last index of the points before it, first and last of those after it. */
    private static int[][] neighbours(double[] x) {
        int[] starts = IntStream.range(0, x.length)
                .filter(i -> i == 0 || x[i] > x[i - 1])
                .toArray();
        return IntStream.range(1, starts.length)
                .mapToObj(g -> new int[] {
                    starts[g - 1], starts[g] - 1, starts[g], (g + 1 < starts.length ? starts[g + 1] : x.length) - 1
                })
                .toArray(int[][]::new);
    }

    private static long distinctPairs(double[] x) {
        long n = x.length;
        long pairs = n * (n - 1) / 2;
        long same = 0;
        for (int i = 1; i < x.length; i++) {
            same = x[i] == x[i - 1] ? same + 1 : 0;
            pairs -= same;
        }
        return pairs;
    }

    private static double[] residuals(double[] x, double[] y, double slope, double[] into) {
        for (int i = 0; i < x.length; i++) {
            into[i] = y[i] - slope * x[i];
        }
        return into;
    }

    /** Number of pairs out of order, by merge sort; {@code values} end up sorted. */
    private static long inversions(double[] values, double[] work) {
        long count = 0;
        int n = values.length;
        for (int width = 1; width < n; width *= 2) {
            for (int from = 0; from + width < n; from += 2 * width) {
                count += merge(values, work, from, from + width, Math.min(from + 2 * width, n));
            }
        }
        return count;
    }

    private static long merge(double[] values, double[] work, int from, int middle, int to) {
        if (values[middle - 1] <= values[middle]) {
            return 0;
        }
        System.arraycopy(values, from, work, from, middle - from);
        long count = 0;
        int left = from;
        int right = middle;
        int out = from;
        while (left < middle) {
            if (right < to && values[right] < work[left]) {
                values[out++] = values[right++];
                count += middle - left;
            } else {
                values[out++] = work[left++];
            }
        }
        return count;
    }
}
