package org.lapwright.core.dynamics;

import static java.lang.Math.fma;
import static org.lapwright.core.dynamics.ForceRows.BRAKE_SLOPE;
import static org.lapwright.core.dynamics.ForceRows.DRIVE;
import static org.lapwright.core.dynamics.ForceRows.DRIVE_SLOPE;
import static org.lapwright.core.dynamics.ForceRows.FREE;
import static org.lapwright.core.dynamics.ForceRows.FREE_OF_BOTH;
import static org.lapwright.core.dynamics.ForceRows.MOTOR;
import static org.lapwright.core.dynamics.ForceRows.PUSH;
import static org.lapwright.core.dynamics.ForceRows.REAR;
import static org.lapwright.core.dynamics.ForceRows.SIDE;
import static org.lapwright.core.dynamics.ForceRows.SIGN;
import static org.lapwright.core.dynamics.ForceRows.W;
import static org.lapwright.core.dynamics.ForceRows.WALL;

/**
 * What a step across a cell needs, worked out beforehand for all cells at once: the greatest w at one edge for a given w at
 * the other, in closed form for slide and for the motor. Forwards it is the far edge under slide and power, backwards the
 * near edge under slide and brake.
 *
 * <p>With z the known edge, d = ±1 the direction and u the acceleration, mid-cell w is z + d·ds·u and the other edge z + 2 d·ds·u.
 * Slide then is a quadratic in u, and everything in it follows from the six products of the forms push, side and rear under
 * the metric of the grip cone, push² + side² − μ² rear². The motor's line is a quadratic in the speed at mid-cell. So
 *
 * <pre>
 *   slide:  other = G0 + G1 z + √(R0 + R1 z + R2 z²)
 *   motor:  other = 2 q² − z,  q = √(M0 + M1 z) − MS
 * </pre>
 */
final class StepRows {
    /** Coefficients of the class comment, in {@link #ahead} and {@link #back}. */
    static final int G0 = 0;

    static final int G1 = Rows.STRIDE;
    static final int R0 = 2 * Rows.STRIDE;
    static final int R1 = 3 * Rows.STRIDE;
    static final int R2 = 4 * Rows.STRIDE;
    static final int M0 = 5 * Rows.STRIDE;
    static final int M1 = 6 * Rows.STRIDE;
    static final int MS = 7 * Rows.STRIDE;

    /** In {@link #back} only: the greatest far edge that helps the near edge, and the peak of w at the cell itself. */
    static final int HELPFUL = 8 * Rows.STRIDE;

    static final int PEAK = 9 * Rows.STRIDE;

    /** In {@link #ahead} only: S1 far + S2 near + S3 is not negative while the blade is on the side taken. */
    static final int S1 = 8 * Rows.STRIDE;

    static final int S2 = 9 * Rows.STRIDE;
    static final int S3 = 10 * Rows.STRIDE;

    /** In {@link #ahead} only: what the sweep finds, w at the near and at the far edge. */
    static final int NEAR_W = 11 * Rows.STRIDE;

    static final int FAR_W = 12 * Rows.STRIDE;
    private static final int AHEAD_ROWS = 13;
    private static final int BACK_ROWS = 10;

    /** Greatest w at the tip of the limit of grip, no more than just above the free speed, and the acceleration there. */
    static final int TIP_W = 0;

    static final int TIP_U = Rows.STRIDE;

    /** Not negative where {@link #TIP_W} means what it says. */
    static final int TIP_GOOD = 2 * Rows.STRIDE;

    private static final int UU = 3 * Rows.STRIDE;
    private static final int UW = 4 * Rows.STRIDE;
    private static final int U0 = 5 * Rows.STRIDE;
    private static final int WW = 6 * Rows.STRIDE;
    private static final int W0 = 7 * Rows.STRIDE;
    private static final int ZERO = 8 * Rows.STRIDE;
    private static final int D2 = 9 * Rows.STRIDE;
    private static final int D1 = 10 * Rows.STRIDE;
    private static final int D1H = 11 * Rows.STRIDE;
    private static final int D0 = 12 * Rows.STRIDE;
    private static final int D0H = 13 * Rows.STRIDE;
    private static final int D0HH = 14 * Rows.STRIDE;
    private static final int INV_UU = 15 * Rows.STRIDE;
    private static final int TIP_ROWS = 16;
    private static final double TINY = 1e-300;
    private static final double STEEP = 1e200;

    /** Stands for no peak at all, (m/s)². */
    static final double FAR = 1e6;

    /** A wall force so near to none that its side does not matter. */
    private static final double OVER = -1e-11;

    private final ForceRows forces;

    /** The tips, and what lies behind them, of the block worked out last. */
    final double[] tips;

