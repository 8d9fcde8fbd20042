package org.lapwright.core.dynamics;

import static org.lapwright.core.dynamics.ForceRows.FREE_OF_BOTH;
import static org.lapwright.core.dynamics.ForceRows.LEAN;
import static org.lapwright.core.dynamics.ForceRows.REAR;
import static org.lapwright.core.dynamics.ForceRows.W;

import java.util.Arrays;

/**
 * The two limits that are straight lines in (w, u): nose and tip. Many cars never come near them; their rows are worked
 * out only for those that might.
 *
 * <p>Where the tipping limit moves by less with u than a cell changes w with u, it is a limit on speed alone for this grid,
 * and a constraint at mid-cell would let the speed alternate from node to node about it. There it is taken off the cell
 * and put on the edge that keeps the sweeps monotone: weighting the edges by 1 ± (slope/ds − 1) instead of by halves makes
 * the other edge drop out.
 */
final class LineRows {
    /** What is left before the guide lifts, before the car tips over its right and over its left wheels; 3 rows each. */
    static final int NOSE = 0;

    static final int RIGHT = 3 * Rows.STRIDE;
    static final int LEFT = 6 * Rows.STRIDE;

    /** Steps: greatest far edge under nose, right, left, and near edge under right and left; free row, then row of z. */
    private static final int AHEAD_NOSE = 9 * Rows.STRIDE;

    private static final int AHEAD_RIGHT = 11 * Rows.STRIDE;
    private static final int AHEAD_LEFT = 13 * Rows.STRIDE;
    private static final int BACK_RIGHT = 15 * Rows.STRIDE;
    private static final int BACK_LEFT = 17 * Rows.STRIDE;
    private static final int ROWS = 19;
    private static final double TINY = 1e-300;
    private static final double FAR = 1e9;

    private final ForceRows forces;
    final Rows rows;

    /** Greatest w at each node from tipping limits put on edges; infinite elsewhere. */
    final double[] cap;

    private final double[] bounds;
    private boolean filled;

    LineRows(ForceRows forces) {
        this.forces = forces;
        rows = new Rows(ROWS, forces.lane.elements);
        cap = new double[forces.lane.cells + 1];
        bounds = new double[Rows.BLOCK];
        release();
    }

    /** Whether the rows hold the car in hand. */
    boolean isFilled() {
        return filled;
    }

    /** Leaves the car in hand without rows, and takes all limits off the edges. */
    void release() {
        filled = false;
        Arrays.fill(cap, Double.POSITIVE_INFINITY);
    }

    /** Begins with the car in hand; {@link #fill} then works out its rows. */
    void begin() {
        release();
        filled = true;
    }

    /** Works out the rows of one block. */
    void fill(int b) {
        double[] g = forces.lane.rows.blocks[b];
        double[] f = forces.rows.blocks[b];
        double[] v = rows.blocks[b];
        fillNose(g, f, v);
        fillTipping(f, v);
        fillLeaning(g, f, v);
        capEdges(g, v, RIGHT, b);
        capEdges(g, v, LEFT, b);
        fillStep(g, v, NOSE, AHEAD_NOSE, 1);
        fillStep(g, v, RIGHT, AHEAD_RIGHT, 1);
        fillStep(g, v, LEFT, AHEAD_LEFT, 1);
        fillStep(g, v, RIGHT, BACK_RIGHT, -1);
        fillStep(g, v, LEFT, BACK_LEFT, -1);
    }

    /** Brings the two names of the timing line's node together. */
    void end() {
        double ends = Math.min(cap[0], cap[forces.lane.cells]);
        cap[0] = ends;
        cap[forces.lane.cells] = ends;
    }

    /** Greatest far edge for a near edge. */
    static double ahead(double[] v, int i, double near) {
        double nose = v[AHEAD_NOSE + i] + v[AHEAD_NOSE + W + i] * near;
        double right = v[AHEAD_RIGHT + i] + v[AHEAD_RIGHT + W + i] * near;
        double left = v[AHEAD_LEFT + i] + v[AHEAD_LEFT + W + i] * near;
        return Math.min(nose, Math.min(right, left));
    }

