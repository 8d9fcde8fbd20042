package org.lapwright.core.stats.many;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.lapwright.core.stats.NormalTail;
import org.lapwright.core.stats.Samples;

/**
 * Means of several things known with different precision, drawn towards their common centre by as much as each is
 * uncertain (empirical Bayes), and what follows for their order.
 *
 * <p>The true means are taken as normal about a centre μ with variance τ², which is estimated by restricted maximum
 * likelihood; τ² = 0 is a legal answer and means that all are equal as far as the data can tell. Immutable.
 *
 * @see <a href="https://doi.org/10.3102/10769986014001029">Laird and Louis 1989, J. Educ. Statist. 14</a>
 * @see <a href="https://doi.org/10.2307/2983325">Goldstein and Spiegelhalter 1996, J. R. Statist. Soc. A 159</a>
 */
public final class ShrunkMeans {
    private final double[] means;
    private final double[] weights;
    private final double tau2;
    private final double centre;
    private final double centreSe;

    /** For each mean, what it takes over of errors that several share; none where all errors are their own. */
    private final double[][] shared;

    private ShrunkMeans(ShrunkMeans own, double[][] shared) {
        means = own.means;
        weights = own.weights;
        tau2 = own.tau2;
        centre = own.centre;
        centreSe = own.centreSe;
        this.shared = shared;
    }

