package org.lapwright.core.dynamics;

/**
 * The speed at the timing line, sought lap after lap: each lap begins as the last one ended, and when that creeps, Aitken's
 * δ² extrapolation (Numerical Recipes, 3rd ed., §5.3.2) leaps ahead.
 */
final class LapStart {
    private static final int PATIENCE = 4;

    private int laps;
    private double before;
    private double last;

    /**
     * Where to begin the next lap.
     *
     * @param start w at the start of the lap just swept
     * @param end w at its end
     * @param most greatest w allowed at the line
     */
    double next(double start, double end, double most) {
        laps++;
        double next = end;
        if (laps % PATIENCE == 0) {
            double bend = (end - last) - (last - before);
            double leap = end - (end - last) * (end - last) / bend;
            next = leap >= 0 && leap <= most ? leap : end;
        }
        before = start;
        last = end;
        return next;
    }
}
