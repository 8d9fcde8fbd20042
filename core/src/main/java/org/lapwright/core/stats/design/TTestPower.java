package org.lapwright.core.stats.design;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.special.Gamma;
import org.lapwright.core.stats.NormalTail;
import org.lapwright.core.stats.Quadrature;
import org.lapwright.core.stats.StudentTail;

/**
 * Power of the two-sided two-sample t test with equal groups, by the noncentral t distribution. As R's power.t.test, only
 * the tail on the side of the effect counts.
 *
 * @param alpha allowed chance of a false alarm, both sides together, above 0 and below 1
 */
public record TTestPower(double alpha) {
    private static final int EVALUATIONS = 500;
    private static final double LARGEST_GROUP = 1e7;

    /** Checks the level. */
    public TTestPower {
        if (!(alpha > 0 && alpha < 1)) {
            throw new IllegalArgumentException("α is %s; it must be above 0 and below 1".formatted(alpha));
        }
    }

    /**
     * Chance to show a difference.
     *
     * @param perGroup values in each group, at least 2; may be a fraction
     * @param effect difference over the standard deviation within groups, at least 0
     * @return the power, 0 to 1
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public double power(double perGroup, double effect) {
        if (!(perGroup >= 2 && perGroup <= LARGEST_GROUP && effect >= 0 && effect < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "group of %s and effect of %s; they must be from 2 to 1e7 and finite and at least 0"
                            .formatted(perGroup, effect));
        }
        double nu = 2 * (perGroup - 1);
        return noncentralTail(StudentTail.quantile(alpha / 2, nu), nu, Math.sqrt(perGroup / 2) * effect);
    }

    /**
     * Values in each group that show a difference with a given chance.
     *
     * @param effect difference over the standard deviation within groups, above 0
     * @param power the chance, above α and below 1
     * @return the number, not rounded; 2 if fewer would do
     * @throws IllegalArgumentException if an argument is outside its range, or 10 million are not enough
     */
    public double perGroup(double effect, double power) {
        requirePower(power);
        if (power(2, effect) >= power) {
            return 2;
        }
        double enough = 4;
        while (power(Math.min(enough, LARGEST_GROUP), effect) < power) {
            if (enough > LARGEST_GROUP) {
                throw new IllegalArgumentException(
                        "effect is %s; it is too small for 10 million values a side to show".formatted(effect));
            }
            enough *= 2;
        }
        return solve(n -> power(n, effect) - power, enough / 2, Math.min(enough, LARGEST_GROUP));
    }

    /**
     * The least difference that groups of a given size show with a given chance.
     *
     * @param perGroup values in each group, at least 2
     * @param power the chance, above α and below 1
     * @return the difference over the standard deviation within groups
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public double detectable(double perGroup, double power) {
        requirePower(power);
        double enough = 1;
        while (power(perGroup, enough) < power) {
            enough *= 2;
        }
        return solve(effect -> power(perGroup, effect) - power, 0, enough);
    }

    private void requirePower(double power) {
        if (!(power > alpha && power < 1)) {
            throw new IllegalArgumentException(
                    "power is %s; it must be above α = %s and below 1".formatted(power, alpha));
        }
    }

    private static double solve(UnivariateFunction function, double low, double high) {
        return new BrentSolver(1e-13, 1e-12).solve(EVALUATIONS, function, low, high);
    }

    /**
     * Upper tail of the noncentral t distribution: the normal tail beyond t u - δ, averaged over u = χ_ν/√ν, whose
     * density is smooth and within ten standard deviations of 1.
     */
    private static double noncentralTail(double t, double nu, double delta) {
        double reach = 10 / Math.sqrt(2 * nu);
        double logScale = Math.log(2) + nu / 2 * Math.log(nu / 2) - Gamma.logGamma(nu / 2);
        double tail = Quadrature.integrate(
                u -> Math.exp(logScale + (nu - 1) * Math.log(u) - nu * u * u / 2)
                        * NormalTail.probability(t * u - delta),
                Math.max(0, 1 - reach),
                1 + reach);
        return Math.min(1, tail);
    }
}
