package org.lapwright.core.stats;

import java.util.Arrays;

/** Weighted normal equations of a few columns, solved by Cholesky's method. Allocates nothing between fits. */
final class NormalEquations {
    /** A column counts as explained by those before it if no more than this share of its square is left. */
    private static final double COLLINEAR = 1e-9;

    private final double[][] gram;
    private final double[] solution;
    private final boolean[] estimable;
    private int columns;

    NormalEquations(int maxColumns) {
        gram = new double[maxColumns][maxColumns];
        solution = new double[maxColumns];
        estimable = new boolean[maxColumns];
    }

    int maxColumns() {
        return solution.length;
    }

    /** Sums the weighted products of the columns with each other and with {@code y}. */
    void accumulate(double[][] x, double[] weights, double[] y, int rows) {
        columns = x.length;
        for (int a = 0; a < columns; a++) {
            double[] left = x[a];
            for (int b = 0; b <= a; b++) {
                double[] right = x[b];
                double sum = 0;
                for (int i = 0; i < rows; i++) {
                    sum += weights[i] * left[i] * right[i];
                }
                gram[a][b] = sum;
            }
            double sum = 0;
            for (int i = 0; i < rows; i++) {
                sum += weights[i] * left[i] * y[i];
            }
            solution[a] = sum;
        }
    }

    /** Decides, from the sums just taken, which columns stand on their own; {@link #solve} leaves out the others. */
    void findEstimable() {
        Arrays.fill(estimable, 0, columns, true);
        double[][] factor = new double[columns][];
        for (int a = 0; a < columns; a++) {
            factor[a] = gram[a].clone();
        }
        for (int a = 0; a < columns; a++) {
            double whole = factor[a][a];
            double left = pivot(factor, a);
            estimable[a] = left > COLLINEAR * whole;
            factor[a][a] = Math.sqrt(Math.max(left, 0));
        }
    }

    boolean estimable(int column) {
        return estimable[column];
    }

    boolean[] copyOfEstimable() {
        return Arrays.copyOf(estimable, columns);
    }

    /** Solves in place; columns that are not estimable get 0. */
    void solve() {
        for (int a = 0; a < columns; a++) {
            if (!estimable[a]) {
                solution[a] = 0;
                continue;
            }
            gram[a][a] = Math.sqrt(pivot(gram, a));
            for (int b = 0; b < a; b++) {
                if (estimable[b]) {
                    solution[a] -= gram[a][b] * solution[b];
                }
            }
            solution[a] /= gram[a][a];
        }
        for (int a = columns - 1; a >= 0; a--) {
            if (estimable[a]) {
                solution[a] /= gram[a][a];
                for (int b = 0; b < a; b++) {
                    solution[b] -= estimable[b] ? gram[a][b] * solution[a] : 0;
                }
            }
        }
    }

    /** Turns row {@code a} into a row of the factor and returns the square of its diagonal element. */
    private double pivot(double[][] factor, int a) {
        double left = factor[a][a];
        for (int b = 0; b < a; b++) {
            if (estimable[b]) {
                double sum = factor[a][b];
                for (int c = 0; c < b; c++) {
                    sum -= estimable[c] ? factor[a][c] * factor[b][c] : 0;
                }
                factor[a][b] = sum / factor[b][b];
                left -= factor[a][b] * factor[a][b];
            }
        }
        return left;
    }

    void addTo(double[] coefficients) {
        for (int c = 0; c < columns; c++) {
            coefficients[c] += solution[c];
        }
    }

    /** What the solution says about one row. */
    double solutionAt(double[][] x, int row) {
        double sum = 0;
        for (int c = 0; c < columns; c++) {
            sum += solution[c] * x[c][row];
        }
        return sum;
    }
}
