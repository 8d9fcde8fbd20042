package org.lapwright.core.stats.model;

import org.lapwright.core.stats.Samples;

/**
 * Generalised least squares for one effect among values measured in runs.
 *
 * <p>The model is y = X β + δ Z + e. Between values of one run the covariance of e is σ²(φ^gap + γ), between runs it is
 * 0: neighbours hang together, and each run has a level of its own with variance γ σ². The values are made independent
 * run by run, then the columns orthogonal in the order X, Z, y; that gives the triangle of the Cholesky factor of
 * [X Z y]'Ω⁻¹[X Z y] without squaring the condition. O(n) for a few columns.
 *
 * @see <a href="https://doi.org/10.1007/b98882">Pinheiro and Bates 2000, Mixed-Effects Models in S and S-PLUS, chapter
 *     5</a>
 * @param phi correlation of neighbours in a run, above -1 and below 1
 * @param gamma variance of run levels over that of values within a run, at least 0
 */
public record RunGls(double phi, double gamma) {
    /** A sum of squares below this share of that of y is rounding error. */
    static final double ROUNDING = 1e-26;

    /** Checks the covariance. */
    public RunGls {
        if (!(phi > -1 && phi < 1)) {
            throw new IllegalArgumentException("φ is %s; it must be above -1 and below 1".formatted(phi));
        }
        if (!(gamma >= 0 && gamma <= Samples.LARGEST)) {
            throw new IllegalArgumentException("γ is %s; it must be finite and at least 0".formatted(gamma));
        }
    }

    /**
     * Estimates the effect.
     *
     * @param layout which value belongs where
     * @param x the other columns, one array each; those that earlier ones explain are left out
     * @param z the effect column, for example 0 before the change and 1 after it
     * @param y the values
     * @return the effect, or why there is none
     * @throws IllegalArgumentException if a length is not that of the layout or a number is not finite
     */
    public RunGlsFit fit(RunLayout layout, double[][] x, double[] z, double[] y) {
        requireColumn(layout, y, "y");
        RunWhitening whitening = new RunWhitening(phi, gamma, layout);
        Orthogonal columns = columns(layout, x, whitening);
        int p = columns.rank();
        double s = addEffect(layout, z, whitening, columns);
        if (s == 0) {
            return new RunGlsFit.NoEffect(layout.size(), p, RunGlsFit.Reason.CONFOUNDED);
        }
        if (layout.size() <= p + 1) {
            return new RunGlsFit.NoEffect(layout.size(), p, RunGlsFit.Reason.TOO_FEW_VALUES);
        }
        double[] rest = whitening.apply(y);
        double rounding = ROUNDING * Orthogonal.dot(rest, rest);
        double along = columns.removeFrom(rest);
        double rss = Orthogonal.dot(rest, rest);
        return new RunGlsFit.Effect(
                layout.size(),
                p,
                s,
                along * along <= rounding ? 0 : along / Math.sqrt(s),
                rss <= layout.size() * rounding ? 0 : rss);
    }

    /**
     * The information on the effect that values so placed carry, whatever they turn out to be.
     *
     * @param layout which value belongs where, driven or planned
     * @param x the other columns
     * @param z the effect column
     * @return s = Z'MZ; 0 if the other columns explain the effect
     * @throws IllegalArgumentException if a length is not that of the layout or a number is not finite
     */
    public double information(RunLayout layout, double[][] x, double[] z) {
        RunWhitening whitening = new RunWhitening(phi, gamma, layout);
        return addEffect(layout, z, whitening, columns(layout, x, whitening));
    }

    private static double addEffect(RunLayout layout, double[] z, RunWhitening whitening, Orthogonal columns) {
        return columns.add(whitening.apply(requireColumn(layout, z, "the effect column")));
    }

    /** The columns of a model, whitened and made orthogonal. */
    static Orthogonal columns(RunLayout layout, double[][] x, RunWhitening whitening) {
        Orthogonal columns = new Orthogonal();
        for (int c = 0; c < x.length; c++) {
            columns.add(whitening.apply(requireColumn(layout, x[c], "column " + (c + 1))));
        }
        return columns;
    }

    static double[] requireColumn(RunLayout layout, double[] column, String name) {
        if (column.length != layout.size()) {
            throw new IllegalArgumentException("%s has %d values and the layout %d; they must be as many"
                    .formatted(name, column.length, layout.size()));
        }
        return Samples.require(column, 0, name);
    }
}
