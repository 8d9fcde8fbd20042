package org.lapwright.core.stats;

import java.util.Arrays;

/**
 * Linear regression by Huber's M-estimate: squares up to {@code tuning} scales, absolute values beyond.
 *
 * <p>Iteratively reweighted least squares; the scale is median|r|/0.6745, taken anew at each step (as MASS::rlm does).
 * Each step solves for the correction of the coefficients, so that rounding in the normal equations does not add up.
 * Columns that those before them explain are left out.
 *
 * @see <a href="https://doi.org/10.1002/9780470434697">Huber and Ronchetti 2009, Robust Statistics, section 7.8</a>
 * @param tuning where squares end, in scales, above 0
 * @param maxIterations steps allowed, at least 1
 * @param tolerance the steps end once the residuals change by less than this share of their size, above 0
 */
public record HuberRegression(double tuning, int maxIterations, double tolerance) {
    /** Third quartile of the normal distribution, rounded as in MASS. */
    private static final double MAD_OF_NORMAL = 0.6745;

    /** Below this share of the largest value the scale is rounding error. */
    private static final double ROUNDING = 1e-13;

    /** Checks the settings. */
    public HuberRegression {
        if (!(tuning > 0 && tolerance > 0 && maxIterations >= 1)) {
            throw new IllegalArgumentException(
                    "tuning is %s, tolerance %s, steps allowed %d; the first two must be above 0, the last at least 1"
                            .formatted(tuning, tolerance, maxIterations));
        }
    }

    /**
     * Up to 100 steps, until the residuals change by less than a millionth of a percent.
     *
     * @param tuning where squares end, in scales, above 0
     * @return the settings
     */
    public static HuberRegression of(double tuning) {
        return new HuberRegression(tuning, 100, 1e-8);
    }

    /** Room to work in, owned by the caller and good for many fits, one at a time. */
    public static final class Work {
        private final double[] residuals;
        private final double[] weights;
        private final double[] sorted;
        private final NormalEquations equations;
        private double[] coefficients;

        /**
         * Makes room.
         *
         * @param maxRows greatest number of points
         * @param maxColumns greatest number of columns
         */
        public Work(int maxRows, int maxColumns) {
            residuals = new double[maxRows];
            weights = new double[maxRows];
            sorted = new double[maxRows];
            equations = new NormalEquations(maxColumns);
            coefficients = new double[maxColumns];
        }

        /**
         * A residual of the last fit.
         *
         * @param row point from 0
         * @return y minus the fit there
         */
        public double residual(int row) {
            return residuals[row];
        }

        /**
         * The weight of a point in the last step of the last fit.
         *
         * @param row point from 0
         * @return above 0, at most 1
         */
        public double weight(int row) {
            return weights[row];
        }
    }

    /**
     * Fits from least squares on.
     *
     * @param y the values; only the first {@code rows} count
     * @param columns one array for each column, each with at least {@code rows} values
     * @param rows number of points, at least 1
     * @param work room for at least so many points and columns
     * @return the fit; residuals and weights are in {@code work}
     * @throws IllegalArgumentException if an array is too short or a number is not finite
     */
    public HuberFit fit(double[] y, double[][] columns, int rows, Work work) {
        prepare(y, columns, rows, work);
        work.coefficients = new double[columns.length];
        work.equations.solve();
        work.equations.addTo(work.coefficients);
        return iterate(y, columns, rows, work);
    }

    /**
     * Fits from an earlier fit on, which saves steps if it is near.
     *
     * @param start an earlier fit with as many columns
     * @param y the values; only the first {@code rows} count
     * @param columns one array for each column, each with at least {@code rows} values
     * @param rows number of points, at least 1
     * @param work room for at least so many points and columns
     * @return the fit; residuals and weights are in {@code work}
     * @throws IllegalArgumentException if an array is too short or a number is not finite
     */
    public HuberFit refit(HuberFit start, double[] y, double[][] columns, int rows, Work work) {
        prepare(y, columns, rows, work);
        if (start.columns() != columns.length) {
            throw new IllegalArgumentException("the earlier fit has %d columns and this one %d; they must be as many"
                    .formatted(start.columns(), columns.length));
        }
        work.coefficients = start.coefficients();
        for (int c = 0; c < columns.length; c++) {
            work.coefficients[c] = work.equations.estimable(c) ? work.coefficients[c] : 0;
        }
        return iterate(y, columns, rows, work);
    }

