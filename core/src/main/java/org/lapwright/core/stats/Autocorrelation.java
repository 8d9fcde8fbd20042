package org.lapwright.core.stats;

import org.hipparchus.stat.StatUtils;

/** How much a value tells about the next one, and what that does to the worth of the sample. */
public final class Autocorrelation {
    /** Bound on the corrected coefficient: what a short sample says beyond it is noise. */
    private static final double LARGEST = 0.99;

    private Autocorrelation() {}

    /**
     * The sample autocorrelation Σ(x_i - m)(x_{i+lag} - m)/Σ(x_i - m)², with m the mean.
     *
     * @param sample values in the order measured, more than {@code lag}
     * @param lag distance, at least 1
     * @return the coefficient, from -1 to 1; 0 for equal values
     * @throws IllegalArgumentException if the sample is too short or not finite, or the lag is below 1
     */
    public static double atLag(double[] sample, int lag) {
        if (lag < 1) {
            throw new IllegalArgumentException("lag is %d; it must be at least 1".formatted(lag));
        }
        Samples.require(sample, lag + 1, "sample");
        double mean = StatUtils.mean(sample);
        double products = 0;
        double squares = 0;
        for (int i = 0; i < sample.length; i++) {
            double deviation = sample[i] - mean;
            squares += deviation * deviation;
            if (i >= lag) {
                products += deviation * (sample[i - lag] - mean);
            }
        }
        // Equal values leave only the rounding of their mean.
        double rounding = 2 * Math.ulp(mean);
        return squares > sample.length * rounding * rounding ? products / squares : 0;
    }

    /**
     * The autocorrelation of neighbours.
     *
     * @param sample values in the order measured, at least two
     * @return the coefficient, from -1 to 1; 0 for equal values
     * @throws IllegalArgumentException if there are fewer than two values or one is not finite
     */
    public static double lag1(double[] sample) {
        return atLag(sample, 1);
    }

    /**
     * {@link #lag1} with its bias in a short sample taken out: r + (1 + 4 r)/n, kept within ±0.99.
     *
     * @param sample values in the order measured, at least two
     * @return the corrected coefficient
     * @throws IllegalArgumentException if there are fewer than two values or one is not finite
     * @see <a href="https://doi.org/10.1093/biomet/41.3-4.390">Marriott and Pope 1954, Biometrika 41</a>
     */
    public static double lag1Corrected(double[] sample) {
        double r = lag1(sample);
        return Math.max(-LARGEST, Math.min(LARGEST, r + (1 + 4 * r) / sample.length));
    }

    /**
     * How many independent values would fix the mean as well: n(1 - φ)/(1 + φ) for a first-order autoregression. More
     * than n if neighbours alternate.
     *
     * @param n number of values, at least 0
     * @param phi lag-1 autocorrelation, above -1 and below 1
     * @return the effective number of values
     * @throws IllegalArgumentException if an argument is outside its range
     * @see <a href="https://doi.org/10.2307/2983560">Bayley and Hammersley 1946, J. R. Statist. Soc. Suppl. 8</a>
     */
    public static double effectiveSampleSize(int n, double phi) {
        if (n < 0) {
            throw new IllegalArgumentException("number of values is %d; it must be at least 0".formatted(n));
        }
        if (!(phi > -1 && phi < 1)) {
            throw new IllegalArgumentException("autocorrelation is %s; it must be above -1 and below 1".formatted(phi));
        }
        return n * (1 - phi) / (1 + phi);
    }
}
