package org.lapwright.core.stats;

import java.util.Optional;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * Quantiles of a sample: types 7 and 8 of Hyndman and Fan (1996, The American Statistician 50), the smoother one of
 * Harrell and Davis, and an interval that assumes no distribution.
 *
 * <p>Results have the unit of the values; shares {@code p} run from 0 to 1.
 */
public final class Quantile {
    private Quantile() {}

    /**
     * Type 7: linear between the values at (k - 1)/(n - 1). The default of R and of spreadsheets.
     *
     * @param sample at least one value, in any order
     * @param p share below, 0 to 1
     * @return the quantile
     * @throws IllegalArgumentException if the sample is empty or not finite, or {@code p} is outside 0 to 1
     */
    public static double type7(double[] sample, double p) {
        double[] sorted = Samples.sorted(sample, 1, "sample");
        return interpolated(sorted, (sorted.length - 1) * requireShare(p));
    }

    /**
     * Type 8: linear between the values at (k - 1/3)/(n + 1/3). Nearly unbiased for the median of the order statistic
     * whatever the distribution.
     *
     * @param sample at least one value, in any order
     * @param p share below, 0 to 1
     * @return the quantile
     * @throws IllegalArgumentException if the sample is empty or not finite, or {@code p} is outside 0 to 1
     */
    public static double type8(double[] sample, double p) {
        double[] sorted = Samples.sorted(sample, 1, "sample");
        return interpolated(sorted, (sorted.length + 1.0 / 3) * requireShare(p) - 2.0 / 3);
    }

    /**
     * The Harrell–Davis quantile: a mean of all order statistics with the weights of a beta distribution. Steadier
     * than an interpolated one for few values, but every value counts a little, gross ones too.
     *
     * @param sample at least one value, in any order
     * @param p share below, above 0 and below 1
     * @return the quantile
     * @throws IllegalArgumentException if the sample is empty or not finite, or {@code p} is not inside (0, 1)
     * @see <a href="https://doi.org/10.1093/biomet/69.3.635">Harrell and Davis 1982, Biometrika 69</a>
     */
    public static double harrellDavis(double[] sample, double p) {
        requireInside(p, "share");
        double[] sorted = Samples.sorted(sample, 1, "sample");
        int n = sorted.length;
        BetaDistribution beta = new BetaDistribution((n + 1) * p, (n + 1) * (1 - p));
        double sum = 0;
        double below = 0;
        for (int i = 0; i < n; i++) {
            double upTo = beta.cumulativeProbability((i + 1.0) / n);
            sum += (upTo - below) * sorted[i];
            below = upTo;
        }
        return sum;
    }

    /**
     * An interval for a quantile of the population between two order statistics, whatever the distribution.
     *
     * @param sample at least one value, in any order, independent of each other
     * @param p share below, above 0 and below 1
     * @param level confidence asked for, above 0 and below 1
     * @return the interval; empty if the sample is too small for both ends to be among its values
     * @throws IllegalArgumentException if the sample is empty or not finite, or a number is outside its range
     * @see <a href="https://doi.org/10.1002/9781119196037">Hollander, Wolfe and Chicken 2014, section 3.6</a>
     */
    public static Optional<OrderStatisticInterval> interval(double[] sample, double p, double level) {
        requireInside(p, "share");
        requireInside(level, "confidence level");
        double[] sorted = Samples.sorted(sample, 1, "sample");
        int n = sorted.length;
        BinomialDistribution below = new BinomialDistribution(n, p);
        int lower = below.inverseCumulativeProbability((1 - level) / 2);
        int upper = below.inverseCumulativeProbability((1 + level) / 2) + 1;
        if (lower < 1 || upper > n) {
            return Optional.empty();
        }
        double coverage = below.cumulativeProbability(upper - 1) - below.cumulativeProbability(lower - 1);
        return Optional.of(new OrderStatisticInterval(sorted[lower - 1], sorted[upper - 1], lower, upper, coverage));
    }

    private static double interpolated(double[] sorted, double position) {
        double inside = Math.min(Math.max(position, 0), sorted.length - 1.0);
        int k = Math.min((int) inside, sorted.length - 1);
        double share = inside - k;
        return share == 0 ? sorted[k] : sorted[k] + share * (sorted[k + 1] - sorted[k]);
    }

    private static double requireShare(double p) {
        if (!(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException("share is %s; it must be from 0 to 1".formatted(p));
        }
        return p;
    }

    private static void requireInside(double p, String name) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("%s is %s; it must be above 0 and below 1".formatted(name, p));
        }
    }
}
