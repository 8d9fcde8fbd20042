package org.lapwright.core.doubt;

import java.util.Arrays;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.lapwright.core.units.Interval;

/** A computed number as many drawn inputs gave it. Immutable. */
public final class SampledDoubt {
    private final double[] sorted;
    private final int lost;
    private final double mean;
    private final double standardDeviation;

    private SampledDoubt(double[] sorted, int lost) {
        this.sorted = sorted;
        this.lost = lost;
        StreamingStatistics sums = new StreamingStatistics();
        for (double value : sorted) {
            sums.addValue(value);
        }
        mean = sums.getMean();
        standardDeviation = sums.getStandardDeviation();
    }

    /**
     * Gathers what the draws gave.
     *
     * @param values one for each draw, in any order; those that are not finite are counted and left out
     * @throws IllegalArgumentException if fewer than two are finite
     */
    public static SampledDoubt of(double[] values) {
        double[] sorted =
                Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
        if (sorted.length < 2) {
            throw new IllegalArgumentException("%d of %d draws gave a number; it takes at least two to see a spread"
                    .formatted(sorted.length, values.length));
        }
        return new SampledDoubt(sorted, values.length - sorted.length);
    }

    /** How many draws gave a number. */
    public int count() {
        return sorted.length;
    }

    /** How many draws gave none. */
    public int lost() {
        return lost;
    }

    /** Mean of the draws that gave a number. */
    public double mean() {
        return mean;
    }

    /** Their standard deviation, the standard uncertainty (JCGM 101:2008, 7.6). */
    public double standardDeviation() {
        return standardDeviation;
    }

    /** By how much the mean may be off because the draws were not endless: one standard error. */
    public double meanError() {
        return standardDeviation / Math.sqrt(sorted.length);
    }

    /**
     * The probabilistically symmetric coverage interval (JCGM 101:2008, 7.7).
     *
     * @param level above 0 and below 1
     */
    public Interval interval(double level) {
        int inside = inside(level);
        int below = below(inside);
        return new Interval(sorted[below - 1], sorted[below + inside - 1]);
    }

    /**
     * By how much an end of the interval may be off because the draws were not endless: the greater of both standard errors,
     * from the values one standard deviation of the rank away.
     *
     * @param level above 0 and below 1
     */
    public double endError(double level) {
        int inside = inside(level);
        int below = below(inside);
        int ranks = (int) Math.ceil(Math.sqrt(sorted.length * (1 - level * level) / 4));
        return Math.max(halfGap(below - 1, ranks), halfGap(below + inside - 1, ranks));
    }

    private double halfGap(int place, int ranks) {
        int last = sorted.length - 1;
        return (sorted[Math.min(last, place + ranks)] - sorted[Math.max(0, place - ranks)]) / 2;
    }

    /** q of 7.7.2. */
    private int inside(double level) {
        return Math.min(sorted.length - 1, (int) Math.floor(Levels.check(level) * sorted.length + 0.5));
    }

    /** r of 7.7.2. */
    private int below(int inside) {
        return Math.max(1, (sorted.length - inside + 1) / 2);
    }
}
