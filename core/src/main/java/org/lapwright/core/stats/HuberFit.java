package org.lapwright.core.stats;

import java.util.Arrays;

/** What a {@link HuberRegression} found. */
public final class HuberFit {
    private final double[] coefficients;
    private final boolean[] estimable;
    private final double scale;
    private final int iterations;
    private final boolean converged;

    HuberFit(double[] coefficients, boolean[] estimable, double scale, int iterations, boolean converged) {
        this.coefficients = coefficients;
        this.estimable = estimable;
        this.scale = scale;
        this.iterations = iterations;
        this.converged = converged;
    }

    /**
     * One coefficient.
     *
     * @param column column from 0
     * @return its coefficient, in units of y over units of the column; 0 if it was left out
     */
    public double coefficient(int column) {
        return coefficients[column];
    }

    /**
     * All coefficients.
     *
     * @return a copy, one for each column
     */
    public double[] coefficients() {
        return coefficients.clone();
    }

    /**
     * Number of columns of the model.
     *
     * @return the number, left-out columns included
     */
    public int columns() {
        return coefficients.length;
    }

    /**
     * Whether a column could be told apart from those before it; otherwise it was left out.
     *
     * @param column column from 0
     * @return true if its coefficient is an estimate
     */
    public boolean estimable(int column) {
        return estimable[column];
    }

    /**
     * Number of columns that could be told apart.
     *
     * @return from 0 to the number of columns
     */
    public int rank() {
        int rank = 0;
        for (boolean column : estimable) {
            rank += column ? 1 : 0;
        }
        return rank;
    }

    /**
     * Median of the absolute residuals over 0.6745.
     *
     * @return the scale in units of y; 0 if more than half of the points lie on the fit
     */
    public double scale() {
        return scale;
    }

    /**
     * Weighted least-squares steps taken.
     *
     * @return the number of steps
     */
    public int iterations() {
        return iterations;
    }

    /**
     * Whether the residuals settled within the steps allowed.
     *
     * @return true if so
     */
    public boolean converged() {
        return converged;
    }

    @Override
    public String toString() {
        return "HuberFit[coefficients=%s, scale=%s, iterations=%d, converged=%s]"
                .formatted(Arrays.toString(coefficients), scale, iterations, converged);
    }
}
