package org.lapwright.core.stats.resampling;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import org.lapwright.core.stats.RobustScale;

/**
 * Q_n of redraws of one sample. The distances of all pairs are sorted once; each redraw only adds up how often the pairs
 * occur, from the nearest on, until the rank of Q_n is reached, which is after about a quarter of them.
 */
final class RedrawnQn {
    /** Beyond so many values the pairs take too much room, and Q_n is found from the redrawn values. */
    private static final int PAIRS_UP_TO = 300;

    /** Pairs added up before looking whether the rank is reached. */
    private static final int STRIDE = 16;

    private final RunSample sample;
    private final int[] times;
    private final short[] left;
    private final short[] right;

    RedrawnQn(RunSample sample) {
        this.sample = sample;
        times = new int[sample.size()];
        int n = sample.size() <= PAIRS_UP_TO ? sample.size() : 0;
        left = new short[n * (n - 1) / 2];
        right = new short[left.length];
        sortPairs(n);
    }

    /** Sorts by distance with the number of the pair in the low bits, then mends what those bits cut off. */
    private void sortPairs(int n) {
        double[] x = sample.sorted();
        long[] keys = new long[left.length];
        int pairBits = 64 - Long.numberOfLeadingZeros(keys.length);
        long mask = (1L << pairBits) - 1;
        short[] i = new short[keys.length];
        short[] j = new short[keys.length];
        int pair = 0;
        for (int a = 0; a < n; a++) {
            for (int b = a + 1; b < n; b++) {
                i[pair] = (short) a;
                j[pair] = (short) b;
                keys[pair] = (Double.doubleToRawLongBits(x[b] - x[a] + 0.0) & ~mask) | pair;
                pair++;
            }
        }
        Arrays.sort(keys);
        for (int k = 0; k < keys.length; k++) {
            int from = (int) (keys[k] & mask);
            double distance = x[j[from]] - x[i[from]];
            int at = k;
            while (at > 0 && x[right[at - 1]] - x[left[at - 1]] > distance) {
                left[at] = left[at - 1];
                right[at] = right[at - 1];
                at--;
            }
            left[at] = i[from];
            right[at] = j[from];
        }
    }

    /** Q_n of one redraw; 0 if it has a single value. */
    double redraw(RandomGenerator random) {
        int drawn = sample.redraw(times, random);
        if (drawn < 2) {
            return 0;
        }
        if (left.length == 0) {
            return RobustScale.qnOfSorted(sample.expand(times, drawn));
        }
        return RobustScale.qnFactor(drawn) * rawQn(drawn);
    }

    private double rawQn(int drawn) {
        long h = drawn / 2 + 1L;
        long missing = h * (h - 1) / 2;
        for (int count : times) {
            missing -= (long) count * (count - 1) / 2;
        }
        if (missing <= 0) {
            return 0;
        }
        int pair = 0;
        for (int found = 0; pair + STRIDE <= left.length; pair += STRIDE) {
            found = times(pair, pair + STRIDE);
            if (found >= missing) {
                break;
            }
            missing -= found;
        }
        while (missing > times(pair, pair + 1)) {
            missing -= times(pair, pair + 1);
            pair++;
        }
        return sample.sorted()[right[pair]] - sample.sorted()[left[pair]];
    }

    /** How often the pairs of a range occur. */
    private int times(int from, int to) {
        int found = 0;
        for (int pair = from; pair < to; pair++) {
            found += times[left[pair]] * times[right[pair]];
        }
        return found;
    }
}
