package org.lapwright.core.dynamics;

import static org.lapwright.core.dynamics.ForceRows.BRAKE_SLOPE;
import static org.lapwright.core.dynamics.ForceRows.DRIVE;
import static org.lapwright.core.dynamics.ForceRows.DRIVE_SLOPE;
import static org.lapwright.core.dynamics.ForceRows.FREE_OF_BOTH;
import static org.lapwright.core.dynamics.ForceRows.LEAN;
import static org.lapwright.core.dynamics.ForceRows.MOTOR;
import static org.lapwright.core.dynamics.ForceRows.PUSH;
import static org.lapwright.core.dynamics.ForceRows.REAR;
import static org.lapwright.core.dynamics.ForceRows.SIDE;
import static org.lapwright.core.dynamics.ForceRows.SIGN;
import static org.lapwright.core.dynamics.ForceRows.W;
import static org.lapwright.core.dynamics.ForceRows.WALL;
import static org.lapwright.core.dynamics.StepRows.FAR_W;
import static org.lapwright.core.dynamics.StepRows.NEAR_W;

/** What a swept lap comes to: its time, its speeds, and at every cell how far it stays inside each limit. */
final class LapAccount {
    /** Time in the cell; w and u at its middle. */
    private static final int TIME = 0;

    private static final int MIDDLE = Rows.STRIDE;
    private static final int PACE = 2 * Rows.STRIDE;

    /** What is left to each limit, m/s², in the order of {@link Limit}. */
    private static final int LEFT = 3 * Rows.STRIDE;

    private static final int SLIDE = LEFT;
    private static final int POWER = LEFT + Rows.STRIDE;
    private static final int BRAKE = LEFT + 2 * Rows.STRIDE;
    private static final int NOSE = LEFT + 3 * Rows.STRIDE;
    private static final int TIP = LEFT + 4 * Rows.STRIDE;

    /** What the motor delivers; what slot friction adds where the blade is on the other side than taken; rear load. */
    private static final int NEED = LEFT + 5 * Rows.STRIDE;

    private static final int EXTRA = LEFT + 6 * Rows.STRIDE;
    private static final int LOAD = LEFT + 7 * Rows.STRIDE;
    private static final int ROWS = 11;
    private static final int LIMITS = 5;
    private static final int LAST_TIGHT = Limit.BRAKE.ordinal();
    private static final double CLOSE = 0.3;

    private final CarSweep car;
    private final double[] v;

    /** Lap time, s. */
    double lapS;

    /** Squares of the greatest and least speed at a node. */
    double topSquared;

    double slowestSquared;

    /** Least that is left to slide, power and brake, m/s². */
    double room;

    /** Least that is left to nose and tip, m/s². */
    double clearance;

    LapAccount(CarSweep car) {
        this.car = car;
        v = new double[ROWS * Rows.STRIDE];
    }

    /** Adds up the lap that the sweeps found. */
    void fill() {
        lapS = 0;
        topSquared = 0;
        slowestSquared = Double.POSITIVE_INFINITY;
        room = Double.POSITIVE_INFINITY;
        clearance = Double.POSITIVE_INFINITY;
        for (int b = 0; b <= Rows.block(car.cells() - 1); b++) {
            fill(b);
            sum(b);
        }
    }

    /**
     * Says for every cell how long it takes and which limit is nearest.
     *
     * @param timeS where the times go, s
     * @param limits where the limits go, as places in {@link Limit}
     */
    void list(double[] timeS, byte[] limits) {
        for (int b = 0; b <= Rows.block(car.cells() - 1); b++) {
            fill(b);
            int first = b * Rows.BLOCK;
            int to = Math.min(Rows.BLOCK, car.cells() - first);
            for (int i = 0; i < to; i++) {
                timeS[first + i] = v[TIME + i];
                limits[first + i] = (byte) nearest(i);
            }
        }
    }

    /** Nose and tip count only where the car is close to them: between driving and braking no limit binds. */
    private int nearest(int i) {
        int nearest = 0;
        double least = v[LEFT + i];
        for (int k = 1; k < LIMITS; k++) {
            double left = v[LEFT + k * Rows.STRIDE + i];
            if (left < least && (k <= LAST_TIGHT || left < CLOSE)) {
                least = left;
                nearest = k;
            }
        }
        return nearest;
    }

    private void fill(int b) {
        double[] g = car.forces.lane.rows.blocks[b];
        double[] f = car.forces.rows.blocks[b];
        fillPace(g, car.steps.ahead.blocks[b], v);
        fillExtra(g, f, v, car.forces.slotFriction);
        fillMotor(f, v, car.forces.brake);
        fillSlide(g, f, v, Math.sqrt(car.forces.gripSquared));
        fillNose(g, v, car.forces.magnet, car.forces.leastNose);
        fillTip(g, f, v, car.forces);
    }

