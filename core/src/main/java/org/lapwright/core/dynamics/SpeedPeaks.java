package org.lapwright.core.dynamics;

import static org.lapwright.core.dynamics.ForceRows.BRAKE_SLOPE;
import static org.lapwright.core.dynamics.ForceRows.DRIVE;
import static org.lapwright.core.dynamics.ForceRows.DRIVE_SLOPE;
import static org.lapwright.core.dynamics.ForceRows.FREE;
import static org.lapwright.core.dynamics.ForceRows.FREE_OF_BOTH;
import static org.lapwright.core.dynamics.ForceRows.MOTOR;
import static org.lapwright.core.dynamics.ForceRows.REAR;
import static org.lapwright.core.dynamics.ForceRows.SIGN;
import static org.lapwright.core.dynamics.ForceRows.W;
import static org.lapwright.core.dynamics.ForceRows.WALL;
import static org.lapwright.core.dynamics.StepRows.HELPFUL;
import static org.lapwright.core.dynamics.StepRows.PEAK;
import static org.lapwright.core.dynamics.StepRows.TIP_GOOD;
import static org.lapwright.core.dynamics.StepRows.TIP_U;
import static org.lapwright.core.dynamics.StepRows.TIP_W;

/**
 * The greatest w at which a car can be at an element at all, whatever its acceleration: the maximum velocity curve of
 * Bobrow, Dubowsky and Gibson (1985).
 *
 * <p>For most elements it is the tip of the limit of grip, which has a closed form and is there already. Here it is tried
 * against the other limits, and where one of those cuts the tip off, the crossing is searched.
 */
final class SpeedPeaks {
    private static final double TOUCHING = -1e-9;
    private static final double CLOSE = 1e-13;
    private static final double CUT = 1e-7;
    private static final double FLAT = 1e-6;
    private static final double FIRST_GUESS = 0.9;
    private static final int MOST_SECANTS = 100;

    private final ForceRows forces;
    private final LineRows lines;
    private final StepRows steps;
    private final FeasibleRange range;
    private final double[] room;

    SpeedPeaks(ForceRows forces, LineRows lines, StepRows steps) {
        this.forces = forces;
        this.lines = lines;
        this.steps = steps;
        range = new FeasibleRange(forces, lines);
        room = new double[Rows.BLOCK];
    }

    /**
     * Tries the tips of one block, just after {@link StepRows} has worked it out.
     *
     * @return false when some element cannot be passed at any speed
     */
    boolean tryBlock(int b) {
        int start = b * Rows.BLOCK;
        int to = steps.back.count(b);
        double[] f = forces.rows.blocks[b];
        double[] v = steps.tips;
        tryMotor(f, v);
        tryLoads(forces.lane.rows.blocks[b], f, v);
        if (lines.isFilled()) {
            tryTipping(lines.rows.blocks[b], v);
        }
        for (int i = 0; i < to; i++) {
            if (room[i] < TOUCHING && !(v[TIP_W + i] >= f[FREE + i] && isFree(start + i)) && !search(start + i)) {
                return false;
            }
        }
        return true;
    }

    /** Whether an element whose tip of grip is above the free speed can be passed at the free speed. */
    private boolean isFree(int e) {
        int i = Rows.place(e);
        if (e < forces.lane.cells) {
            // The account of the lap covers cells; only what would mislead the sweeps is looked for here.
            double[] t = lines.rows.blocks[Rows.block(e)];
            double w = steps.tips[TIP_W + i];
            return !lines.isFilled()
                    || Math.min(
                                    t[LineRows.RIGHT + W + i] * w + t[LineRows.RIGHT + FREE_OF_BOTH + i],
                                    t[LineRows.LEFT + W + i] * w + t[LineRows.LEFT + FREE_OF_BOTH + i])
                            >= 0;
        }
        return range.widthAt(e, steps.tips[TIP_W + i]) >= 0;
    }

