package org.lapwright.core.stats.sequential;

/**
 * Evidence for an effect in a linear model that may be looked at any time and without a plan: an e-value, the likelihood
 * ratio of a normal mixture of effects against none, unknown scatter included.
 *
 * <p>With no effect it ever reaches 1/α with chance α at most. The mixture has variance σ²/g.
 *
 * @see <a href="https://arxiv.org/abs/2210.08589">Lindon, Ham, Tingley and Bojinov 2022</a>
 * @see <a href="https://arxiv.org/abs/2310.03722">Wang and Ramdas 2023</a>
 * @param g precision of the mixture in units of information, above 0
 */
public record TMixtureEvidence(double g) {
    /** Checks the precision. */
    public TMixtureEvidence {
        requirePositive(g, "precision of the mixture");
    }

    /**
     * Logarithm of the e-value.
     *
     * @param t t statistic of the effect; may be infinite
     * @param s information on the effect, above 0
     * @param nu degrees of freedom, above 0
     * @return log e
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double logE(double t, double s, double nu) {
        requirePositive(s, "information");
        requirePositive(nu, "degrees of freedom");
        if (Double.isNaN(t)) {
            throw new IllegalArgumentException("t is NaN; it must be a number");
        }
        double k = g / (g + s);
        // log(1 + t²/ν) - log(1 + k t²/ν) in a form that neither overflows nor cancels.
        double u = t / Math.sqrt(nu);
        double ratio = Math.abs(u) <= 1
                ? Math.log1p(u * u) - Math.log1p(k * u * u)
                : Math.log1p(1 / u / u) - Math.log(k + 1 / u / u);
        return 0.5 * Math.log(k) + (nu + 1) / 2 * ratio;
    }

    /**
     * Half of the width of the confidence sequence in standard errors: the |t| whose e-value is 1/α.
     *
     * @param s information on the effect, above 0
     * @param nu degrees of freedom, above 0
     * @param alpha allowed chance of ever missing the effect, above 0 and below 1
     * @return the half-width; infinite while no t could be evidence enough
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double halfWidth(double s, double nu, double alpha) {
        requirePositive(s, "information");
        requirePositive(nu, "degrees of freedom");
        if (!(alpha > 0 && alpha < 1)) {
            throw new IllegalArgumentException("α is %s; it must be above 0 and below 1".formatted(alpha));
        }
        double k = g / (g + s);
        double r = Math.exp(-(2 * Math.log(alpha) + Math.log(k)) / (nu + 1));
        return r * k < 1 ? Math.sqrt(nu * (r - 1) / (1 - r * k)) : Double.POSITIVE_INFINITY;
    }

    private static void requirePositive(double value, String name) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("%s is %s; it must be finite and above 0".formatted(name, value));
        }
    }
}