    private void sum(int b) {
        double[] swept = car.steps.ahead.blocks[b];
        int to = Math.min(Rows.BLOCK, car.cells() - b * Rows.BLOCK);
        int loose = car.lines.isFilled() ? NOSE : LOAD;
        double time = 0;
        double top = topSquared;
        double slowest = slowestSquared;
        double tight = room;
        double clear = clearance;
        for (int i = 0; i < to; i++) {
            time += v[TIME + i];
            double w = swept[NEAR_W + i];
            top = w > top ? w : top;
            slowest = w < slowest ? w : slowest;
            tight = v[NEED + i] < tight ? v[NEED + i] : tight;
            clear = v[loose + i] < clear ? v[loose + i] : clear;
        }
        lapS += time;
        topSquared = top;
        slowestSquared = slowest;
        room = tight;
        clearance = clear;
    }

    private static void fillPace(double[] g, double[] swept, double[] v) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[MIDDLE + i] = 0.5 * (swept[NEAR_W + i] + swept[FAR_W + i]);
            v[PACE + i] = g[TrailedLane.INV_DS + i] * (swept[FAR_W + i] - swept[NEAR_W + i]);
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[TIME + i] = 2 * g[TrailedLane.DS + i] / (Math.sqrt(swept[NEAR_W + i]) + Math.sqrt(swept[FAR_W + i]));
        }
    }

    /** Where the blade lies on the other side than taken, the friction of the slot was taken off twice. */
    private static void fillExtra(double[] g, double[] f, double[] v, double friction) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[EXTRA + i] = f[WALL + i] * v[PACE + i] + f[WALL + W + i] * v[MIDDLE + i] + f[WALL + FREE_OF_BOTH + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double wall = v[EXTRA + i];
            v[EXTRA + i] = friction * g[TrailedLane.INV_COS + i] * (Math.abs(wall) - f[SIGN + i] * wall);
        }
    }

    private static void fillMotor(double[] f, double[] v, double brake) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[NEED + i] = f[MOTOR + i] * v[PACE + i]
                    + f[MOTOR + W + i] * v[MIDDLE + i]
                    + f[MOTOR + FREE_OF_BOTH + i]
                    + v[EXTRA + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double speed = Math.sqrt(v[MIDDLE + i]);
            v[POWER + i] = f[DRIVE + i] - f[DRIVE_SLOPE + i] * speed - v[NEED + i];
            v[BRAKE + i] = brake + f[BRAKE_SLOPE + i] * speed + v[NEED + i];
        }
    }

    private static void fillSlide(double[] g, double[] f, double[] v, double grip) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[LOAD + i] = f[REAR + i] * v[PACE + i] + f[REAR + W + i] * v[MIDDLE + i] + f[REAR + FREE_OF_BOTH + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double push = f[PUSH + i] * v[PACE + i] + f[PUSH + W + i] * v[MIDDLE + i] + f[PUSH + FREE_OF_BOTH + i];
            push += v[EXTRA + i];
            v[SLIDE + i] = push * push;
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double side = f[SIDE + i] * v[PACE + i] + f[SIDE + W + i] * v[MIDDLE + i] + f[SIDE + FREE_OF_BOTH + i];
            v[SLIDE + i] = grip * g[TrailedLane.GRIP + i] * v[LOAD + i] - Math.sqrt(v[SLIDE + i] + side * side);
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[NEED + i] = Math.min(v[SLIDE + i], Math.min(v[POWER + i], v[BRAKE + i]));
        }
    }

    private static void fillNose(double[] g, double[] v, double magnet, double least) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            double all = g[TrailedLane.GRAV_Z + i] + g[TrailedLane.PRESS + i] * v[MIDDLE + i];
            v[NOSE + i] = all + magnet * g[TrailedLane.PULL + i] - least - v[LOAD + i];
        }
    }

    private static void fillTip(double[] g, double[] f, double[] v, ForceRows forces) {
        double rear = forces.stance;
        double front = forces.stance * forces.frontShare;
        double least = front * forces.leastNose;
        for (int i = 0; i < Rows.BLOCK; i++) {
            double lean = f[LEAN + i] * v[PACE + i] + f[LEAN + W + i] * v[MIDDLE + i] - g[TrailedLane.GRAV_Y + i];
            double hold = rear * v[LOAD + i] + front * v[NOSE + i] + least;
            v[TIP + i] = hold - Math.abs(lean);
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[LOAD + i] = Math.min(v[NOSE + i], v[TIP + i]);
        }
    }
}
