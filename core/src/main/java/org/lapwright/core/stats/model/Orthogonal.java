package org.lapwright.core.stats.model;

import java.util.ArrayList;
import java.util.List;

/** Columns made orthogonal one after the other (modified Gram and Schmidt), those explained by earlier ones left out. */
final class Orthogonal {
    /** A column counts as explained if no more than this share of its square is left. */
    private static final double COLLINEAR = 1e-10;

    private final List<double[]> basis = new ArrayList<>();
    private double logSquares;

    /**
     * Takes a column in, unless the earlier ones explain it.
     *
     * @param column the column, overwritten by its normalised rest
     * @return the square of what the earlier columns leave of it; 0 if they explain it
     */
    double add(double[] column) {
        double whole = dot(column, column);
        removeFrom(column);
        double left = dot(column, column);
        if (left <= COLLINEAR * whole) {
            return 0;
        }
        double norm = Math.sqrt(left);
        for (int i = 0; i < column.length; i++) {
            column[i] /= norm;
        }
        basis.add(column);
        logSquares += Math.log(left);
        return left;
    }

    /** Takes the part that the columns explain out of {@code values}, and returns its share along the last column. */
    double removeFrom(double[] values) {
        double share = 0;
        for (double[] direction : basis) {
            share = dot(direction, values);
            for (int i = 0; i < values.length; i++) {
                values[i] -= share * direction[i];
            }
        }
        return share;
    }

    int rank() {
        return basis.size();
    }

    /** The logarithm of the determinant of the normal equations of the columns taken in. */
    double logDeterminant() {
        return logSquares;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