    /** Steps to the far edge. */
    final Rows ahead;

    /** Steps to the near edge. */
    final Rows back;

    StepRows(ForceRows forces) {
        this.forces = forces;
        tips = new double[TIP_ROWS * Rows.STRIDE];
        ahead = new Rows(AHEAD_ROWS, forces.lane.elements);
        back = new Rows(BACK_ROWS, forces.lane.elements);
    }

    /** Works out one block. */
    void fill(int block) {
        double[] g = forces.lane.rows.blocks[block];
        double[] f = forces.rows.blocks[block];
        double[] v = tips;
        double[] far = ahead.blocks[block];
        double[] near = back.blocks[block];
        fillProducts(g, f, v, forces.gripSquared);
        fillMinors(v);
        fillScales(g, v, far, near);
        fillSlide(g, v, far, 1);
        fillSlide(g, v, near, -1);
        fillMotorScales(g, f, far, near);
        fillPower(f, far);
        fillBrake(f, near, forces.brake);
        fillTips(f, v);
        fillPeaks(g, f, v, near);
        fillSides(g, f, far);
    }

    /** Greatest w at the far edge under slide and power. */
    static double aheadStep(double[] v, int i, double z) {
        double inside = fma(fma(v[R2 + i], z, v[R1 + i]), z, v[R0 + i]);
        double slide = fma(v[G1 + i], z, v[G0 + i]) + Math.sqrt(inside > 0 ? inside : 0);
        double motor = fma(v[M1 + i], z, v[M0 + i]);
        double less = v[MS + i];
        // √motor − less ≥ √middle, without the roots.
        double middle = (slide + z) / 2;
        double more = motor - middle - less * less;
        if (more >= 0 && more * more >= 4 * less * less * middle) {
            return slide;
        }
        return motorStep(motor, less, z);
    }

    /** Greatest w at the near edge under slide and brake. */
    static double backStep(double[] v, int i, double z) {
        double inside = fma(fma(v[R2 + i], z, v[R1 + i]), z, v[R0 + i]);
        double slide = fma(v[G1 + i], z, v[G0 + i]) + Math.sqrt(inside > 0 ? inside : 0);
        double motor = fma(v[M1 + i], z, v[M0 + i]);
        double less = v[MS + i];
        // As ahead, but here less is not positive.
        double middle = (slide + z) / 2;
        double more = motor - middle - less * less;
        if (more >= 0 || more * more <= 4 * less * less * middle) {
            return slide;
        }
        return motorStep(motor, less, z);
    }

    private static double motorStep(double motor, double less, double z) {
        double speed = Math.sqrt(Math.max(motor, 0)) - less;
        return speed > 0 ? 2 * speed * speed - z : -z;
    }

    /** Either step with the blade on the other side of the slot than taken, from the forces themselves. */
    double turnedStep(int e, int d, double z) {
        double[] g = forces.lane.rows.blocks[Rows.block(e)];
        double[] f = forces.rows.blocks[Rows.block(e)];
        int i = Rows.place(e);
        double h = d * g[TrailedLane.DS + i];
        double drag = -2 * f[ForceRows.SIGN + i] * forces.slotFriction * g[TrailedLane.INV_COS + i];
        double wallU = drag * f[ForceRows.WALL + i];
        double wallW = drag * f[ForceRows.WALL + W + i];
        double wall0 = drag * f[ForceRows.WALL + FREE_OF_BOTH + i];
        double pushW = f[PUSH + W + i] + wallW;
        double push = f[PUSH + i] + wallU + h * pushW;
        double push0 = pushW * z + f[PUSH + FREE_OF_BOTH + i] + wall0;
        double side = f[SIDE + i] + h * f[SIDE + W + i];
        double side0 = f[SIDE + W + i] * z + f[SIDE + FREE_OF_BOTH + i];
        double rear = f[REAR + i] + h * f[REAR + W + i];
        double rear0 = f[REAR + W + i] * z + f[REAR + FREE_OF_BOTH + i];
        double grip = forces.gripSquared * g[TrailedLane.GRIP + i] * g[TrailedLane.GRIP + i];
        double a = push * push + side * side - grip * rear * rear;
        double b = push * push0 + side * side0 - grip * rear * rear0;
        double c = push0 * push0 + side0 * side0 - grip * rear0 * rear0;
        double slide = z + 2 * h * (d * Math.sqrt(Math.max(b * b - a * c, 0)) - b) / a;
        double motorW = f[MOTOR + W + i] + wallW;
        double motorU = (f[MOTOR + i] + wallU) / (d * h);
        double free = f[MOTOR + FREE_OF_BOTH + i] + wall0;
        double limit = d > 0 ? f[DRIVE + i] - free : forces.brake + free;
        double slope = d > 0 ? f[DRIVE_SLOPE + i] : -f[BRAKE_SLOPE + i];
        double half = 0.5 / (motorU + d * motorW);
        double less = slope * half;
        double speed = Math.sqrt(Math.max(fma(less, less, 2 * half * (limit + motorU * z)), 0)) - less;
        double at = Math.max(speed, 0);
        return Math.min(slide, 2 * at * at - z);
    }

