package org.lapwright.core.stats;

import org.lapwright.core.units.Interval;

/**
 * The two-sample Hodges–Lehmann shift, the median of all differences b_j - a_i, with the interval that belongs to the
 * rank-sum test.
 *
 * <p>Values within a sample have to be independent; laps of one run are not.
 *
 * @see <a href="https://doi.org/10.1002/9781119196037">Hollander, Wolfe and Chicken 2014, sections 4.2 and 4.3</a>
 */
public final class RankShift {
    /** Up to so many values a side the distribution is counted, beyond it is taken as normal. */
    private static final int EXACT_UP_TO = 50;

    private RankShift() {}

    /**
     * How far {@code b} lies above {@code a}. O((m + n) log(m + n)) time apart from counting ranks.
     *
     * @param a one sample, at least one value
     * @param b the other, at least one value
     * @param level confidence asked for, above 0 and below 1
     * @return the shift; its interval is exact for up to 50 values a side without ties, and wide enough with ties
     * @throws IllegalArgumentException if a sample is empty or not finite, or the level is outside its range
     */
    public static ShiftEstimate estimate(double[] a, double[] b, double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException(
                    "confidence level is %s; it must be above 0 and below 1".formatted(level));
        }
        double[] from = Samples.sorted(a, 1, "sample a");
        double[] to = Samples.sorted(b, 1, "sample b");
        PairSelection.Shifts shifts = new PairSelection.Shifts(from, to);
        double least = to[0] - from[from.length - 1];
        double greatest = to[to.length - 1] - from[0];
        long pairs = (long) a.length * b.length;
        double shift = PairSelection.median(shifts, pairs, least, greatest);
        long rank;
        double coverage;
        if (Math.max(a.length, b.length) <= EXACT_UP_TO) {
            RankSumDistribution u = new RankSumDistribution(a.length, b.length);
            rank = Math.max(1, u.quantile((1 - level) / 2));
            coverage = 1 - 2 * u.lowerTail((int) rank - 1);
        } else {
            double sd = Math.sqrt(pairs * (a.length + b.length + 1.0) / 12);
            rank = Math.max(1, (long) (pairs / 2.0 - NormalTail.quantile((1 - level) / 2) * sd));
            coverage = 1 - 2 * NormalTail.probability((pairs / 2.0 - rank + 0.5) / sd);
        }
        Interval interval = new Interval(
                PairSelection.kth(shifts, rank, least, greatest),
                PairSelection.kth(shifts, pairs + 1 - rank, least, greatest));
        return new ShiftEstimate(shift, interval, Math.max(0, coverage));
    }
}
