package org.lapwright.core.fit;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.stat.correlation.Covariance;

/**
 * What the data leave of the unknowns as one normal distribution: its middle is where the density is greatest, its covariance the
 * inverse of the curvature there (Laplace's method; the curvature by Gauss and Newton).
 *
 * @param mode where the density is greatest
 * @param covariance of the normal distribution
 */
record Laplace(double[] mode, double[][] covariance) {
    private static final int MOST_STEPS = 100;
    private static final double SETTLED = 1e-10;
    private static final double LEAST_STEP = 1e-6;

    /** Finds it, from the belief's middle. */
    static Laplace of(Target target) {
        double[] z = new double[target.size()];
        double now = target.lnDensity(z);
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] move = move(target, z);
            double share = 1;
            double[] next = moved(z, move, share);
            double then = target.lnDensity(next);
            while (!(then >= now) && share > LEAST_STEP) {
                share /= 2;
                next = moved(z, move, share);
                then = target.lnDensity(next);
            }
            if (!(then > now + SETTLED)) {
                break;
            }
            z = next;
            now = then;
        }
        return new Laplace(
                z,
                new CholeskyDecomposition(curvature(target, z))
                        .getSolver()
                        .getInverse()
                        .getData());
    }

    /** Lower triangular root of the covariance. */
    double[][] root() {
        return root(covariance);
    }

    static double[][] root(double[][] covariance) {
        return new CholeskyDecomposition(new Array2DRowRealMatrix(covariance), 1e-9, 1e-14)
                .getL()
                .getData();
    }

    /** Middle and covariance of some of the unknowns. */
    Laplace of(int from, int to) {
        double[] middle = Arrays.copyOfRange(mode, from, to);
        double[][] part = new double[to - from][];
        for (int i = from; i < to; i++) {
            part[i - from] = Arrays.copyOfRange(covariance[i], from, to);
        }
        return new Laplace(middle, part);
    }

    /** The middle and spread of draws, as a normal distribution. */
    static Laplace fromDraws(Chains chains) {
        double[][] rows = new double[chains.count()][];
        Arrays.setAll(rows, chains::draw);
        double[] mean = new double[rows[0].length];
        for (double[] row : rows) {
            for (int k = 0; k < mean.length; k++) {
                mean[k] += row[k] / rows.length;
            }
        }
        return new Laplace(mean, new Covariance(rows).getCovarianceMatrix().getData());
    }

    private static double[] move(Target target, double[] z) {
        double[] up = new double[z.length];
        double[] residuals = target.residuals(z);
        double[][] weighed = weighed(target, z);
        for (int k = 0; k < up.length; k++) {
            up[k] = -z[k];
            for (int i = 0; i < residuals.length; i++) {
                up[k] += weighed[k][i] * residuals[i];
            }
        }
        return new CholeskyDecomposition(curvature(target, z))
                .getSolver()
                .solve(MatrixUtils.createRealVector(up))
                .toArray();
    }

    /** Slopes times precision, by unknown and observation; there may be no observation. */
    private static double[][] weighed(Target target, double[] z) {
        double[][] slopes = target.slopes(z);
        double[][] precision = target.precision();
        double[][] weighed = new double[z.length][slopes.length];
        for (int k = 0; k < z.length; k++) {
            for (int i = 0; i < slopes.length; i++) {
                for (int j = 0; j < slopes.length; j++) {
                    weighed[k][i] += slopes[j][k] * precision[j][i];
                }
            }
        }
        return weighed;
    }

    private static RealMatrix curvature(Target target, double[] z) {
        double[][] slopes = target.slopes(z);
        double[][] weighed = weighed(target, z);
        double[][] sum = new double[z.length][z.length];
        for (int a = 0; a < z.length; a++) {
            for (int b = 0; b <= a; b++) {
                double both = a == b ? 1 : 0;
                for (int i = 0; i < slopes.length; i++) {
                    both += weighed[a][i] * slopes[i][b];
                }
                sum[a][b] = both;
                sum[b][a] = both;
            }
        }
        return new Array2DRowRealMatrix(sum, false);
    }

    private static double[] moved(double[] z, double[] move, double share) {
        double[] next = z.clone();
        for (int i = 0; i < next.length; i++) {
            next[i] += share * move[i];
        }
        return next;
    }
}