    private static void fillProducts(double[] g, double[] f, double[] v, double grip) {
        double less = -grip;
        for (int i = 0; i < Rows.BLOCK; i++) {
            double square = less * g[TrailedLane.GRIP + i] * g[TrailedLane.GRIP + i];
            double rear = square * f[REAR + i];
            double rearW = square * f[REAR + W + i];
            v[UU + i] = fma(f[PUSH + i], f[PUSH + i], fma(f[SIDE + i], f[SIDE + i], rear * f[REAR + i]));
            v[UW + i] = fma(f[PUSH + i], f[PUSH + W + i], fma(f[SIDE + i], f[SIDE + W + i], rear * f[REAR + W + i]));
            v[WW + i] = fma(
                    f[PUSH + W + i], f[PUSH + W + i], fma(f[SIDE + W + i], f[SIDE + W + i], rearW * f[REAR + W + i]));
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double push = f[PUSH + FREE_OF_BOTH + i];
            double side = f[SIDE + FREE_OF_BOTH + i];
            double square = less * g[TrailedLane.GRIP + i] * g[TrailedLane.GRIP + i];
            double rear = square * f[REAR + FREE_OF_BOTH + i];
            v[U0 + i] = fma(f[PUSH + i], push, fma(f[SIDE + i], side, rear * f[REAR + i]));
            v[W0 + i] = fma(f[PUSH + W + i], push, fma(f[SIDE + W + i], side, rear * f[REAR + W + i]));
            v[ZERO + i] = fma(push, push, fma(side, side, rear * f[REAR + FREE_OF_BOTH + i]));
        }
    }

