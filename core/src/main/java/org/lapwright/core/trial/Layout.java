package org.lapwright.core.trial;

/**
 * The columns of the comparison, one row for each lap that counts, in the order driven.
 *
 * <p>Positions count the laps that stand, not the rows of the list, so that a lap that is left out moves nothing.
 */
final class Layout {
    /** Laps over which the drift column rises by one. */
    static final double DRIFT_LAPS = 60;

    /** Laps over which the warm-up of a run fades to 1/e. */
    static final double WARM_UP_LAPS = 3;

    static final int LEVEL = 0;
    static final int DRIFT = 1;
    static final int WARM_UP = 2;

    private final double[] y;
    private final double[][] nuisance;
    private final double[] after;
    private final int[] run;
    private final int[] position;
    private int rows;
    private int rowsAfter;

    Layout(int most) {
        y = new double[most];
        nuisance = new double[3][most];
        after = new double[most];
        run = new int[most];
        position = new int[most];
    }

    void clear() {
        rows = 0;
        rowsAfter = 0;
    }

    void add(int lapRun, boolean isAfter, double value) {
        int i = rows++;
        position[i] = i > 0 && run[i - 1] == lapRun ? position[i - 1] + 1 : 1;
        run[i] = lapRun;
        y[i] = value;
        nuisance[LEVEL][i] = 1;
        nuisance[DRIFT][i] = i / DRIFT_LAPS;
        nuisance[WARM_UP][i] = Math.exp(-(position[i] - 1) / WARM_UP_LAPS);
        after[i] = isAfter ? 1 : 0;
        rowsAfter += isAfter ? 1 : 0;
    }

    int rows() {
        return rows;
    }

    int rowsAfter() {
        return rowsAfter;
    }

    /** Log lap times. */
    double[] y() {
        return y;
    }

    /** Level, drift and warm-up. */
    double[][] nuisance() {
        return nuisance;
    }

    /** 1 for a lap after the change. */
    double[] after() {
        return after;
    }

    /** Which run each row belongs to. */
    int[] run() {
        return run;
    }

    /** Place of each row in its run, from 1. */
    int[] position() {
        return position;
    }
}
