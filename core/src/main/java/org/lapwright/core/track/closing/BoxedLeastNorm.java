package org.lapwright.core.track.closing;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * The shortest u with A u = b and each u within its range; b is first brought to what A can reach.
 *
 * <p>By its dual: u is Aᵀλ held to the ranges, and λ makes A u equal b. That is a concave function of as many unknowns as A
 * has rows, here two or three, whose slope is b − A u; Newton's method with halved steps climbs it.
 */
final class BoxedLeastNorm {
    private static final double RANK = 1e-9;
    private static final int MOST_STEPS = 60;
    private static final int MOST_HALVINGS = 40;

    private final RealMatrix a;
    private final RealVector b;
    private final double[] low;
    private final double[] high;

    private BoxedLeastNorm(RealMatrix a, RealVector b, double[] low, double[] high) {
        this.a = a;
        this.b = b;
        this.low = low;
        this.high = high;
    }

    /**
     * Solves it.
     *
     * @param rows A, row by row
     * @param right b
     * @param low least values, none above 0
     * @param high greatest values, none below 0
     * @return u, which misses b where the ranges are too narrow
     */
    static double[] solve(double[][] rows, double[] right, double[] low, double[] high) {
        SingularValueDecomposition parts = new SingularValueDecomposition(new Array2DRowRealMatrix(rows));
        double[] singular = parts.getSingularValues();
        int rank = (int) Arrays.stream(singular)
                .filter(value -> value > RANK * singular[0])
                .count();
        if (rank == 0) {
            return new double[low.length];
        }
        RealMatrix reach = parts.getUT().getSubMatrix(0, rank - 1, 0, rows.length - 1);
        return new BoxedLeastNorm(
                        reach.multiply(new Array2DRowRealMatrix(rows)),
                        reach.operate(new ArrayRealVector(right)),
                        low,
                        high)
                .climb();
    }

    private double[] climb() {
        RealVector lambda = new ArrayRealVector(a.getRowDimension());
        for (int step = 0; step < MOST_STEPS; step++) {
            RealVector slope = b.subtract(a.operate(new ArrayRealVector(held(lambda))));
            if (slope.getNorm() <= 1e-12 * (1 + b.getNorm())) {
                break;
            }
            RealVector uphill =
                    new LUDecomposition(curvature(lambda), 0).getSolver().solve(slope);
            double share = 1;
            for (int i = 0; i < MOST_HALVINGS && height(along(lambda, uphill, share)) <= height(lambda); i++) {
                share /= 2;
            }
            lambda = along(lambda, uphill, share);
        }
        return held(lambda);
    }

    private static RealVector along(RealVector lambda, RealVector uphill, double share) {
        return lambda.add(uphill.mapMultiply(share));
    }

    private double[] held(RealVector lambda) {
        double[] u = a.preMultiply(lambda).toArray();
        for (int i = 0; i < u.length; i++) {
            u[i] = Math.min(high[i], Math.max(low[i], u[i]));
        }
        return u;
    }

    private double height(RealVector lambda) {
        double[] free = a.preMultiply(lambda).toArray();
        double[] u = held(lambda);
        double height = lambda.dotProduct(b);
        for (int i = 0; i < u.length; i++) {
            height -= u[i] * (free[i] - u[i] / 2);
        }
        return height;
    }

    /** A Aᵀ over what is not at an end of its range, kept regular. */
    private RealMatrix curvature(RealVector lambda) {
        double[] free = a.preMultiply(lambda).toArray();
        RealMatrix moving = a.copy();
        for (int i = 0; i < free.length; i++) {
            if (free[i] < low[i] || free[i] > high[i]) {
                moving.setColumn(i, new double[a.getRowDimension()]);
            }
        }
        double floor = 1e-14 * a.multiplyTransposed(a).getTrace();
        return moving.multiplyTransposed(moving)
                .add(MatrixUtils.createRealIdentityMatrix(a.getRowDimension()).scalarMultiply(floor));
    }
}
