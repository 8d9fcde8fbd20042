package org.lapwright.core.stats.model;

/** Values of one session with the columns that explain them. Immutable. */
public final class RunData {
    private final RunLayout layout;
    private final double[][] x;
    private final double[] y;

    private RunData(RunLayout layout, double[][] x, double[] y) {
        this.layout = layout;
        this.x = x;
        this.y = y;
    }

    /**
     * Takes the values of one session.
     *
     * @param layout which value belongs where
     * @param x columns, one array each
     * @param y the values
     * @return the data
     * @throws IllegalArgumentException if a length is not that of the layout or a number is not finite
     */
    public static RunData of(RunLayout layout, double[][] x, double[] y) {
        double[][] columns = new double[x.length][];
        for (int c = 0; c < x.length; c++) {
            columns[c] = RunGls.requireColumn(layout, x[c], "column " + (c + 1)).clone();
        }
        return new RunData(layout, columns, RunGls.requireColumn(layout, y, "y").clone());
    }

    /**
     * Minus twice the log likelihood under a covariance, with the best coefficients and scatter put in.
     *
     * @param covariance the covariance
     * @param restricted whether to use the restricted likelihood
     * @return the deviance; 0 if there are no more values than coefficients, or they fit exactly, so that the data say
     *     nothing about the covariance
     */
    double deviance(RunGls covariance, boolean restricted) {
        RunWhitening whitening = new RunWhitening(covariance.phi(), covariance.gamma(), layout);
        Orthogonal columns = RunGls.columns(layout, x, whitening);
        int n = layout.size();
        double[] rest = whitening.apply(y);
        double whole = Orthogonal.dot(rest, rest);
        columns.removeFrom(rest);
        double rss = Orthogonal.dot(rest, rest);
        if (n <= columns.rank() || rss <= n * RunGls.ROUNDING * whole) {
            return 0;
        }
        int df = restricted ? n - columns.rank() : n;
        return df * (Math.log(2 * Math.PI * rss / df) + 1)
                + whitening.logDeterminant()
                + (restricted ? columns.logDeterminant() : 0);
    }
}
