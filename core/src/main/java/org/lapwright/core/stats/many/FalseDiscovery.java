package org.lapwright.core.stats.many;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.lapwright.core.stats.Samples;

/** Keeps the share of false discoveries among all discoveries low when many changes are tried. */
public final class FalseDiscovery {
    private FalseDiscovery() {}

    /**
     * Adjusts p-values of a finished list by Benjamini and Hochberg's step-up: those at or below a level are discoveries
     * at that false discovery rate.
     *
     * @param p p-values, each 0 to 1
     * @return adjusted values in the same order, each 0 to 1
     * @throws IllegalArgumentException if a value is outside 0 to 1
     * @see <a href="https://doi.org/10.1111/j.2517-6161.1995.tb02031.x">Benjamini and Hochberg 1995, J. R. Statist. Soc.
     *     B 57</a>
     */
    public static double[] adjusted(double[] p) {
        for (int i = 0; i < p.length; i++) {
            if (!(p[i] >= 0 && p[i] <= 1)) {
                throw new IllegalArgumentException("p-value %d is %s; it must be from 0 to 1".formatted(i + 1, p[i]));
            }
        }
        int[] order = order(Comparator.comparingDouble(i -> p[i]), p.length);
        double[] adjusted = new double[p.length];
        double least = 1;
        for (int k = p.length; k >= 1; k--) {
            int i = order[k - 1];
            least = Math.min(least, p[i] * p.length / k);
            adjusted[i] = least;
        }
        return adjusted;
    }

    /**
     * Discoveries in a finished list of e-values, however they depend on each other (e-BH).
     *
     * @param logE logarithms of the e-values
     * @param alpha false discovery rate, above 0 and below 1
     * @return indices of the discoveries, from 0, ascending
     * @throws IllegalArgumentException if a number is not finite or outside its range
     * @see <a href="https://doi.org/10.1111/rssb.12489">Wang and Ramdas 2022, J. R. Statist. Soc. B 84</a>
     */
    public static List<Integer> finished(double[] logE, double alpha) {
        require(logE, alpha);
        int[] order = order(Comparator.comparingDouble(i -> -logE[i]), logE.length);
        int found = 0;
        for (int k = 1; k <= logE.length; k++) {
            if (logE[order[k - 1]] >= Math.log(logE.length / (k * alpha))) {
                found = k;
            }
        }
        return IntStream.range(0, found).map(k -> order[k]).sorted().boxed().toList();
    }

    /**
     * Discoveries in a list of e-values that grows, each decided once and for all as it comes (e-LOND). The t-th has to
     * reach π² t²/(6 α (1 + discoveries so far)).
     *
     * @param logE logarithms of the e-values in the order tried
     * @param alpha false discovery rate, above 0 and below 1
     * @return indices of the discoveries, from 0, ascending
     * @throws IllegalArgumentException if a number is not finite or outside its range
     * @see <a href="https://arxiv.org/abs/2311.06412">Xu and Ramdas 2024, AISTATS</a>
     */
    public static List<Integer> running(double[] logE, double alpha) {
        require(logE, alpha);
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < logE.length; i++) {
            double t = i + 1;
            if (logE[i] >= Math.log(Math.PI * Math.PI * t * t / (6 * alpha * (found.size() + 1)))) {
                found.add(i);
            }
        }
        return List.copyOf(found);
    }

    private static void require(double[] logE, double alpha) {
        Samples.require(logE, 0, "log e-values");
        if (!(alpha > 0 && alpha < 1)) {
            throw new IllegalArgumentException(
                    "false discovery rate is %s; it must be above 0 and below 1".formatted(alpha));
        }
    }

    private static int[] order(Comparator<Integer> by, int n) {
        return IntStream.range(0, n)
                .boxed()
                .sorted(by)
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
