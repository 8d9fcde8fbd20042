package org.lapwright.core.dynamics;

/**
 * Which accelerations a car may have at one element for a given speed: an interval, worked out without approximation. The
 * set of (w, u) is convex but for the mild bend of the motor's line over w.
 *
 * <p>The friction of the slot goes with |F_n|, so the two signs of the wall force are taken apart, each with the half-plane
 * in which it holds, and put together again. One instance is reused; nothing is allocated.
 */
final class FeasibleRange {
    private static final double FLAT = 1e-12;
    private static final double INFINITE = 1e12;

    private final ForceRows forces;
    private final LineRows lines;

    /** Least acceleration, m/s²; above {@link #high} when there is none. */
    double low;

    /** Greatest acceleration, m/s². */
    double high;

    /** What sets the least. */
    Limit lowLimit = Limit.SLIDE;

    /** What sets the greatest. */
    Limit highLimit = Limit.SLIDE;

    FeasibleRange(ForceRows forces, LineRows lines) {
        this.forces = forces;
        this.lines = lines;
    }

    /**
     * Sets the range at a speed. When there is none the ends cross, the more so the farther the speed is out.
     *
     * @param e the element
     * @param w square of the speed, not negative
     * @return how wide the range is, m/s²; negative when there is none
     */
    double widthAt(int e, double w) {
        signed(e, w, -1);
        double otherLow = low;
        double otherHigh = high;
        Limit otherLowLimit = lowLimit;
        Limit otherHighLimit = highLimit;
        signed(e, w, 1);
        double width = high - low;
        double other = otherHigh - otherLow;
        boolean join = width >= 0 && other >= 0;
        if (join ? otherLow < low : other > width) {
            low = otherLow;
            lowLimit = otherLowLimit;
        }
        if (join ? otherHigh > high : other > width) {
            high = otherHigh;
            highLimit = otherHighLimit;
        }
        narrowByLoads(e, w);
        return high - low;
    }

    /** Sets the range for one sign of the wall force. */
    private void signed(int e, double w, int sign) {
        low = -INFINITE;
        high = INFINITE;
        double[] g = forces.lane.rows.blocks[Rows.block(e)];
        double[] f = forces.rows.blocks[Rows.block(e)];
        int i = Rows.place(e);
        double wallU = f[ForceRows.WALL + i];
        double wall0 = free(f, ForceRows.WALL, i, w);
        keep(sign * wallU, sign * wall0, Limit.SLIDE);
        double drag = forces.slotFriction * (sign - f[ForceRows.SIGN + i]) * g[TrailedLane.INV_COS + i];
        grip(g, f, i, w, f[ForceRows.PUSH + i] + drag * wallU, free(f, ForceRows.PUSH, i, w) + drag * wall0);
        double v = Math.sqrt(w);
        double motorU = f[ForceRows.MOTOR + i] + drag * wallU;
        double motor0 = free(f, ForceRows.MOTOR, i, w) + drag * wall0;
        keep(-motorU, f[ForceRows.DRIVE + i] - f[ForceRows.DRIVE_SLOPE + i] * v - motor0, Limit.POWER);
        keep(motorU, forces.brake + f[ForceRows.BRAKE_SLOPE + i] * v + motor0, Limit.BRAKE);
    }

    private void narrowByLoads(int e, double w) {
        int i = Rows.place(e);
        if (lines.isFilled()) {
            double[] t = lines.rows.blocks[Rows.block(e)];
            keep(t[LineRows.NOSE + i], free(t, LineRows.NOSE, i, w), Limit.NOSE);
            keep(t[LineRows.RIGHT + i], free(t, LineRows.RIGHT, i, w), Limit.TIP);
            keep(t[LineRows.LEFT + i], free(t, LineRows.LEFT, i, w), Limit.TIP);
            return;
        }
        double[] f = forces.rows.blocks[Rows.block(e)];
        double[] g = forces.lane.rows.blocks[Rows.block(e)];
        double rearU = f[ForceRows.REAR + i];
        double rear0 = free(f, ForceRows.REAR, i, w);
        double nose0 = g[TrailedLane.GRAV_Z + i]
                + forces.magnet * g[TrailedLane.PULL + i]
                + g[TrailedLane.PRESS + i] * w
                - rear0;
        keep(-rearU, nose0 - forces.leastNose, Limit.NOSE);
        double holdU = forces.stance * (1 - forces.frontShare) * rearU;
        double hold0 = forces.stance * (rear0 + forces.frontShare * nose0);
        double leanU = f[ForceRows.LEAN + i];
        double lean0 = f[ForceRows.LEAN + ForceRows.W + i] * w - g[TrailedLane.GRAV_Y + i];
        keep(holdU - leanU, hold0 - lean0, Limit.TIP);
        keep(holdU + leanU, hold0 + lean0, Limit.TIP);
    }

    private double gripSquared(double[] g, int i) {
        return forces.gripSquared * g[TrailedLane.GRIP + i] * g[TrailedLane.GRIP + i];
    }

    private static double free(double[] f, int form, int i, double w) {
        return f[form + ForceRows.W + i] * w + f[form + ForceRows.FREE_OF_BOTH + i];
    }

    /** Keeps a u + b ≥ 0. */
    private void keep(double a, double b, Limit limit) {
        if (Math.abs(a) < FLAT) {
            // No u helps or hurts; the ends cross by what is missing.
            if (b < 0) {
                narrow(low, Math.min(high, low) + b, limit);
            }
        } else if (a > 0) {
            narrow(-b / a, high, limit);
        } else {
            narrow(low, -b / a, limit);
        }
    }

    /** Keeps push² + side² ≤ μ² rear², rear ≥ 0. */
    private void grip(double[] g, double[] f, int i, double w, double pushU, double push0) {
        double sideU = f[ForceRows.SIDE + i];
        double side0 = free(f, ForceRows.SIDE, i, w);
        double rearU = f[ForceRows.REAR + i];
        double rear0 = free(f, ForceRows.REAR, i, w);
        double square = gripSquared(g, i);
        double a = pushU * pushU + sideU * sideU - square * rearU * rearU;
        double b = pushU * push0 + sideU * side0 - square * rearU * rear0;
        if (a < FLAT) {
            openGrip(a, b, push0 * push0 + side0 * side0 - square * rear0 * rear0);
            return;
        }
        double alpha = pushU * rear0 - push0 * rearU;
        double beta = sideU * rear0 - side0 * rearU;
        double gamma = pushU * side0 - push0 * sideU;
        double d = square * (alpha * alpha + beta * beta) - gamma * gamma;
        double centre = -b / a;
        double half = Math.copySign(Math.sqrt(Math.abs(d)) / a, d);
        if (half >= 0 && rear0 + rearU * centre < 0) {
            half = rear0 + rearU * centre - half;
        }
        narrow(centre - half, centre + half, Limit.SLIDE);
    }

    /** The cone of grip is open towards driving, because driving loads the rear tyres more than it asks of them. */
    private void openGrip(double a, double b, double c) {
        double root = Math.sqrt(Math.max(b * b - a * c, 0));
        double from = b < 0 ? c / (root - b) : a < -FLAT ? (-b - root) / a : INFINITE;
        narrow(from, INFINITE, Limit.SLIDE);
    }

    private void narrow(double from, double to, Limit limit) {
        if (from > low) {
            low = from;
            lowLimit = limit;
        }
        if (to < high) {
            high = to;
            highLimit = limit;
        }
    }
}
