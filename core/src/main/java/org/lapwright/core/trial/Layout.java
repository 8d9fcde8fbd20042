package org.lapwright.core.trial;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.lapwright.core.stats.model.RunLayout;

/**
 * The columns of the comparison, one row for each lap that counts, in the order driven. Immutable by convention: the
 * arrays are for reading.
 *
 * <p>Positions count the laps that stand, not the rows of the list, so that a lap that is left out moves nothing.
 */
final class Layout {
    /** Laps over which the drift column rises by one. */
    static final double DRIFT_LAPS = 60;

    /** Laps over which the warm-up of a run fades to 1/e. */
    static final double WARM_UP_LAPS = 3;

    /** A layout is made for every look, and exponentials are dear. */
    private static final double[] FIRST_WARM_UPS = new double[64];

    static {
        Arrays.setAll(FIRST_WARM_UPS, before -> Math.exp(-before / WARM_UP_LAPS));
    }

    static final int DRIFT = 1;
    static final int WARM_UP = 2;

    /** Level, drift, warm-up and last the effect: 1 for a lap after the change. */
    private final double[][] columns;

    private final double[] y;
    private final int[] run;
    private final int[] position;
    private final int rowsAfter;
    private final RunLayout runs;

    private Layout(double[] y, int[] run, boolean[] after) {
        int n = y.length;
        this.y = y;
        this.run = run;
        this.columns = new double[4][n];
        int[] position = new int[n];
        int later = 0;
        for (int i = 0; i < n; i++) {
            position[i] = i > 0 && run[i - 1] == run[i] ? position[i - 1] + 1 : 1;
            columns[0][i] = 1;
            columns[DRIFT][i] = i / DRIFT_LAPS;
            columns[WARM_UP][i] = warmUp(position[i]);
            columns[3][i] = after[i] ? 1 : 0;
            later += after[i] ? 1 : 0;
        }
        this.position = position;
        this.rowsAfter = later;
        this.runs = RunLayout.of(run, position);
    }

    private Layout(Layout other, double[] values) {
        y = values;
        run = other.run;
        position = other.position;
        columns = other.columns;
        rowsAfter = other.rowsAfter;
        runs = other.runs;
    }

    private static double warmUp(int position) {
        return position <= FIRST_WARM_UPS.length
                ? FIRST_WARM_UPS[position - 1]
                : Math.exp(-(position - 1) / WARM_UP_LAPS);
    }

    /**
     * Lays out laps.
     *
     * @param y a value for each lap, such as its log time
     * @param run which run each lap belongs to; the laps of a run follow one another
     * @param after whether each lap was driven after the change
     */
    static Layout of(double[] y, int[] run, boolean[] after) {
        return new Layout(y, run, after);
    }

    /** The same laps with other values. */
    Layout withValues(double[] values) {
        return new Layout(this, values);
    }

    boolean isSameAs(Layout other) {
        return Arrays.equals(y, other.y)
                && Arrays.equals(run, other.run)
                && Arrays.equals(columns[3], other.columns[3]);
    }

    int rows() {
        return y.length;
    }

    int rowsAfter() {
        return rowsAfter;
    }

    boolean isAfter(int row) {
        return columns[3][row] == 1;
    }

    double[] y() {
        return y;
    }

    double[][] allColumns() {
        return columns;
    }

    double[][] nuisance() {
        return Arrays.copyOf(columns, 3);
    }

    double[] effect() {
        return columns[3];
    }

    int run(int row) {
        return run[row];
    }

    int position(int row) {
        return position[row];
    }

    RunLayout runs() {
        return runs;
    }

    /** The first row of each run that has a lap which counts, and the number of rows at the end. */
    int[] runStarts() {
        IntStream firsts = IntStream.range(0, rows()).filter(i -> position[i] == 1);
        return IntStream.concat(firsts, IntStream.of(rows())).toArray();
    }
}
