package org.lapwright.core.stats.model;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.lapwright.core.num.GoldenSection;

/**
 * Estimates how values in runs hang together, from one session or several, by (restricted) maximum likelihood.
 *
 * <p>φ and γ are common to all sessions; coefficients and scatter are each session's own. Restricted likelihood allows
 * for the coefficients that had to be estimated; with φ = 0 it is the random-intercept model, and for runs of equal
 * length the analysis-of-variance estimate.
 *
 * @see <a href="https://doi.org/10.1093/biomet/58.3.545">Patterson and Thompson 1971, Biometrika 58</a>
 * @param restricted true for the restricted likelihood, false for the full one
 */
public record RunCovariance(boolean restricted) {
    private static final double LEAST_PHI = -0.95;
    private static final double GREATEST_PHI = 0.99;

    /** γ is searched as its share γ/(1 + γ), up to γ = 999. */
    private static final double GREATEST_SHARE = 0.999;

    private static final int STEPS = 16;
    private static final double REFINED = 1e-8;

    /** Differences of the deviance below this are rounding. */
    private static final double NOISE = 1e-9;

    /**
     * Minus twice the log likelihood of all sessions together.
     *
     * @param sessions the data
     * @param covariance φ and γ to judge
     * @return the deviance; sessions that say nothing about the covariance count 0
     */
    public double deviance(List<RunData> sessions, RunGls covariance) {
        double sum = 0;
        for (RunData session : sessions) {
            sum += session.deviance(covariance, restricted);
        }
        return sum;
    }

    /**
     * Estimates φ and γ together.
     *
     * @param sessions the data
     * @return the estimate, φ within -0.95 and 0.99, γ from 0 to 999; 0 where the data say nothing
     */
    public RunGls estimate(List<RunData> sessions) {
        double phi = minimum(p -> deviance(sessions, estimateGamma(sessions, p)), LEAST_PHI, GREATEST_PHI);
        return estimateGamma(sessions, phi);
    }

    /**
     * Estimates the run effect for a known correlation of neighbours.
     *
     * @param sessions the data
     * @param phi the correlation, above -1 and below 1
     * @return {@code phi} with the best γ from 0 to 999
     */
    public RunGls estimateGamma(List<RunData> sessions, double phi) {
        double share = minimum(u -> deviance(sessions, new RunGls(phi, u / (1 - u))), 0, GREATEST_SHARE);
        return new RunGls(phi, share / (1 - share));
    }

    /**
     * Estimates the correlation of neighbours for a known run effect.
     *
     * @param sessions the data
     * @param gamma the run effect, at least 0
     * @return the best φ within -0.95 and 0.99, with {@code gamma}
     */
    public RunGls estimatePhi(List<RunData> sessions, double gamma) {
        return new RunGls(minimum(p -> deviance(sessions, new RunGls(p, gamma)), LEAST_PHI, GREATEST_PHI), gamma);
    }

    /**
     * Where a smooth function is least: a coarse grid, then golden sections around its best point. Zero wins unless
     * another place is clearly better, so that data that say nothing give no correlation.
     */
    private static double minimum(DoubleUnaryOperator function, double low, double high) {
        double width = (high - low) / STEPS;
        double best = 0;
        double least = function.applyAsDouble(0) - NOISE;
        for (int i = 0; i <= STEPS; i++) {
            double value = function.applyAsDouble(low + i * width);
            if (value < least) {
                least = value;
                best = low + i * width;
            }
        }
        double middle = GoldenSection.greatest(
                x -> -function.applyAsDouble(x), Math.max(low, best - width), Math.min(high, best + width), REFINED);
        return function.applyAsDouble(middle) < least ? middle : best;
    }
}
