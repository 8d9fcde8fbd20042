package org.lapwright.core.stats.resampling;

import java.util.random.RandomGenerator;
import org.hipparchus.util.CombinatoricsUtils;
import org.lapwright.core.stats.Samples;

/**
 * Permutation test of the difference between two sides with whole runs as units: how many ways of giving the runs to the
 * sides differ as much as the way that was driven?
 *
 * @see <a href="https://doi.org/10.1201/9781420011814">Edgington and Onghena 2007, Randomization Tests</a>
 * @param difference mean of the second side less mean of the first
 * @param labellings ways looked at, the driven one included
 * @param twoSided share of the ways that differ as much in either direction
 * @param lower share of the ways with such a difference or a lower one
 * @param leastTwoSided the least two-sided share that so many runs can give; above the level asked for, nothing can be
 *     proved
 */
public record RunPermutation(double difference, long labellings, double twoSided, double lower, double leastTwoSided) {
    /** Up to so many ways all are tried; beyond, so many are drawn. */
    public static final int ALL_UP_TO = 100_000;

    /** Differences this close, as a share of the largest value, are the same. */
    private static final double ROUNDING = 1e-12;

    /**
     * Tests two sides.
     *
     * @param a one number for each run of the first side, at least one run
     * @param b the same for the second side
     * @param random where chance comes from if there are too many ways to try them all
     * @return the result
     * @throws IllegalArgumentException if a side is empty or a number is not finite
     */
    public static RunPermutation of(double[] a, double[] b, RandomGenerator random) {
        Samples.require(a, 1, "first side");
        Samples.require(b, 1, "second side");
        double[] pool = new double[a.length + b.length];
        System.arraycopy(a, 0, pool, 0, a.length);
        System.arraycopy(b, 0, pool, a.length, b.length);
        Tally tally = new Tally(pool, a.length);
        double ways = CombinatoricsUtils.binomialCoefficientDouble(pool.length, a.length);
        if (ways <= ALL_UP_TO) {
            tally.countAll(0, 0, 0);
        } else {
            tally.count(tally.driven);
            for (int i = 1; i < ALL_UP_TO; i++) {
                tally.count(tally.drawn(random));
            }
        }
        double least = (a.length == b.length ? 2 : 1) / ways;
        return new RunPermutation(
                tally.driven, tally.ways, (double) tally.asFar / tally.ways, (double) tally.asLow / tally.ways, least);
    }

    /** Counts the ways. */
    private static final class Tally {
        private final double[] pool;
        private final int first;
        private final double total;
        private final double tolerance;
        private final double driven;
        private long ways;
        private long asFar;
        private long asLow;

        Tally(double[] pool, int first) {
            this.pool = pool.clone();
            this.first = first;
            double sum = 0;
            double ofFirst = 0;
            double largest = 0;
            for (int i = 0; i < pool.length; i++) {
                sum += pool[i];
                ofFirst += i < first ? pool[i] : 0;
                largest = Math.max(largest, Math.abs(pool[i]));
            }
            total = sum;
            tolerance = ROUNDING * largest;
            driven = difference(ofFirst);
        }

        private double difference(double ofFirst) {
            return (total - ofFirst) / (pool.length - first) - ofFirst / first;
        }

        void count(double difference) {
            ways++;
            asFar += Math.abs(difference) >= Math.abs(driven) - tolerance ? 1 : 0;
            asLow += difference <= driven + tolerance ? 1 : 0;
        }

        /** Every way to choose the rest of the first side from run {@code from} on. */
        void countAll(int from, int chosen, double sum) {
            if (chosen == first) {
                count(difference(sum));
                return;
            }
            for (int i = from; i <= pool.length - (first - chosen); i++) {
                countAll(i + 1, chosen + 1, sum + pool[i]);
            }
        }

        double drawn(RandomGenerator random) {
            double sum = 0;
            for (int i = 0; i < first; i++) {
                int j = random.nextInt(i, pool.length);
                double swap = pool[i];
                pool[i] = pool[j];
                pool[j] = swap;
                sum += pool[i];
            }
            return difference(sum);
        }
    }
}
