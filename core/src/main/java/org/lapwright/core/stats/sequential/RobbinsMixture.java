package org.lapwright.core.stats.sequential;

/**
 * Robbins' two-sided normal-mixture boundary: a sum of independent values with no effect and unit variance ever leaves
 * ±{@link #bound} with chance α at most, without any plan.
 *
 * @see <a href="https://doi.org/10.1214/20-AOS1991">Howard, Ramdas, McAuliffe and Sekhon 2021, Ann. Statist. 49</a>
 * @param rho where it is tight, in intrinsic time, above 0
 */
public record RobbinsMixture(double rho) {
    /** Checks the tuning. */
    public RobbinsMixture {
        requirePositive(rho, "ρ");
    }

    /**
     * The mixture that is tightest at one time.
     *
     * @param time intrinsic time, for example the number of values with unit variance, above 0
     * @param alpha chance of ever leaving, above 0 and below 1
     * @return the mixture, ρ = time/(2 log(1/α) + log(1 + 2 log(1/α)))
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static RobbinsMixture tightAt(double time, double alpha) {
        requirePositive(time, "time");
        double twice = -2 * Math.log(requireLevel(alpha));
        return new RobbinsMixture(time / (twice + Math.log1p(twice)));
    }

    /**
     * The boundary on the sum.
     *
     * @param time intrinsic time, above 0
     * @param alpha chance of ever leaving, above 0 and below 1
     * @return √((t + ρ) log((t + ρ)/(ρ α²)))
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public double bound(double time, double alpha) {
        requirePositive(time, "time");
        return Math.sqrt((time + rho) * (Math.log1p(time / rho) - 2 * Math.log(requireLevel(alpha))));
    }

    /**
     * Half of the width of the asymptotic confidence sequence for a mean.
     *
     * @param n number of values, at least 1
     * @param sigma their standard deviation, at least 0
     * @param alpha chance of ever missing the mean, above 0 and below 1
     * @return σ {@link #bound}(n)/n
     * @throws IllegalArgumentException if an argument is outside its range
     * @see <a href="https://arxiv.org/abs/2103.06476">Waudby-Smith, Arbour, Sinha, Kennedy and Ramdas 2024</a>
     */
    public double halfWidth(int n, double sigma, double alpha) {
        if (!(sigma >= 0 && sigma < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("deviation is %s; it must be finite and at least 0".formatted(sigma));
        }
        return sigma * bound(n, alpha) / n;
    }

    private static void requirePositive(double value, String name) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("%s is %s; it must be finite and above 0".formatted(name, value));
        }
    }

    private static double requireLevel(double alpha) {
        if (!(alpha > 0 && alpha < 1)) {
            throw new IllegalArgumentException("α is %s; it must be above 0 and below 1".formatted(alpha));
        }
        return alpha;
    }
}