    /** Greatest near edge for a far edge. */
    static double back(double[] v, int i, double far) {
        double right = v[BACK_RIGHT + i] + v[BACK_RIGHT + W + i] * far;
        double left = v[BACK_LEFT + i] + v[BACK_LEFT + W + i] * far;
        return Math.min(right, left);
    }

    private void fillNose(double[] g, double[] f, double[] v) {
        double magnet = forces.magnet;
        double least = forces.leastNose;
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[NOSE + i] = -f[REAR + i];
            v[NOSE + W + i] = g[TrailedLane.PRESS + i] - f[REAR + W + i];
            v[NOSE + FREE_OF_BOTH + i] =
                    g[TrailedLane.GRAV_Z + i] + magnet * g[TrailedLane.PULL + i] - least - f[REAR + FREE_OF_BOTH + i];
        }
    }

    /** How the load holds the car down: half the track over the height times the load that the wheels carry. */
    private void fillTipping(double[] f, double[] v) {
        double rear = forces.stance;
        double front = rear * forces.frontShare;
        double lift = front * forces.leastNose;
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[RIGHT + i] = rear * f[REAR + i] + front * v[NOSE + i];
            v[RIGHT + W + i] = rear * f[REAR + W + i] + front * v[NOSE + W + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[RIGHT + FREE_OF_BOTH + i] = rear * f[REAR + FREE_OF_BOTH + i] + front * v[NOSE + FREE_OF_BOTH + i] + lift;
        }
    }

    private static void fillLeaning(double[] g, double[] f, double[] v) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[LEFT + i] = v[RIGHT + i] + f[LEAN + i];
            v[RIGHT + i] = v[RIGHT + i] - f[LEAN + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[LEFT + W + i] = v[RIGHT + W + i] + f[LEAN + W + i];
            v[RIGHT + W + i] = v[RIGHT + W + i] - f[LEAN + W + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[LEFT + FREE_OF_BOTH + i] = v[RIGHT + FREE_OF_BOTH + i] - g[TrailedLane.GRAV_Y + i];
            v[RIGHT + FREE_OF_BOTH + i] = v[RIGHT + FREE_OF_BOTH + i] + g[TrailedLane.GRAV_Y + i];
        }
    }

    private void capEdges(double[] g, double[] v, int form, int block) {
        int first = block * Rows.BLOCK;
        int to = Math.min(Rows.BLOCK, forces.lane.cells - first);
        for (int i = 0; i < to; i++) {
            double fall = -v[form + W + i] * g[TrailedLane.DS + i];
            double slope = v[form + i];
            if (fall > Math.abs(slope)) {
                double free = v[form + FREE_OF_BOTH + i];
                int node = first + i + (slope > 0 ? 0 : 1);
                cap[node] = Math.min(cap[node], Math.max(0, -free / v[form + W + i]));
                v[form + i] = 0;
                v[form + W + i] = 0;
                v[form + FREE_OF_BOTH + i] = free < 0 ? free : 1;
            }
        }
    }

    /** A linear limit as a step; where it does not bound this direction the bound is put far away. */
    private void fillStep(double[] g, double[] v, int form, int out, double d) {
        double[] share = bounds;
        for (int i = 0; i < Rows.BLOCK; i++) {
            double slope = d * v[form + i] + g[TrailedLane.DS + i] * v[form + W + i];
            double size = Math.max(Math.abs(slope), TINY);
            // 1 where it bounds, 0 where it does not, a half where u does not matter.
            share[i] = 0.5 - 0.5 * slope / size;
            v[out + W + i] = 2 * g[TrailedLane.DS + i] / size;
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double reach = v[out + W + i] * share[i];
            v[out + i] = reach * v[form + FREE_OF_BOTH + i] + FAR * (1 - share[i]);
            v[out + W + i] = 1 + reach * v[form + W + i];
        }
    }
}
