package org.lapwright.core.trial.ladder;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;

/**
 * Paces of cars as they would be on the average of the lanes, from the paces that each has on the lanes it was driven on.
 *
 * <p>Log pace = car + lane, by least squares with the weights of the paces. Lanes sum to nothing, and are taken to differ by some
 * {@value #LANES_DIFFER} before any lap (common practice, no source): where no car was driven on two lanes, nothing tells lane from
 * car, and what is told of the cars is that much less sure. That is the mixed model of Henderson 1975, Biometrics 31, with a known
 * variance of the lanes; the cars are eliminated first, so that a full shed costs no more than a few numbers for each car.
 */
final class LaneCorrection {
    /** Standard deviation between log paces of the lanes of a track. */
    static final double LANES_DIFFER = 0.02;

    private static final double CLEARLY = 0.7;

    private final double[] carMeans;
    private final double[] ownErrors;
    private final double[][] laneParts;
    private final double[] laneMeans;
    private final double[] laneErrors;

    /**
     * A car's pace on a lane.
     *
     * @param car its number, from 0
     * @param lane number of the lane, from 0
     * @param log pace
     * @param error its standard error
     */
    record Cell(int car, int lane, double log, double error) {
        double weight() {
            return 1 / (error * error);
        }
    }

    /**
     * Corrects.
     *
     * @param cells paces, at least one for each car and each lane
     * @param cars how many cars
     * @param lanes how many lanes
     */
    LaneCorrection(List<Cell> cells, int cars, int lanes) {
        carMeans = new double[cars];
        ownErrors = new double[cars];
        laneParts = new double[cars][lanes - 1];
        laneMeans = new double[lanes];
        laneErrors = new double[lanes];
        double[][] contrasts = contrasts(lanes);
        double[] weights = new double[cars];
        double[][] leanings = new double[cars][lanes - 1];
        for (Cell cell : cells) {
            weights[cell.car()] += cell.weight();
            carMeans[cell.car()] += cell.weight() * cell.log();
            add(leanings[cell.car()], contrasts[cell.lane()], cell.weight());
        }
        for (int car = 0; car < cars; car++) {
            carMeans[car] /= weights[car];
            scale(leanings[car], 1 / weights[car]);
        }
        double[] right = new double[lanes - 1];
        double[][] covariance = covariance(cells, contrasts, leanings, right);
        double[] shares = times(covariance, right);
        double[][] root = root(covariance);
        for (int car = 0; car < cars; car++) {
            carMeans[car] -= dot(leanings[car], shares);
            ownErrors[car] = Math.sqrt(1 / weights[car]);
            for (int k = 0; k < lanes - 1; k++) {
                for (int j = k; j < lanes - 1; j++) {
                    laneParts[car][k] -= root[j][k] * leanings[car][j];
                }
            }
        }
        for (int lane = 0; lane < lanes; lane++) {
            laneMeans[lane] = dot(contrasts[lane], shares);
            laneErrors[lane] = Math.sqrt(quadratic(covariance, contrasts[lane]));
        }
    }

    /** Covariance of what the lanes do, in contrasts; {@code right} takes the right side of their equations. */
    private double[][] covariance(List<Cell> cells, double[][] contrasts, double[][] leanings, double[] right) {
        int n = right.length;
        if (n == 0) {
            return new double[0][0];
        }
        double[][] information = new double[n][n];
        for (int k = 0; k < n; k++) {
            information[k][k] = 1 / (LANES_DIFFER * LANES_DIFFER);
        }
        for (Cell cell : cells) {
            // What the lane has beyond the lanes that its car was driven on.
            double[] beyond = contrasts[cell.lane()].clone();
            add(beyond, leanings[cell.car()], -1);
            for (int k = 0; k < n; k++) {
                add(information[k], beyond, cell.weight() * beyond[k]);
            }
            add(right, beyond, cell.weight() * (cell.log() - carMeans[cell.car()]));
        }
        return cholesky(information).getSolver().getInverse().getData();
    }

    private static CholeskyDecomposition cholesky(double[][] matrix) {
        return new CholeskyDecomposition(new Array2DRowRealMatrix(matrix), 1e-9, 0);
    }

    /** The lower triangle whose product with its transpose is the covariance. */
    private static double[][] root(double[][] covariance) {
        return covariance.length == 0 ? covariance : cholesky(covariance).getL().getData();
    }

    /** Helmert's contrasts: columns of length 1, at right angles to each other and to what all lanes have in common. */
    private static double[][] contrasts(int lanes) {
        double[][] contrasts = new double[lanes][lanes - 1];
        for (int k = 1; k < lanes; k++) {
            double length = Math.sqrt(k * (k + 1.0));
            for (int lane = 0; lane < k; lane++) {
                contrasts[lane][k - 1] = 1 / length;
            }
            contrasts[k][k - 1] = -k / length;
        }
        return contrasts;
    }

    private static void add(double[] to, double[] row, double times) {
        for (int i = 0; i < row.length; i++) {
            to[i] += times * row[i];
        }
    }

    private static void scale(double[] row, double by) {
        for (int i = 0; i < row.length; i++) {
            row[i] *= by;
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double[] times(double[][] matrix, double[] v) {
        double[] product = new double[v.length];
        for (int i = 0; i < v.length; i++) {
            product[i] = dot(matrix[i], v);
        }
        return product;
    }

    private static double quadratic(double[][] matrix, double[] v) {
        return Math.max(0, dot(v, times(matrix, v)));
    }

    /** Log pace of a car on the average lane. */
    double car(int car) {
        return carMeans[car];
    }

    /** Its standard error if the lanes were known. */
    double ownError(int car) {
        return ownErrors[car];
    }

    /** What is in it of independent errors of variance 1 that stand for what is not known of the lanes: cars of one lane share them. */
    double[] lanePart(int car) {
        return laneParts[car].clone();
    }

    /** What a lane adds to the log pace of any car. */
    double lane(int lane) {
        return laneMeans[lane];
    }

    /** Its standard error. */
    double laneError(int lane) {
        return laneErrors[lane];
    }

    /** Whether laps tell it: it is known clearly better than before any lap. */
    boolean isTold(int lane) {
        double before = LANES_DIFFER * Math.sqrt(1 - 1.0 / laneErrors.length);
        return laneErrors[lane] < CLEARLY * before;
    }
}
