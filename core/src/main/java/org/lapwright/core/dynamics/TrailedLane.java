package org.lapwright.core.dynamics;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.lapwright.core.track.LaneCells;

/**
 * A lane as a car of a given length follows it: how far the tail hangs out at every cell, and everything in the
 * equations of motion that depends on lane and length alone.
 *
 * <p>The rear axle trails: dψ/ds = κ − sin ψ / L, a tractrix, periodic over the lap. With τ = tan(ψ/2) and constant
 * curvature this is a Riccati equation with constant coefficients, so one step is a fractional-linear map, exact for any
 * step length: τ' = ((1 − a) τ + b) / (1 + a − b τ), a = T/(2L), b = T κ/2, T = tanh(λh)/λ, λ² = (1/L² − κ²)/4. Any start is
 * forgotten like exp(−s/L), so running up to the timing line finds the periodic solution.
 *
 * <p>Elements 0 to {@code cells} − 1 are the cells, taken at their middle. After them come two for every joint, the
 * places just before and just after it: the hardest place of a lap is often the joint itself.
 */
final class TrailedLane {
    /** Cell length; for a joint 0. */
    static final int DS = 0;

    /** Length of rail that stands in for the ring. */
    static final int FEED = Rows.STRIDE;

    /** 1 / (2 ds); 0 for a joint. */
    static final int INV_DS = 25 * Rows.STRIDE;

    /** cos ψ and its inverse, sin ψ, tan ψ. */
    static final int COS = 2 * Rows.STRIDE;

    static final int INV_COS = 3 * Rows.STRIDE;
    static final int SIN = 4 * Rows.STRIDE;
    static final int TAN = 5 * Rows.STRIDE;

    /** Yaw acceleration for unit u, S/L, and for unit w, c p/L. */
    static final int YAW_U = 6 * Rows.STRIDE;

    static final int YAW_W = 7 * Rows.STRIDE;

    /** S p: what the wheel's speed loses. */
    static final int SIN_TURN = 8 * Rows.STRIDE;

    /** Curvature in the track's plane κ_g, and κ_g c, κ_g S, κ_g tan ψ; curvature towards the track's normal κ_n. */
    static final int CURVE = 9 * Rows.STRIDE;

    static final int CURVE_COS = 10 * Rows.STRIDE;
    static final int CURVE_SIN = 11 * Rows.STRIDE;
    static final int CURVE_TAN = 12 * Rows.STRIDE;
    static final int PRESS = 13 * Rows.STRIDE;

    /** S²/L², S³/L² and S²/(L² c). */
    static final int SWING = 14 * Rows.STRIDE;

    static final int SWING_SIN = 15 * Rows.STRIDE;
    static final int SWING_COS = 16 * Rows.STRIDE;

    /** Gravity along the slot, across it, along the car, across the car, into the track; g_n tan ψ − g_t. */
    static final int GRAV_T = 17 * Rows.STRIDE;

    static final int GRAV_N = 18 * Rows.STRIDE;
    static final int GRAV_X = 19 * Rows.STRIDE;
    static final int GRAV_Y = 20 * Rows.STRIDE;
    static final int GRAV_Z = 21 * Rows.STRIDE;
    static final int HILL = 22 * Rows.STRIDE;

    /** Plan curvature κ, and tan(ψ/2). */
    private static final int PLAN = 23 * Rows.STRIDE;

    private static final int HALF = 24 * Rows.STRIDE;

    /** Grip over that of the track's surface, and 1 where a magnet pulls, 0 where it does not. */
    static final int GRIP = 26 * Rows.STRIDE;

    static final int PULL = 27 * Rows.STRIDE;
    private static final int ROWS = 28;

    /** Beyond this the tail is across the slot and the equations lose their meaning: tan of half of 75°. */
    private static final double MOST_HALF_TANGENT = Math.tan(Math.toRadians(75) / 2);

    /** Lengths of car after which the tail has forgotten where it started. */
    private static final double FORGOTTEN = 40;

    private static final int MOST_LAPS = 300;
    private static final double SETTLED = 1e-13;

    final LaneCells lane;
    final int cells;
    final int elements;

    /** For each joint the cell after it. */
    final int[] joints;

    /** The rows above, for every element. */
    final Rows rows;

    /** Most that gravity pulls along the car, longest feed, greatest inverse of cos ψ: bounds for all elements. */
    double steepestPull;

