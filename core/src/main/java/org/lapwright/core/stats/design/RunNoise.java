package org.lapwright.core.stats.design;

/**
 * How values scatter within runs and runs among each other.
 *
 * @param sigma standard deviation of a value within a run, at least 0
 * @param phi correlation of neighbours, above -1 and below 1
 * @param tau standard deviation of the level of a run, at least 0
 */
public record RunNoise(double sigma, double phi, double tau) {
    /** Checks the numbers. */
    public RunNoise {
        if (!(sigma >= 0 && tau >= 0 && sigma < Double.POSITIVE_INFINITY && tau < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "deviations are %s and %s; they must be finite and at least 0".formatted(sigma, tau));
        }
        if (!(phi > -1 && phi < 1)) {
            throw new IllegalArgumentException("φ is %s; it must be above -1 and below 1".formatted(phi));
        }
    }

    /**
     * Variance of the mean of a run: σ²(1 + φ)/((1 - φ) m) + τ². More values in a run stop helping where the second term
     * takes over.
     *
     * @param values values in the run, at least 1
     * @return the variance
     * @throws IllegalArgumentException if {@code values} is below 1
     */
    public double meanVariance(int values) {
        if (values < 1) {
            throw new IllegalArgumentException("a run of %d values; at least one is needed".formatted(values));
        }
        return sigma * sigma * (1 + phi) / ((1 - phi) * values) + tau * tau;
    }
}
