package org.lapwright.core.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.special.Gamma;
import org.hipparchus.stat.ranking.NaturalRanking;

/** Whether groups scatter alike, by tests that skewed values do not set off. */
public final class ScaleTest {
    private ScaleTest() {}

    /**
     * Brown and Forsythe's test: analysis of variance of the distances from the group medians.
     *
     * @param groups at least two groups of at least one value, more values than groups in all
     * @return the analysis of the distances
     * @throws IllegalArgumentException if there are too few groups or values, or one is not finite
     * @see <a href="https://doi.org/10.1080/01621459.1974.10482955">Brown and Forsythe 1974, J. Amer. Statist. Assoc.
     *     69</a>
     */
    public static OneWayAnova brownForsythe(List<double[]> groups) {
        return OneWayAnova.of(distances(groups));
    }

    /**
     * The median-centred test of Fligner and Killeen: normal scores of the ranks of those distances.
     *
     * @param groups at least two groups of at least one value
     * @return chi-squared statistic and p-value
     * @throws IllegalArgumentException if there are too few groups or values, or one is not finite
     * @see <a href="https://doi.org/10.1080/00401706.1981.10487680">Conover, Johnson and Johnson 1981, Technometrics
     *     23</a>
     */
    public static ChiSquared flignerKilleen(List<double[]> groups) {
        if (groups.size() < 2) {
            throw new IllegalArgumentException("%d groups; at least two are needed".formatted(groups.size()));
        }
        List<double[]> distances = distances(groups);
        double[] ranks = new NaturalRanking()
                .rank(distances.stream().flatMapToDouble(Arrays::stream).toArray());
        int n = ranks.length;
        double mean = 0;
        for (int i = 0; i < n; i++) {
            ranks[i] = NormalTail.quantile((1 - ranks[i] / (n + 1)) / 2);
            mean += ranks[i] / n;
        }
        double between = 0;
        double all = 0;
        int next = 0;
        for (double[] group : distances) {
            double sum = 0;
            for (int i = 0; i < group.length; i++, next++) {
                sum += ranks[next] - mean;
                all += (ranks[next] - mean) * (ranks[next] - mean);
            }
            between += sum * sum / group.length;
        }
        return new ChiSquared(all > 0 ? between / (all / (n - 1)) : 0, groups.size() - 1);
    }

    private static List<double[]> distances(List<double[]> groups) {
        List<double[]> distances = new ArrayList<>();
        for (double[] group : groups) {
            double centre = RobustLocation.median(group);
            double[] distance = group.clone();
            for (int i = 0; i < distance.length; i++) {
                distance[i] = Math.abs(distance[i] - centre);
            }
            distances.add(distance);
        }
        return distances;
    }

    /**
     * A chi-squared statistic.
     *
     * @param statistic its value, at least 0
     * @param df degrees of freedom, at least 1
     */
    public record ChiSquared(double statistic, int df) {
        /**
         * The p-value.
         *
         * @return chance of such a value or a greater one
         */
        public double p() {
            return Gamma.regularizedGammaQ(df / 2.0, statistic / 2);
        }
    }
}
