package org.lapwright.core.stats.sequential;

import org.lapwright.core.stats.NormalTail;

/**
 * The extendable O'Brien–Fleming boundary: one may look after every value, and run on past the plan.
 *
 * <p>With τ the information so far over the planned one, |z| has to reach c/√τ up to the plan's end, and (c + b(τ - 1))/√τ
 * beyond it, for ever. The score z√τ is a Brownian motion under no effect; by reflection it crosses ±c before τ = 1 with
 * two thirds of the allowed chance (c = Φ⁻¹(1 - α/6)), and b spends the rest on the straight line beyond:
 *
 * <pre>2Φ(-c) + exp(2b² - 2bc) Φ(c - 2b) - exp(2bc + 2b²) Φ(-c - 2b) = α/2</pre>
 *
 * @see <a href="https://doi.org/10.2307/2530245">O'Brien and Fleming 1979, Biometrics 35</a>
 * @see <a href="https://doi.org/10.1007/978-1-4757-1862-1">Siegmund 1985, Sequential Analysis, chapter 3</a>
 * @param alpha chance of crossing at any time if there is no effect, both sides together
 * @param c height of the boundary on the score, up to the plan's end
 * @param b slope of the boundary on the score beyond it
 */
public record GroupSequentialBoundary(double alpha, double c, double b) {
    private static final double LEAST_ALPHA = 1e-6;

    /** Checks the numbers; {@link #of} finds them. */
    public GroupSequentialBoundary {
        if (!(alpha > 0 && c > 0 && b > 0 && c < Double.POSITIVE_INFINITY && b < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "boundary of α = %s, c = %s, b = %s; all must be above 0 and finite".formatted(alpha, c, b));
        }
    }

    /**
     * The boundary for an allowed chance of a false alarm.
     *
     * @param alpha the chance, both sides together, 1e-6 to 0.5
     * @return the boundary
     * @throws IllegalArgumentException if {@code alpha} is outside its range
     */
    public static GroupSequentialBoundary of(double alpha) {
        if (!(alpha >= LEAST_ALPHA && alpha <= 0.5)) {
            throw new IllegalArgumentException("α is %s; it must be from %s to 0.5".formatted(alpha, LEAST_ALPHA));
        }
        double c = NormalTail.quantile(alpha / 6);
        double low = 0;
        double high = 8;
        // The chance falls from 1 at b = 0 to α/3 for a steep line: halve until the doubles meet.
        while (true) {
            double middle = low + (high - low) / 2;
            if (middle == low || middle == high) {
                return new GroupSequentialBoundary(alpha, c, middle);
            }
            if (chanceAbove(c, middle) > alpha / 2) {
                low = middle;
            } else {
                high = middle;
            }
        }
    }

    /** Chance that a Brownian motion ever crosses c up to time 1 or c + b(t - 1) beyond. */
    private static double chanceAbove(double c, double b) {
        return 2 * NormalTail.probability(c)
                + Math.exp(2 * b * b - 2 * b * c) * NormalTail.probability(2 * b - c)
                - Math.exp(2 * b * c + 2 * b * b) * NormalTail.probability(c + 2 * b);
    }

    /**
     * What |z| has to reach.
     *
     * @param fraction τ, information so far over the planned one, at least 0
     * @return the bound on |z|; infinite for {@code fraction = 0}
     * @throws IllegalArgumentException if the fraction is NaN or negative
     */
    public double z(double fraction) {
        if (!(fraction >= 0)) {
            throw new IllegalArgumentException("information fraction is %s; it must be at least 0".formatted(fraction));
        }
        if (fraction == Double.POSITIVE_INFINITY) {
            return Double.POSITIVE_INFINITY;
        }
        double height = fraction <= 1 ? c : c + b * (fraction - 1);
        return height / Math.sqrt(fraction);
    }

    /**
     * One-sided normal tail at the boundary.
     *
     * @param fraction τ, at least 0
     * @return Φ(-z(τ)), above 0
     * @throws IllegalArgumentException if the fraction is NaN or negative
     */
    public double tail(double fraction) {
        return NormalTail.probability(z(fraction));
    }

    /**
     * Whether a look crosses the boundary.
     *
     * @param z the normal deviate of the effect at this look
     * @param fraction τ, at least 0
     * @return true if |z| reaches {@link #z}
     * @throws IllegalArgumentException if the fraction is NaN or negative
     */
    public boolean isCrossed(double z, double fraction) {
        return Math.abs(z) >= z(fraction);
    }
}
