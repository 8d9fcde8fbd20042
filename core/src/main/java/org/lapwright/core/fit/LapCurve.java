package org.lapwright.core.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The logarithm of the best lap as a quadratic of the unknowns, by least squares through laps at drawn points: a response surface
 * (Box and Wilson 1951). Immutable.
 */
final class LapCurve {
    /** Laps are driven in lots of twice as many as there are coefficients. */
    private static final int LOTS = 2;

    /** Share of the cars drawn that must get round. */
    private static final double LEAST_ROUND = 0.7;

    /** Points scatter somewhat wider than what they are to cover. */
    private static final double WIDER = 1.25;

    private final double[] centre;

    /** Lower triangle: z = centre + scale y, where y is about a unit ball. */
    private final double[][] scale;

    private final double[] coefficients;
    private final double misfit;

    private LapCurve(double[] centre, double[][] scale, double[] coefficients, double misfit) {
        this.centre = centre;
        this.scale = scale;
        this.coefficients = coefficients;
        this.misfit = misfit;
    }

    /**
     * Drives laps about a centre and fits.
     *
     * @param centre middle of the points
     * @param scale lower triangular root of their covariance
     * @param lnLaps logarithm of the best lap at many points at once; not finite where there is none
     * @param chance where points come from
     * @throws IllegalArgumentException if too few of the points have a lap
     */
    static LapCurve about(
            double[] centre, double[][] scale, Function<double[][], double[]> lnLaps, RandomGenerator chance) {
        int size = centre.length;
        int lot = 2 * terms(size);
        List<double[]> rows = new ArrayList<>();
        List<Double> right = new ArrayList<>();
        for (int k = 0; k < LOTS; k++) {
            double[][] ys = points(lot, size, chance);
            double[] laps = lnLaps.apply(
                    Arrays.stream(ys).map(y -> point(centre, scale, y)).toArray(double[][]::new));
            for (int i = 0; i < lot; i++) {
                if (Double.isFinite(laps[i])) {
                    rows.add(basis(ys[i]));
                    right.add(laps[i]);
                }
            }
            // To find that a car is stuck takes a thousand times as long as a lap: do not go on with hopeless ones.
            if (rows.size() < (k + 1) * lot * LEAST_ROUND) {
                throw new IllegalArgumentException(
                        "of %d cars within what is known of this one only %d get round; predict says where they are stuck"
                                .formatted((k + 1) * lot, rows.size()));
            }
        }
        return fitted(centre, scale, rows, right);
    }

    private static LapCurve fitted(double[] centre, double[][] scale, List<double[]> rows, List<Double> right) {
        RealMatrix matrix = new Array2DRowRealMatrix(rows.toArray(double[][]::new), false);
        double[] laps = right.stream().mapToDouble(Double::doubleValue).toArray();
        double[] fitted = new QRDecomposition(matrix)
                .getSolver()
                .solve(new ArrayRealVector(laps, false))
                .toArray();
        double squares = 0;
        for (int r = 0; r < laps.length; r++) {
            double off = laps[r] - dot(rows.get(r), fitted);
            squares += off * off;
        }
        return new LapCurve(centre.clone(), scale, fitted, Math.sqrt(squares / (laps.length - fitted.length)));
    }

    private static double[][] points(int count, int size, RandomGenerator chance) {
        double[][] ys = new double[count][size];
        for (int i = 0; i < count; i++) {
            for (int k = 0; k < size; k++) {
                // Points in mirrored pairs keep odd and even terms apart.
                ys[i][k] = i % 2 == 1 ? -ys[i - 1][k] : WIDER * chance.nextGaussian();
            }
        }
        return ys;
    }

    /** How far laps lie off the curve: standard deviation, as a share of the lap. */
    double misfit() {
        return misfit;
    }

    /** Logarithm of the best lap. */
    double value(double[] z) {
        return dot(basis(inward(z)), coefficients);
    }

    /** Its slope. */
    double[] gradient(double[] z) {
        double[] y = inward(z);
        int size = y.length;
        double[] slope = Arrays.copyOfRange(coefficients, 1, 1 + size);
        int term = 1 + size;
        for (int a = 0; a < size; a++) {
            for (int b = a; b < size; b++) {
                slope[a] += coefficients[term] * y[b];
                slope[b] += coefficients[term] * y[a];
                term++;
            }
        }
        // z = centre + scale y, so that the slope over z is the transposed inverse of scale times that over y.
        for (int i = size - 1; i >= 0; i--) {
            for (int k = i + 1; k < size; k++) {
                slope[i] -= scale[k][i] * slope[k];
            }
            slope[i] /= scale[i][i];
        }
        return slope;
    }

    private double[] inward(double[] z) {
        double[] y = new double[z.length];
        for (int i = 0; i < y.length; i++) {
            double left = z[i] - centre[i];
            for (int k = 0; k < i; k++) {
                left -= scale[i][k] * y[k];
            }
            y[i] = left / scale[i][i];
        }
        return y;
    }

    private static double[] point(double[] centre, double[][] scale, double[] y) {
        double[] z = centre.clone();
        for (int i = 0; i < z.length; i++) {
            for (int k = 0; k <= i; k++) {
                z[i] += scale[i][k] * y[k];
            }
        }
        return z;
    }

    private static int terms(int size) {
        return (size + 1) * (size + 2) / 2;
    }

    private static double[] basis(double[] y) {
        double[] row = new double[terms(y.length)];
        row[0] = 1;
        System.arraycopy(y, 0, row, 1, y.length);
        int term = 1 + y.length;
        for (int a = 0; a < y.length; a++) {
            for (int b = a; b < y.length; b++) {
                row[term++] = y[a] * y[b];
            }
        }
        return row;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
