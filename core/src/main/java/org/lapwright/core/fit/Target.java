package org.lapwright.core.fit;

/**
 * What is to be found out: a standard normal belief of some unknowns, and numbers that were observed with normal noise.
 *
 * <p>The logarithm of the density at z is −½ |z|² − ½ r′ P r with r = {@link #residuals}; P is the inverse of the noise's covariance.
 */
interface Target {
    /** How many unknowns. */
    int size();

    /** Observed less expected. */
    double[] residuals(double[] z);

    /** Slope of the expected numbers: one row for each observation. */
    double[][] slopes(double[] z);

    /** The inverse of the noise's covariance. */
    double[][] precision();

    /** Logarithm of the likelihood of residuals, but for a constant. */
    default double lnLikelihood(double[] residuals) {
        double[][] p = precision();
        double sum = 0;
        for (int i = 0; i < residuals.length; i++) {
            double row = 0;
            for (int k = 0; k < residuals.length; k++) {
                row += p[i][k] * residuals[k];
            }
            sum += residuals[i] * row;
        }
        return -sum / 2;
    }

    /** Logarithm of the density, but for a constant. */
    default double lnDensity(double[] z) {
        double squares = 0;
        for (double each : z) {
            squares += each * each;
        }
        return lnLikelihood(residuals(z)) - squares / 2;
    }
}
