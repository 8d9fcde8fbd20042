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
        int[] starts = layout.runStarts();
        for (int r = 0; r + 1 < starts.length; r++) {
            double median = RobustLocation.median(Arrays.copyOfRange(residuals, starts[r], starts[r + 1]));
            for (int k = starts[r]; k < starts[r + 1]; k++) {
                about[k] = residuals[k] - median;
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
        int[] starts = layout.runStarts();
        for (int r = 0; r + 1 < starts.length; r++) {
            if (layout.isAfter(starts[r]) == afterSide) {
                runs.add(Arrays.copyOfRange(values, starts[r], starts[r + 1]));
            }
        }
        return runs.toArray(double[][]::new);
    }
}