    private ShrunkMeans(double[] y, double[] se, double tau2) {
        shared = new double[y.length][0];
        this.tau2 = tau2;
        centre = centre(y, se, tau2);
        centreSe = 1 / Math.sqrt(information(se, tau2));
        means = new double[y.length];
        weights = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            weights[i] = tau2 / (tau2 + se[i] * se[i]);
            means[i] = centre + weights[i] * (y[i] - centre);
        }
    }

    /**
     * Shrinks means with τ² by restricted maximum likelihood.
     *
     * @param y the means, at least one
     * @param se their standard errors, as many, each above 0
     * @return the shrunk means
     * @throws IllegalArgumentException if the lengths differ, there is no mean, a number is not finite or a standard
     *     error is not above 0
     */
    public static ShrunkMeans of(double[] y, double[] se) {
        require(y, se);
        return new ShrunkMeans(y, se, restrictedMaximum(y, se));
    }

    /**
     * Shrinks means with a known τ².
     *
     * @param y the means, at least one
     * @param se their standard errors, as many, each above 0
     * @param tau2 variance of the true means, at least 0
     * @return the shrunk means
     * @throws IllegalArgumentException as above, or if {@code tau2} is negative or not finite
     */
    public static ShrunkMeans of(double[] y, double[] se, double tau2) {
        require(y, se);
        if (!(tau2 >= 0 && tau2 <= Samples.LARGEST)) {
            throw new IllegalArgumentException("τ² is %s; it must be finite and at least 0".formatted(tau2));
        }
        return new ShrunkMeans(y, se, tau2);
    }

    /**
     * The same where the means have errors in common beside their own, as all cars of a lane have what is not known of the lane.
     * A shrunk mean is linear in the means, so it takes them over as it takes the means; they cancel where two means share them.
     *
     * @param loadings for each mean, how much of each of some independent errors of variance 1 is in it; as many for each
     * @param se the standard errors of the means, without these
     */
    public ShrunkMeans withShared(double[][] loadings, double[] se) {
        if (loadings.length != means.length || se.length != means.length) {
            throw new IllegalArgumentException("%d means, %d loadings and %d standard errors; they must be as many"
                    .formatted(means.length, loadings.length, se.length));
        }
        int errors = loadings[0].length;
        double[] ofCentre = new double[errors];
        double information = information(se, tau2);
        for (int i = 0; i < means.length; i++) {
            for (int k = 0; k < errors; k++) {
                ofCentre[k] += loadings[i][k] / (se[i] * se[i] + tau2) / information;
            }
        }
        double[][] taken = new double[means.length][errors];
        for (int i = 0; i < means.length; i++) {
            for (int k = 0; k < errors; k++) {
                taken[i][k] = weights[i] * loadings[i][k] + (1 - weights[i]) * ofCentre[k];
            }
        }
        return new ShrunkMeans(this, taken);
    }

    private static void require(double[] y, double[] se) {
        Samples.require(y, 1, "means");
        Samples.require(se, 1, "standard errors");
        if (y.length != se.length) {
            throw new IllegalArgumentException(
                    "%d means and %d standard errors; they must be as many".formatted(y.length, se.length));
        }
        for (int i = 0; i < se.length; i++) {
            if (!(se[i] >= 1 / Samples.LARGEST)) {
                throw new IllegalArgumentException(
                        "standard error %d is %s; it must be above 0".formatted(i + 1, se[i]));
            }
        }
    }

    /** τ² where the restricted likelihood is greatest: a grid over octaves of τ, then the zero of the score. */
    private static double restrictedMaximum(double[] y, double[] se) {
        double low = y[0];
        double high = y[0];
        for (double value : y) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        double greatest = (high - low) * (high - low);
        double best = 0;
        double highest = likelihood(y, se, 0);
        for (double t = greatest; t > greatest * 1e-12; t /= 4) {
            double value = likelihood(y, se, t);
            if (value > highest) {
                highest = value;
                best = t;
            }
        }
        if (best == 0) {
            return 0;
        }
        double from = best / 4;
        double to = Math.min(best * 4, greatest);
        if (!(score(y, se, from) > 0 && score(y, se, to) < 0)) {
            return best;
        }
        // In units of the grid point, so that the accuracy is relative.
        double scale = best;
        return scale * new BrentSolver(1e-13).solve(200, t -> score(y, se, t * scale), from / scale, to / scale);
    }

    private static double centre(double[] y, double[] se, double tau2) {
        double sum = 0;
        for (int i = 0; i < y.length; i++) {
            sum += (y[i] - y[0]) / (se[i] * se[i] + tau2);
        }
        return y[0] + sum / information(se, tau2);
    }

    private static double information(double[] se, double tau2) {
        double sum = 0;
        for (double error : se) {
            sum += 1 / (error * error + tau2);
        }
        return sum;
    }

    private static double likelihood(double[] y, double[] se, double tau2) {
        double centre = centre(y, se, tau2);
        double sum = 0;
        for (int i = 0; i < y.length; i++) {
            double v = se[i] * se[i] + tau2;
            sum -= Math.log(v) + (y[i] - centre) * (y[i] - centre) / v;
        }
        return (sum - Math.log(information(se, tau2))) / 2;
    }

    /** Derivative of the restricted log likelihood by τ², times 2 over the information. */
    private static double score(double[] y, double[] se, double tau2) {
        double centre = centre(y, se, tau2);
        double information = information(se, tau2);
        double squares = 0;
        double fit = 0;
        for (int i = 0; i < y.length; i++) {
            double w = 1 / (se[i] * se[i] + tau2);
            squares += w * w;
            fit += w * w * (y[i] - centre) * (y[i] - centre);
        }
        return (fit + squares / information) / information - 1;
    }

    /**
     * Number of means.
     *
     * @return the number, at least 1
     */
    public int size() {
        return means.length;
    }

    /**
     * Variance of the true means.
     *
     * @return τ², at least 0
     */
    public double tau2() {
        return tau2;
    }

    /**
     * The common centre.
     *
     * @return μ
     */
    public double centre() {
        return centre;
    }

    /**
     * Standard error of the centre.
     *
     * @return the standard error
     */
    public double centreSe() {
        return centreSe;
    }

    /**
     * How much of its distance from the centre a mean keeps.
     *
     * @param i which mean, from 0
     * @return τ²/(τ² + se²), 0 to 1
     */
    public double weight(int i) {
        return weights[i];
    }

    /**
     * A shrunk mean.
     *
     * @param i which mean, from 0
     * @return the mean
     */
    public double mean(int i) {
        return means[i];
    }

    /**
     * Standard error of a shrunk mean.
     *
     * @param i which mean, from 0
     * @return the standard error
     */
    public double se(int i) {
        return Math.sqrt(covariance(i, i));
    }

    /**
     * Covariance of two shrunk means, which share the uncertain centre.
     *
     * @param i one mean, from 0
     * @param j the other
     * @return the covariance
     */
    public double covariance(int i, int j) {
        double inCommon = (1 - weights[i]) * (1 - weights[j]) * centreSe * centreSe;
        for (int k = 0; k < shared[i].length; k++) {
            inCommon += shared[i][k] * shared[j][k];
        }
        return (i == j ? tau2 * (1 - weights[i]) : 0) + inCommon;
    }

    /**
     * Chance that one true mean is lower than another; for lap times: that it is the faster one.
     *
     * @param i one mean, from 0
     * @param j the other
     * @return the chance; 0.5 for a mean with itself and where nothing tells them apart
     */
    public double chanceLower(int i, int j) {
        double difference = means[j] - means[i];
        if (i == j || difference == 0) {
            return 0.5;
        }
        double apart = (weights[i] - weights[j]) * centreSe;
        double variance = tau2 * (1 - weights[i]) + tau2 * (1 - weights[j]) + apart * apart;
        for (int k = 0; k < shared[i].length; k++) {
            double one = shared[i][k] - shared[j][k];
            variance += one * one;
        }
        return NormalTail.probability(-difference / Math.sqrt(variance));
    }

    /**
     * Rank to be expected from the lowest mean on.
     *
     * @param i which mean, from 0
     * @return 1 plus the chances of the others to be lower
     */
    public double expectedRank(int i) {
        double rank = 1;
        for (int j = 0; j < means.length; j++) {
            rank += j == i ? 0 : chanceLower(j, i);
        }
        return rank;
    }

    /**
     * The order from the lowest shrunk mean on, with those that cannot be told from the first of their group together.
     *
     * @param level chance that makes a difference sure, 0.5 to below 1
     * @return groups of indices from 0
     * @throws IllegalArgumentException if the level is outside its range
     */
    public List<List<Integer>> groups(double level) {
        if (!(level >= 0.5 && level < 1)) {
            throw new IllegalArgumentException("level is %s; it must be from 0.5 to below 1".formatted(level));
        }
        List<Integer> order = IntStream.range(0, means.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> means[i]))
                .toList();
        List<List<Integer>> groups = new ArrayList<>();
        List<Integer> group = new ArrayList<>();
        for (int i : order) {
            if (!group.isEmpty() && chanceLower(group.get(0), i) > level) {
                groups.add(List.copyOf(group));
                group.clear();
            }
            group.add(i);
        }
        groups.add(List.copyOf(group));
        return List.copyOf(groups);
    }
}