    private void tryMotor(double[] f, double[] v) {
        double brake = forces.brake;
        double[] left = room;
        for (int i = 0; i < Rows.BLOCK; i++) {
            left[i] = f[MOTOR + i] * v[TIP_U + i] + f[MOTOR + W + i] * v[TIP_W + i] + f[MOTOR + FREE_OF_BOTH + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double speed = Math.sqrt(v[TIP_W + i]);
            double driven = f[DRIVE + i] - f[DRIVE_SLOPE + i] * speed - left[i];
            double held = brake + f[BRAKE_SLOPE + i] * speed + left[i];
            left[i] = Math.min(driven, held);
        }
    }

    private void tryLoads(double[] g, double[] f, double[] v) {
        double magnet = forces.magnet;
        double least = forces.leastNose;
        double[] left = room;
        for (int i = 0; i < Rows.BLOCK; i++) {
            double rear = f[REAR + i] * v[TIP_U + i] + f[REAR + W + i] * v[TIP_W + i] + f[REAR + FREE_OF_BOTH + i];
            double all = g[TrailedLane.GRAV_Z + i] + g[TrailedLane.PRESS + i] * v[TIP_W + i];
            left[i] = Math.min(left[i], all + magnet * g[TrailedLane.PULL + i] - least - rear);
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            double wall = f[WALL + i] * v[TIP_U + i] + f[WALL + W + i] * v[TIP_W + i] + f[WALL + FREE_OF_BOTH + i];
            left[i] = Math.min(Math.min(left[i], v[TIP_GOOD + i]), f[SIGN + i] * wall);
        }
    }

    private void tryTipping(double[] t, double[] v) {
        double[] left = room;
        for (int form = LineRows.RIGHT; form <= LineRows.LEFT; form += LineRows.LEFT - LineRows.RIGHT) {
            for (int i = 0; i < Rows.BLOCK; i++) {
                double hold = t[form + i] * v[TIP_U + i] + t[form + W + i] * v[TIP_W + i] + t[form + FREE_OF_BOTH + i];
                left[i] = Math.min(left[i], hold);
            }
        }
    }

    /**
     * The last w with room. The room goes with the root of the distance to the tip of grip, so the search runs over
     * τ = √(1 − w/tip), in which it is nearly straight, by regula falsi with the Illinois weights (Dowell and Jarratt 1971).
     */
    private boolean search(int e) {
        double tip = steps.tips[TIP_W + Rows.place(e)];
        if (lines.isFilled() && cutByLine(e, tip)) {
            return true;
        }
        double good = 1;
        double atGood = range.widthAt(e, 0);
        double bad = 0;
        double atBad = range.widthAt(e, tip);
        if (atBad >= 0 || atGood < 0) {
            return atBad >= 0;
        }
        int side = 0;
        // One end of the range moves with the cone, the other hardly.
        double tau = Math.min(-atBad / steps.opening(e, tip), FIRST_GUESS);
        for (int k = 0; k < MOST_SECANTS && good - bad > CLOSE && atGood > CLOSE; k++) {
            double width = range.widthAt(e, tip * (1 - tau * tau));
            if (width >= 0) {
                good = tau;
                atGood = width;
                atBad = side > 0 ? atBad / 2 : atBad;
                side = 1;
            } else {
                bad = tau;
                atBad = width;
                atGood = side < 0 ? atGood / 2 : atGood;
                side = -1;
            }
            tau = bad + (good - bad) * atBad / (atBad - atGood);
        }
        double peak = tip * (1 - good * good);
        range.widthAt(e, peak);
        set(e, peak, (range.low + range.high) / 2);
        return true;
    }

    /**
     * Where nose or tip alone cut the tip of grip off, the peak is where their line leaves the cone, in closed form. Says
     * whether that was it.
     */
    private boolean cutByLine(int e, double tip) {
        double[] t = lines.rows.blocks[Rows.block(e)];
        int i = Rows.place(e);
        double at = steps.tips[TIP_U + i];
        int worst = -1;
        double least = 0;
        for (int form = LineRows.NOSE; form <= LineRows.LEFT; form += LineRows.RIGHT - LineRows.NOSE) {
            double left = t[form + i] * at + t[form + W + i] * tip + t[form + FREE_OF_BOTH + i];
            if (left < least) {
                least = left;
                worst = form;
            }
        }
        if (worst < 0 || Math.abs(t[worst + i]) < FLAT) {
            return false;
        }
        double slope = -t[worst + W + i] / t[worst + i];
        double start = -t[worst + FREE_OF_BOTH + i] / t[worst + i];
        double peak = steps.leavesGrip(e, start, slope, tip);
        // At the peak the range closes; where it does not, the line cuts the cone but something else the peak.
        if (!(peak > 0 && Math.abs(range.widthAt(e, peak)) < CUT)) {
            return false;
        }
        double u = start + slope * peak;
        set(e, peak, u);
        return true;
    }

    private void set(int e, double peak, double u) {
        steps.back.set(PEAK, e, peak);
        steps.back.set(HELPFUL, e, peak + forces.lane.rows.get(TrailedLane.DS, e) * u);
    }

    /**
     * The greatest w at each node: between cells of one piece the mean of their peaks, at a joint the lesser of the peaks
     * just before and just after it, and never more than the caps of tipping. Between joints this only keeps speeds
     * from alternating about the curve; at joints it is what makes coarse grids exact, because a lap's hardest place is
     * often the joint itself, where no cell has its middle.
     *
     * @param forces the car in hand
     * @param tipping greatest w at each node from {@link LineRows}
     * @param peaks rows of which {@link StepRows#PEAK} is taken
     * @param cap where the result goes
     */
    static void capNodes(ForceRows forces, double[] tipping, Rows peaks, double[] cap) {
        TrailedLane lane = forces.lane;
        int n = lane.cells;
        double fastest = forces.fastestSquared;
        double before = peaks.get(PEAK, n - 1);
        for (int b = 0; b <= Rows.block(n - 1); b++) {
            double[] v = peaks.blocks[b];
            int first = b * Rows.BLOCK;
            int to = Math.min(Rows.BLOCK, n - first);
            for (int i = 0; i < to; i++) {
                double mean = (before + v[PEAK + i]) / 2;
                mean = mean < tipping[first + i] ? mean : tipping[first + i];
                cap[first + i] = mean < fastest ? mean : fastest;
                before = v[PEAK + i];
            }
        }
        for (int j = 0; j < forces.lane.joints.length; j++) {
            int i = forces.lane.joints[j];
            double joint = Math.min(peaks.get(PEAK, n + 2 * j), peaks.get(PEAK, n + 2 * j + 1));
            cap[i] = Math.min(Math.min(joint, tipping[i]), fastest);
        }
        cap[n] = cap[0];
    }
}
