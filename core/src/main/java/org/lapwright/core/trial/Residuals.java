package org.lapwright.core.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.lapwright.core.stats.RobustLocation;

/** What is left of the laps after the pace fit, run by run. */
final class Residuals {
    private Residuals() {}

    /** The residuals with the median of each run taken away. */
    static double[] aboutRunMedians(Layout layout, double[] residuals) {
        double[] about = new double[layout.rows()];
        int from = 0;
        for (int i = 1; i <= layout.rows(); i++) {
            if (i == layout.rows() || layout.run(i) != layout.run(from)) {
                double[] run = Arrays.copyOfRange(residuals, from, i);
                double median = RobustLocation.median(run);
                for (int k = from; k < i; k++) {
                    about[k] = residuals[k] - median;
                }
                from = i;
            }
        }
        return about;
    }

    /**
     * Square roots of the absolute residuals about the run's median: their mean tells scatter, and the root tames the
     * tail (an idea of Brown and Forsythe 1974, Journal of the American Statistical Association 69).
     */
    static double[] rootsAboutRunMedians(Layout layout, double[] residuals) {
        double[] roots = aboutRunMedians(layout, residuals);
        for (int i = 0; i < roots.length; i++) {
            roots[i] = Math.sqrt(Math.abs(roots[i]));
        }
        return roots;
    }

    /** The values of one side, run by run. */
    static double[][] runsOfSide(Layout layout, double[] values, boolean afterSide) {
        List<double[]> runs = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= layout.rows(); i++) {
            if (i == layout.rows() || layout.run(i) != layout.run(from)) {
                if (layout.isAfter(from) == afterSide) {
                    runs.add(Arrays.copyOfRange(values, from, i));
                }
                from = i;
            }
        }
        return runs.toArray(double[][]::new);
    }
}