    private static void prepare(double[] y, double[][] columns, int rows, Work work) {
        check(y, columns, rows, work);
        Arrays.fill(work.weights, 0, rows, 1);
        work.equations.accumulate(columns, work.weights, y, rows);
        work.equations.findEstimable();
    }

    private HuberFit iterate(double[] y, double[][] columns, int rows, Work work) {
        double rounding = ROUNDING * computeResiduals(y, columns, rows, work);
        int steps = 0;
        boolean settled = false;
        double scale = scale(work, rows);
        while (scale > rounding && !settled && steps < maxIterations) {
            settled = step(columns, rows, scale, work);
            scale = scale(work, rows);
            steps++;
        }
        boolean degenerate = scale <= rounding;
        return new HuberFit(
                work.coefficients,
                work.equations.copyOfEstimable(),
                degenerate ? 0 : scale,
                steps,
                settled || degenerate);
    }

    /** One weighted least-squares step from the residuals; says whether they hardly changed. */
    private boolean step(double[][] columns, int rows, double scale, Work work) {
        double[] residuals = work.residuals;
        double bound = tuning * scale;
        for (int i = 0; i < rows; i++) {
            double size = Math.abs(residuals[i]);
            work.weights[i] = size <= bound ? 1 : bound / size;
        }
        work.equations.accumulate(columns, work.weights, residuals, rows);
        work.equations.solve();
        work.equations.addTo(work.coefficients);
        double before = 0;
        double change = 0;
        for (int i = 0; i < rows; i++) {
            double moved = work.equations.solutionAt(columns, i);
            before += residuals[i] * residuals[i];
            change += moved * moved;
            residuals[i] -= moved;
        }
        return change <= tolerance * tolerance * before;
    }

    /** Fills the residuals and returns the greatest magnitude of y. */
    private static double computeResiduals(double[] y, double[][] columns, int rows, Work work) {
        double largest = 0;
        for (int i = 0; i < rows; i++) {
            double fit = 0;
            for (int c = 0; c < columns.length; c++) {
                fit += work.coefficients[c] * columns[c][i];
            }
            work.residuals[i] = y[i] - fit;
            largest = Math.max(largest, Math.abs(y[i]));
        }
        return largest;
    }

    private static double scale(Work work, int rows) {
        for (int i = 0; i < rows; i++) {
            work.sorted[i] = Math.abs(work.residuals[i]);
        }
        return Selection.median(work.sorted, rows) / MAD_OF_NORMAL;
    }

    private static void check(double[] y, double[][] columns, int rows, Work work) {
        if (rows < 1 || rows > work.residuals.length || columns.length > work.equations.maxColumns()) {
            throw new IllegalArgumentException(
                    "%d points and %d columns asked for; at least 1 point is needed and the room is for %d and %d"
                            .formatted(rows, columns.length, work.residuals.length, work.equations.maxColumns()));
        }
        checkColumn(y, rows, "y");
        for (int c = 0; c < columns.length; c++) {
            checkColumn(columns[c], rows, "column " + (c + 1));
        }
    }

    private static void checkColumn(double[] column, int rows, String name) {
        if (column.length < rows) {
            throw new IllegalArgumentException(
                    "%s has %d values; at least %d are needed".formatted(name, column.length, rows));
        }
        for (int i = 0; i < rows; i++) {
            if (!(Math.abs(column[i]) <= Samples.LARGEST)) {
                throw new IllegalArgumentException("value %d of %s is %s; it must be finite and at most %s in magnitude"
                        .formatted(i + 1, name, column[i], Samples.LARGEST));
            }
        }
    }
}