    /** Greatest grip over that of the track's surface, and whether a magnet pulls everywhere. */
    double mostGrip;

    boolean pullsEverywhere = true;

    double longestFeed;
    double mostInvCos;

    /** Guide pivot to rear axle, m. */
    double lengthM;

    private final double[] at;
    private final double[] stepA;
    private final double[] stepB;
    private final double[] middleA;
    private final double[] middleB;
    private OptionalDouble tooTightAtM = OptionalDouble.empty();

    /** Takes a lane; {@link #follow} then works out how a car follows it. */
    TrailedLane(LaneCells lane) {
        this.lane = lane;
        cells = lane.count();
        joints = jointsOf(lane);
        elements = cells + 2 * joints.length;
        rows = new Rows(ROWS, elements);
        at = new double[cells + 1];
        stepA = new double[cells];
        stepB = new double[cells];
        middleA = new double[cells];
        middleB = new double[cells];
        lay();
    }

    /** Where the lane is too tight for the tail to follow, m from the timing line; empty when it follows everywhere. */
    OptionalDouble tooTightAtM() {
        return tooTightAtM;
    }

    /**
     * Works out how a car follows the lane. Nothing is done again for a length that was followed last.
     *
     * @param length guide pivot to rear axle, m
     */
    void follow(double length) {
        if (length == lengthM) {
            return;
        }
        lengthM = length;
        prepareSteps();
        tooTightAtM = trail();
        if (tooTightAtM.isPresent()) {
            return;
        }
        steepestPull = 0;
        mostInvCos = 1;
        for (int b = 0; b < rows.blocks.length; b++) {
            fill(rows.blocks[b], length);
            for (int i = 0; i < rows.count(b); i++) {
                double inverse = rows.blocks[b][INV_COS + i];
                mostInvCos = Math.max(mostInvCos, inverse);
                steepestPull = Math.max(steepestPull, rows.blocks[b][GRAV_T + i] * inverse);
            }
        }
    }

