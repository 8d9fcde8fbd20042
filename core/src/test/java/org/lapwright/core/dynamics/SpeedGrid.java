package org.lapwright.core.dynamics;

import java.util.Arrays;

/**
 * Whether a car can get round at all, by brute force: dynamic programming over a grid of speeds at every node, backwards and
 * round again until no speed drops out. Strictly, a step counts only if its acceleration lies inside the feasible range, so what
 * comes through is a lap, and what does not may still be one that runs between the speeds of the grid. Loosely, a step may be
 * out by a step of the grid and joints are left out, so what does not come through is no lap.
 */
final class SpeedGrid {
    private static final double MOST_MPS2 = 40;
    private static final int MOST_LAPS = 30;

    private final int speeds;
    private final TrailedLane lane;
    private final FeasibleRange range;
    private final double fastest;
    private final double[] low;
    private final double[] high;
    private double slack;

    SpeedGrid(TrailedLane lane, ResolvedCar car, int speeds) {
        this.speeds = speeds;
        this.lane = lane;
        CarSweep car1 = new CarSweep(lane);
        car1.prepare(lane, car, false);
        car1.lines.release();
        range = new FeasibleRange(car1.forces, car1.lines);
        fastest = 1.05 * car1.forces.fastestSquared;
        low = new double[2 * speeds + 1];
        high = new double[2 * speeds + 1];
    }

    boolean canGetRound(boolean strictly) {
        slack = strictly ? 0 : 1;
        boolean[] line = new boolean[speeds + 1];
        Arrays.fill(line, true);
        for (int lap = 0; lap < MOST_LAPS; lap++) {
            boolean[] node = line;
            for (int i = lane.cells - 1; i >= 0; i--) {
                node = before(i, node);
                if (strictly) {
                    dropAtJoint(i, node);
                }
            }
            boolean same = true;
            boolean any = false;
            for (int k = 0; k <= speeds; k++) {
                same &= node[k] || !line[k];
                line[k] &= node[k];
                any |= line[k];
            }
            if (same || !any) {
                return any;
            }
        }
        return false;
    }

    private boolean[] before(int cell, boolean[] after) {
        fillRange(cell);
        double ds = lane.rows.get(TrailedLane.DS, cell);
        boolean[] found = new boolean[speeds + 1];
        for (int k = 0; k <= speeds; k++) {
            double reach = 2 * ds * MOST_MPS2;
            int from = (int) (speeds * Math.sqrt(Math.max(squared(k) - reach, 0) / fastest));
            int to = (int) Math.min(speeds, Math.ceil(speeds * Math.sqrt((squared(k) + reach) / fastest)));
            for (int next = from; next <= to && !found[k]; next++) {
                found[k] = after[next] && isFeasible(squared(k), squared(next), ds);
            }
        }
        return found;
    }

    private boolean isFeasible(double near, double far, double ds) {
        double at = 2 * speeds * Math.sqrt((near + far) / 2 / fastest);
        int k = Math.min((int) at, 2 * speeds - 1);
        double u = (far - near) / (2 * ds);
        double out = slack * fastest * (at + 1) / (speeds * (double) speeds) / (2 * ds);
        double least = low[k] + (at - k) * (low[k + 1] - low[k]);
        double most = high[k] + (at - k) * (high[k + 1] - high[k]);
        return least - most <= out && least - out <= u && u <= most + out;
    }

    private void fillRange(int cell) {
        for (int k = 0; k <= 2 * speeds; k++) {
            range.widthAt(cell, squared(k / 2.0));
            low[k] = range.low;
            high[k] = range.high;
        }
    }

    /** At a joint the limits hold just before and just after it. */
    private void dropAtJoint(int cell, boolean[] node) {
        int j = Arrays.binarySearch(lane.joints, cell);
        for (int k = 0; j >= 0 && k <= speeds; k++) {
            node[k] &= range.widthAt(lane.cells + 2 * j, squared(k)) >= 0
                    && range.widthAt(lane.cells + 2 * j + 1, squared(k)) >= 0;
        }
    }

    private double squared(double k) {
        return fastest * (k / speeds) * (k / speeds);
    }
}
