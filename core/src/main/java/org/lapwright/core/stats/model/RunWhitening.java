package org.lapwright.core.stats.model;

/**
 * Turns values with the covariance of {@link RunGls} into independent ones of equal variance.
 *
 * <p>Within a run first the autoregression goes, v_j becoming (v_j - ρ v_{j-1})/√(1 - ρ²) with ρ = φ^gap; then the run's
 * level, by the symmetric root of (I + γ q q')⁻¹, where q is what became of a column of ones.
 */
final class RunWhitening {
    private final RunLayout layout;
    private final double[] correlation;
    private final double[] stretch;
    private final double[] level;
    private final double[] shrink;
    private final double logDeterminant;

    RunWhitening(double phi, double gamma, RunLayout layout) {
        int n = layout.size();
        this.layout = layout;
        correlation = new double[n];
        stretch = new double[n];
        level = new double[n];
        shrink = new double[layout.runs()];
        double logs = 0;
        for (int r = 0; r < layout.runs(); r++) {
            double square = 0;
            for (int i = layout.start(r); i < layout.start(r + 1); i++) {
                correlation[i] = i == layout.start(r) ? 0 : Math.pow(phi, layout.gap(i));
                double left = 1 - correlation[i] * correlation[i];
                stretch[i] = 1 / Math.sqrt(left);
                level[i] = (1 - correlation[i]) * stretch[i];
                square += level[i] * level[i];
                logs += Math.log(left);
            }
            shrink[r] = (1 - 1 / Math.sqrt(1 + gamma * square)) / square;
            logs += Math.log1p(gamma * square);
        }
        logDeterminant = logs;
    }

    /** The logarithm of the determinant of the covariance, with σ = 1. */
    double logDeterminant() {
        return logDeterminant;
    }

    /** A whitened copy of a column. */
    double[] apply(double[] column) {
        double[] white = new double[layout.size()];
        for (int r = 0; r < layout.runs(); r++) {
            int from = layout.start(r);
            int to = layout.start(r + 1);
            double onLevel = 0;
            for (int i = from; i < to; i++) {
                double before = i == from ? 0 : column[i - 1];
                white[i] = (column[i] - correlation[i] * before) * stretch[i];
                onLevel += level[i] * white[i];
            }
            double off = shrink[r] * onLevel;
            for (int i = from; i < to; i++) {
                white[i] -= off * level[i];
            }
        }
        return white;
    }
}
