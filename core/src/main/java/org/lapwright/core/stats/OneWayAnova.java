package org.lapwright.core.stats;

import java.util.List;
import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.stat.StatUtils;

/**
 * One-way analysis of variance from deviations, so that large equal leading digits do no harm.
 *
 * <p>Hipparchus subtracts sums of squares: on the NIST set SmLs04 (seven constant digits) it gives F = 20.19 for 21, on
 * SmLs07 a negative one.
 *
 * @param dfBetween degrees of freedom between groups
 * @param ssBetween sum of squares between groups
 * @param dfWithin degrees of freedom within groups
 * @param ssWithin sum of squares within groups
 */
public record OneWayAnova(int dfBetween, double ssBetween, int dfWithin, double ssWithin) {
    /**
     * Analyses groups.
     *
     * @param groups at least two groups of at least one value, more values than groups in all
     * @return the analysis
     * @throws IllegalArgumentException if there are too few groups or values, or one is not finite
     */
    public static OneWayAnova of(List<double[]> groups) {
        if (groups.size() < 2) {
            throw new IllegalArgumentException("%d groups; at least two are needed".formatted(groups.size()));
        }
        int n = 0;
        // All deviations are from one value of the data, which takes the constant digits out without rounding.
        double origin = Samples.require(groups.get(0), 1, "group 1")[0];
        double[] means = new double[groups.size()];
        double sum = 0;
        double ssWithin = 0;
        for (int g = 0; g < means.length; g++) {
            double[] group =
                    Samples.require(groups.get(g), 1, "group " + (g + 1)).clone();
            for (int i = 0; i < group.length; i++) {
                group[i] -= origin;
            }
            means[g] = StatUtils.mean(group);
            ssWithin += group.length > 1 ? StatUtils.variance(group, means[g]) * (group.length - 1) : 0;
            sum += means[g] * group.length;
            n += group.length;
        }
        if (n <= means.length) {
            throw new IllegalArgumentException(
                    "%d values in %d groups; more values than groups are needed".formatted(n, means.length));
        }
        double ssBetween = 0;
        for (int g = 0; g < means.length; g++) {
            double deviation = means[g] - sum / n;
            ssBetween += groups.get(g).length * deviation * deviation;
        }
        return new OneWayAnova(means.length - 1, ssBetween, n - means.length, ssWithin);
    }

    /**
     * The F statistic.
     *
     * @return mean square between over mean square within; 0 for no scatter at all, infinite for none within
     */
    public double f() {
        return ssBetween == 0 ? 0 : ssBetween / dfBetween / (ssWithin / dfWithin);
    }

    /**
     * The p-value.
     *
     * @return chance of such an F or a greater one if all groups have one mean
     */
    public double p() {
        // Swapping the degrees of freedom turns the upper tail into the lower one, which keeps small values exact.
        return ssBetween == 0 ? 1 : new FDistribution(dfWithin, dfBetween).cumulativeProbability(1 / f());
    }

    /**
     * Share of the sum of squares between groups.
     *
     * @return R², 0 to 1; 0 for no scatter at all
     */
    public double rSquared() {
        return ssBetween == 0 ? 0 : ssBetween / (ssBetween + ssWithin);
    }

    /**
     * Standard deviation within groups.
     *
     * @return the deviation, in the unit of the values
     */
    public double residualSd() {
        return Math.sqrt(ssWithin / dfWithin);
    }
}
