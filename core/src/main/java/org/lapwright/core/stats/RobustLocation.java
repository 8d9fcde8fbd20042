package org.lapwright.core.stats;

/** Where a sample lies, however gross a few of its values are. Results have the unit of the values. */
public final class RobustLocation {
    private RobustLocation() {}

    /**
     * The median.
     *
     * @param sample at least one value, in any order
     * @return the middle value, or the mean of the two middle ones
     * @throws IllegalArgumentException if the sample is empty or not finite
     */
    public static double median(double[] sample) {
        return Selection.median(Samples.require(sample, 1, "sample").clone(), sample.length);
    }

    /**
     * The one-sample Hodges–Lehmann estimate: the median of all Walsh averages (x_i + x_j)/2, i &lt;= j.
     *
     * <p>Up to 29 % of the values may be gross; at the normal distribution it is as good as the mean of 95 % as many
     * values. Exact; O(n log n) time, O(n) memory.
     *
     * @param sample at least one value, in any order
     * @return the estimate
     * @throws IllegalArgumentException if the sample is empty or not finite
     * @see <a href="https://doi.org/10.1214/aoms/1177704172">Hodges and Lehmann 1963, Ann. Math. Statist. 34</a>
     */
    public static double hodgesLehmann(double[] sample) {
        return hodgesLehmannOfSorted(Samples.sorted(sample, 1, "sample"));
    }

    /**
     * {@link #hodgesLehmann} for a sample already in order; not checked.
     *
     * @param sorted at least one finite value, ascending
     * @return the estimate
     */
    public static double hodgesLehmannOfSorted(double[] sorted) {
        long n = sorted.length;
        double least = sorted[0] + sorted[0];
        double greatest = sorted[sorted.length - 1] + sorted[sorted.length - 1];
        return PairSelection.median(new PairSelection.Sums(sorted), n * (n + 1) / 2, least, greatest) / 2;
    }

    /**
     * The mean of what is left when a share of the values is cut off at each end.
     *
     * @param sample at least one value, in any order
     * @param share share to cut at each end, 0 to below 0.5; the number cut is rounded down
     * @return the trimmed mean
     * @throws IllegalArgumentException if the sample is empty or not finite, or the share is outside its range
     */
    public static double trimmedMean(double[] sample, double share) {
        if (!(share >= 0 && share < 0.5)) {
            throw new IllegalArgumentException("trimmed share is %s; it must be from 0 to below 0.5".formatted(share));
        }
        double[] sorted = Samples.sorted(sample, 1, "sample");
        int cut = (int) (sorted.length * share);
        double sum = 0;
        for (int i = cut; i < sorted.length - cut; i++) {
            sum += sorted[i];
        }
        return sum / (sorted.length - 2 * cut);
    }
}