    private static int[] jointsOf(LaneCells lane) {
        int[] found = new int[lane.count()];
        int count = 0;
        for (int i = 0; i < found.length; i++) {
            if (lane.isAfterJoint(i)) {
                found[count++] = i;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** What does not depend on the car. */
    private void lay() {
        double place = 0;
        int next = 0;
        for (int i = 0; i < cells; i++) {
            lay(i, i, lane.lengthM(i), lane.feedLengthM(i));
            if (next < joints.length && joints[next] == i) {
                int e = cells + 2 * next++;
                double feed = lane.power().feedLengthM(place, lane.lapM());
                lay(e, (i + cells - 1) % cells, 0, feed);
                lay(e + 1, i, 0, feed);
            }
            place += lane.lengthM(i);
        }
        // The rest of the last block is reckoned with but never looked at: it needs harmless numbers.
        for (int e = elements; e < rows.blocks.length * Rows.BLOCK; e++) {
            lay(e, 0, lane.lengthM(0), 0);
        }
    }

    private void lay(int e, int cell, double length, double feed) {
        double bank = lane.bankRad(cell);
        double g = ResolvedCar.GRAVITY;
        double level = Math.sqrt(1 - lane.gradeSine(cell) * lane.gradeSine(cell));
        rows.set(DS, e, length);
        rows.set(INV_DS, e, length > 0 ? 0.5 / length : 0);
        rows.set(FEED, e, feed);
        rows.set(PLAN, e, lane.curvature(cell));
        rows.set(CURVE, e, lane.curvature(cell) * Math.cos(bank));
        rows.set(PRESS, e, lane.curvature(cell) * Math.sin(bank));
        rows.set(GRAV_T, e, -g * lane.gradeSine(cell));
        rows.set(GRAV_N, e, g * Math.sin(bank) * level);
        rows.set(GRAV_Z, e, g * Math.cos(bank) * level);
        rows.set(GRIP, e, lane.gripShare(cell));
        rows.set(PULL, e, lane.isMagnetic(cell) ? 1 : 0);
        mostGrip = Math.max(mostGrip, lane.gripShare(cell));
        pullsEverywhere &= lane.isMagnetic(cell);
        longestFeed = Math.max(longestFeed, feed);
    }

    private void prepareSteps() {
        for (int i = 0; i < cells; i++) {
            double h = lane.lengthM(i);
            double k = lane.curvature(i);
            if (i > 0 && h == lane.lengthM(i - 1) && k == lane.curvature(i - 1)) {
                stepA[i] = stepA[i - 1];
                stepB[i] = stepB[i - 1];
                middleA[i] = middleA[i - 1];
                middleB[i] = middleB[i - 1];
            } else {
                double whole = reach(h, k);
                double half = reach(h / 2, k);
                stepA[i] = whole / (2 * lengthM);
                stepB[i] = whole * k / 2;
                middleA[i] = half / (2 * lengthM);
                middleB[i] = half * k / 2;
            }
        }
    }

    /** Fills tan(ψ/2) for every element. */
    private OptionalDouble trail() {
        at[0] = forgotten();
        for (int lap = 0; lap < MOST_LAPS; lap++) {
            double way = 0;
            for (int i = 0; i < cells; i++) {
                at[i + 1] = moved(at[i], stepA[i], stepB[i]);
                way += lane.lengthM(i);
                // Written so that NaN, which a lane too tight for any car can give, is caught as well.
                if (!(Math.abs(at[i + 1]) < MOST_HALF_TANGENT)) {
                    return OptionalDouble.of(way);
                }
            }
            if (Math.abs(at[cells] - at[0]) < SETTLED) {
                break;
            }
            at[0] = at[cells];
        }
        for (int i = 0; i < cells; i++) {
            rows.set(HALF, i, moved(at[i], middleA[i], middleB[i]));
        }
        for (int j = 0; j < joints.length; j++) {
            rows.set(HALF, cells + 2 * j, at[joints[j]]);
            rows.set(HALF, cells + 2 * j + 1, at[joints[j]]);
        }
        return OptionalDouble.empty();
    }

    /** T of the class comment. */
    private double reach(double h, double curvature) {
        double square = (1 / (lengthM * lengthM) - curvature * curvature) / 4;
        double z = square * h * h;
        if (Math.abs(z) < 1e-2) {
            // tanh(√z)/√z; the first term left out is below 1e-14.
            return h * (1 - z / 3 * (1 - z / 5 * (2 - z / 21 * (17 - z / 9 * (62 - z / 55 * 1382)))));
        }
        double root = Math.sqrt(Math.abs(square));
        return (square > 0 ? Math.tanh(h * root) : Math.tan(h * root)) / root;
    }

    private static double moved(double t, double a, double b) {
        return ((1 - a) * t + b) / (1 + a - b * t);
    }

    /** The value at the timing line after so long a way that it does not matter how the tail began. */
    private double forgotten() {
        int from = cells;
        double way = 0;
        while (from > 0 && way < FORGOTTEN * lengthM) {
            from--;
            way += lane.lengthM(from);
        }
        double t = 0;
        for (int i = from; i < cells; i++) {
            t = moved(t, stepA[i], stepB[i]);
        }
        return Double.isFinite(t) ? t : 0;
    }

    private static void fill(double[] v, double length) {
        double inverse = 1 / length;
        for (int i = 0; i < Rows.BLOCK; i++) {
            double square = v[HALF + i] * v[HALF + i];
            v[COS + i] = (1 - square) / (1 + square);
            v[INV_COS + i] = (1 + square) / (1 - square);
            v[SIN + i] = 2 * v[HALF + i] / (1 + square);
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double turn = v[PLAN + i] - v[SIN + i] * inverse;
            v[YAW_U + i] = v[SIN + i] * inverse;
            v[YAW_W + i] = v[COS + i] * turn * inverse;
            v[SIN_TURN + i] = v[SIN + i] * turn;
            v[TAN + i] = v[SIN + i] * v[INV_COS + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double swing = v[YAW_U + i] * v[YAW_U + i];
            v[SWING + i] = swing;
            v[SWING_SIN + i] = swing * v[SIN + i];
            v[SWING_COS + i] = swing * v[INV_COS + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[CURVE_COS + i] = v[CURVE + i] * v[COS + i];
            v[CURVE_SIN + i] = v[CURVE + i] * v[SIN + i];
            v[CURVE_TAN + i] = v[CURVE + i] * v[TAN + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[GRAV_X + i] = v[GRAV_T + i] * v[COS + i] - v[GRAV_N + i] * v[SIN + i];
            v[GRAV_Y + i] = v[GRAV_T + i] * v[SIN + i] + v[GRAV_N + i] * v[COS + i];
            v[HILL + i] = v[GRAV_N + i] * v[TAN + i] - v[GRAV_T + i];
        }
    }
}
