package org.lapwright.core.stats;

import org.hipparchus.util.CombinatoricsUtils;

/** Exact distribution of the rank-sum statistic U of two samples without ties, by counting selections. */
final class RankSumDistribution {
    private final double[] lower;

    /** For samples of {@code m} and {@code n} values; O(m² n (m + n)) once. */
    RankSumDistribution(int m, int n) {
        int top = m * n;
        // ways[k][u]: selections of k among the ranks so far that exceed u unselected ones in all.
        double[][] ways = new double[m + 1][top + 1];
        ways[0][0] = 1;
        for (int rank = 1; rank <= m + n; rank++) {
            for (int k = Math.min(rank, m); k >= Math.max(1, rank - n); k--) {
                for (int u = rank - k; u <= k * (rank - k); u++) {
                    ways[k][u] += ways[k - 1][u - (rank - k)];
                }
            }
        }
        double all = CombinatoricsUtils.binomialCoefficientDouble(m + n, m);
        lower = new double[top + 1];
        double sum = 0;
        for (int u = 0; u <= top; u++) {
            sum += ways[m][u];
            lower[u] = sum / all;
        }
    }

    /** P(U &lt;= u). */
    double lowerTail(int u) {
        return u < 0 ? 0 : lower[Math.min(u, lower.length - 1)];
    }

    /** The least u with P(U &lt;= u) of at least {@code p}. */
    int quantile(double p) {
        int u = 0;
        while (lower[u] < p) {
            u++;
        }
        return u;
    }
}
