package org.lapwright.core.stats.resampling;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import org.lapwright.core.stats.Samples;

/**
 * Values of several runs, kept so that redrawing them is quick: sorted once, and redrawn as how often each one counts.
 *
 * <p>A redraw takes as many runs as there are, with replacement, and rebuilds each from blocks of neighbours, so that
 * both the level of a run and the ties between neighbours survive. Immutable.
 *
 * @see <a href="https://doi.org/10.1214/aos/1176347265">Künsch 1989, Ann. Statist. 17</a>
 * @see <a href="https://doi.org/10.1017/CBO9780511802843">Davison and Hinkley 1997, sections 3.8 and 8.2</a>
 */
public final class RunSample {
    private final double[] sorted;
    private final int[] rankOf;
    private final int[] starts;

    private RunSample(double[] sorted, int[] rankOf, int[] starts) {
        this.sorted = sorted;
        this.rankOf = rankOf;
        this.starts = starts;
    }

    /**
     * Takes the values of several runs.
     *
     * @param runs the values of each run in the order measured; at least one run, none empty
     * @return the sample
     * @throws IllegalArgumentException if there is no run, one is empty or a value is not finite
     */
    public static RunSample of(double[]... runs) {
        if (runs.length == 0) {
            throw new IllegalArgumentException("no runs; at least one is needed");
        }
        int[] starts = new int[runs.length + 1];
        for (int r = 0; r < runs.length; r++) {
            Samples.require(runs[r], 1, "run " + (r + 1));
            starts[r + 1] = starts[r] + runs[r].length;
        }
        double[] values = Arrays.stream(runs).flatMapToDouble(Arrays::stream).toArray();
        Integer[] order = new Integer[values.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (i, j) -> Double.compare(values[i], values[j]));
        int[] rankOf = new int[values.length];
        double[] sorted = new double[values.length];
        for (int rank = 0; rank < order.length; rank++) {
            rankOf[order[rank]] = rank;
            sorted[rank] = values[order[rank]];
        }
        return new RunSample(sorted, rankOf, starts);
    }

    /**
     * Number of values.
     *
     * @return the number, at least 1
     */
    public int size() {
        return sorted.length;
    }

    /** The values in ascending order; not to be changed. */
    double[] sorted() {
        return sorted;
    }

    /**
     * Redraws.
     *
     * @param times filled with how often each value counts, in ascending order of the values
     * @param random where chance comes from
     * @return how many values were drawn; differs from {@link #size} if runs are of uneven length
     */
    int redraw(int[] times, RandomGenerator random) {
        Arrays.fill(times, 0);
        int runs = starts.length - 1;
        int drawn = 0;
        for (int i = 0; i < runs; i++) {
            int run = random.nextInt(runs);
            int from = starts[run];
            int length = starts[run + 1] - from;
            int block = (int) Math.ceil(Math.cbrt(length));
            for (int filled = 0; filled < length; filled += block) {
                int begin = from + random.nextInt(length - block + 1);
                for (int k = Math.min(block, length - filled) - 1; k >= 0; k--) {
                    times[rankOf[begin + k]]++;
                }
            }
            drawn += length;
        }
        return drawn;
    }

    /** Writes the redrawn values in ascending order. */
    double[] expand(int[] times, int drawn) {
        double[] values = new double[drawn];
        int next = 0;
        for (int rank = 0; rank < times.length; rank++) {
            for (int k = 0; k < times[rank]; k++) {
                values[next++] = sorted[rank];
            }
        }
        return values;
    }
}
