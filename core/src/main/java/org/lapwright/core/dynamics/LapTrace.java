package org.lapwright.core.dynamics;

/** Speed along a lap, and what limits it. Immutable. */
public final class LapTrace {
    private static final Limit[] LIMITS = Limit.values();

    private final double[] placeM;
    private final double[] speedMps;
    private final byte[] limits;

    LapTrace(double[] placeM, double[] speedMps, byte[] limits) {
        this.placeM = placeM;
        this.speedMps = speedMps;
        this.limits = limits;
    }

    /** How many cells; there is one place more than cells. */
    public int cells() {
        return limits.length;
    }

    /** The edge before a cell, m from the timing line; the last one is the length of the lap. */
    public double placeM(int edge) {
        return placeM[edge];
    }

    /** Speed of the guide at an edge, m/s. */
    public double speedMps(int edge) {
        return speedMps[edge];
    }

    /** Time in a cell, s: the pace is constant there, so the mean speed is that of its edges. They add up to the lap. */
    public double cellS(int cell) {
        return 2 * (placeM[cell + 1] - placeM[cell]) / (speedMps[cell] + speedMps[cell + 1]);
    }

    /**
     * Time from the timing line to a place, s; within a cell the square of the speed is a straight line of the place.
     *
     * @param placeM from 0 to the length of the lap
     */
    public double timeS(double placeM) {
        double time = 0;
        int cell = 0;
        while (cell < cells() && placeM(cell + 1) <= placeM) {
            time += cellS(cell++);
        }
        if (cell == cells() || placeM <= placeM(cell)) {
            return time;
        }
        double into = placeM - placeM(cell);
        double near = speedMps(cell);
        double far = speedMps(cell + 1);
        double share = into / (placeM(cell + 1) - placeM(cell));
        return time + 2 * into / (near + Math.sqrt(near * near + (far * far - near * near) * share));
    }

    /** What limits the car in a cell. */
    public Limit limit(int cell) {
        return LIMITS[limits[cell]];
    }
}