    /** The discriminant over w = z + h u is D0 + 2 h D0H + h² D0HH + 2 (D1 + h D1H) z + D2 z². */
    private static void fillMinors(double[] v) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[D2 + i] = fma(v[UW + i], v[UW + i], -(v[UU + i] * v[WW + i]));
            v[D1 + i] = fma(v[U0 + i], v[UW + i], -(v[UU + i] * v[W0 + i]));
            v[D1H + i] = fma(v[U0 + i], v[WW + i], -(v[UW + i] * v[W0 + i]));
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[D0 + i] = fma(v[U0 + i], v[U0 + i], -(v[UU + i] * v[ZERO + i]));
            v[D0H + i] = fma(v[U0 + i], v[W0 + i], -(v[UW + i] * v[ZERO + i]));
            v[D0HH + i] = fma(v[W0 + i], v[W0 + i], -(v[WW + i] * v[ZERO + i]));
        }
    }

    /** 2 ds over the coefficient of u² for both directions, and its inverse for ds = 0, with one division. */
    private static void fillScales(double[] g, double[] v, double[] far, double[] near) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            double ds = g[TrailedLane.DS + i];
            double middle = fma(ds * ds, v[WW + i], v[UU + i]);
            double shift = 2 * ds * v[UW + i];
            far[G1 + i] = middle + shift;
            near[G1 + i] = middle - shift;
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double all = 1 / (far[G1 + i] * near[G1 + i] * v[UU + i]);
            double scale = 2 * g[TrailedLane.DS + i] * v[UU + i] * all;
            double ahead = far[G1 + i];
            v[INV_UU + i] = ahead * near[G1 + i] * all;
            far[G1 + i] = scale * near[G1 + i];
            near[G1 + i] = scale * ahead;
        }
    }

    private static void fillSlide(double[] g, double[] v, double[] out, double d) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            double h = d * g[TrailedLane.DS + i];
            double square = out[G1 + i] * out[G1 + i];
            out[R0 + i] = square * fma(h, fma(h, v[D0HH + i], 2 * v[D0H + i]), v[D0 + i]);
            out[R1 + i] = 2 * square * fma(h, v[D1H + i], v[D1 + i]);
            out[R2 + i] = square * v[D2 + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double h = d * g[TrailedLane.DS + i];
            double k = d * out[G1 + i];
            out[G0 + i] = -k * fma(h, v[W0 + i], v[U0 + i]);
            out[G1 + i] = fma(-k, fma(h, v[WW + i], v[UW + i]), 1);
        }
    }

    private static void fillMotorScales(double[] g, double[] f, double[] far, double[] near) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            double ds = g[TrailedLane.DS + i];
            double shift = ds * f[MOTOR + W + i];
            double ahead = f[MOTOR + i] + shift;
            double back = f[MOTOR + i] - shift;
            double half = 0.5 * ds / (ahead * back);
            far[M1 + i] = half * back;
            near[M1 + i] = half * ahead;
        }
    }

    private static void fillPower(double[] f, double[] out) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            double half = out[M1 + i];
            double less = f[DRIVE_SLOPE + i] * half;
            out[MS + i] = less;
            out[M0 + i] = fma(less, less, 2 * half * (f[DRIVE + i] - f[MOTOR + FREE_OF_BOTH + i]));
            out[M1 + i] = fma(-2 * half, f[MOTOR + W + i], 1);
        }
    }

    private static void fillBrake(double[] f, double[] out, double brake) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            double half = out[M1 + i];
            double less = -f[BRAKE_SLOPE + i] * half;
            out[MS + i] = less;
            out[M0 + i] = fma(less, less, 2 * half * (brake + f[MOTOR + FREE_OF_BOTH + i]));
            out[M1 + i] = fma(2 * half, f[MOTOR + W + i], 1);
        }
    }

    /** The tip is the first root of the discriminant with ds = 0. */
    private static void fillTips(double[] f, double[] v) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            double inside = fma(v[D1 + i], v[D1 + i], -(v[D2 + i] * v[D0 + i]));
            double below = Math.max(Math.sqrt(Math.max(inside, 0)) - v[D1 + i], TINY);
            double tip = v[D0 + i] / below;
            // Without a real root the number found means nothing, unless it is above the free speed anyway.
            v[TIP_GOOD + i] = Math.max(inside, tip - f[FREE + i]);
            v[TIP_W + i] = Math.max(Math.min(tip, f[FREE + i]), 0);
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[TIP_U + i] = -v[INV_UU + i] * fma(v[UW + i], v[TIP_W + i], v[U0 + i]);
        }
    }

    /** Where the tip is above the free speed there is no peak, and any far edge helps. */
    private static void fillPeaks(double[] g, double[] f, double[] v, double[] near) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            double free = Math.max(0, 1 - (f[FREE + i] - v[TIP_W + i]) * STEEP);
            near[PEAK + i] = v[TIP_W + i] + free * FAR;
            near[HELPFUL + i] = v[TIP_W + i] + free * FAR + g[TrailedLane.DS + i] * v[TIP_U + i];
        }
    }

    private static void fillSides(double[] g, double[] f, double[] far) {
        for (int i = 0; i < Rows.BLOCK; i++) {
            double half = g[TrailedLane.DS + i] * f[WALL + W + i];
            far[S1 + i] = f[SIGN + i] * (half + f[WALL + i]);
            far[S2 + i] = f[SIGN + i] * (half - f[WALL + i]);
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            far[S3 + i] = f[SIGN + i] * (2 * g[TrailedLane.DS + i] * f[WALL + FREE_OF_BOTH + i]);
        }
    }

    /**
     * The greatest w below {@code most} at which u = {@code start} + {@code slope} w leaves the cone of grip at an element of
     * the block worked out last; 0 if none.
     */
    double leavesGrip(int e, double start, double slope, double most) {
        double[] v = tips;
        int i = Rows.place(e);
        double a = (v[UU + i] * slope + 2 * v[UW + i]) * slope + v[WW + i];
        double b = (v[UU + i] * start + v[U0 + i]) * slope + v[UW + i] * start + v[W0 + i];
        double c = (v[UU + i] * start + 2 * v[U0 + i]) * start + v[ZERO + i];
        double inside = b * b - a * c;
        if (inside < 0) {
            return 0;
        }
        double q = -(b + Math.copySign(Math.sqrt(inside), b));
        double first = q / a;
        double second = c / q;
        double greater = Math.max(first, second);
        double lesser = Math.min(first, second);
        return greater < most ? Math.max(greater, 0) : lesser < most ? Math.max(lesser, 0) : 0;
    }

    /** How fast, in m/s², one side of the cone of grip opens with τ = √(1 − w/tip), at an element of the block worked out last. */
    double opening(int e, double tip) {
        int i = Rows.place(e);
        double fall = -2 * (tips[D1 + i] + tips[D2 + i] * tip);
        return Math.sqrt(Math.max(fall * tip, 0)) * tips[INV_UU + i] + TINY;
    }

    /** Whether a step keeps the blade on the side of the slot for which its friction was put in. */
    static boolean onSide(double[] ahead, int i, double near, double far) {
        return fma(ahead[S1 + i], far, fma(ahead[S2 + i], near, ahead[S3 + i])) >= OVER;
    }
}
