package org.lapwright.core.dynamics;

import static org.lapwright.core.dynamics.StepRows.FAR_W;
import static org.lapwright.core.dynamics.StepRows.NEAR_W;

import java.util.Arrays;

/**
 * One car on its way through the two sweeps of {@link SweepGroup}: its rows, and afterwards the account of its lap.
 *
 * <p>The sweeps are exact for a car that can stand anywhere on the lane. Limits that a car will hardly come near are left out
 * at first; {@link #account} tries the lap against all of them, so what was left out can only cost time.
 */
final class CarSweep {
    /** How near, m/s², a lap may come to tipping or to lifting its nose before those limits are reckoned with. */
    private static final double CLEAR = 0.3;

    private static final double NEARLY = 0.75;
    private static final double TOUCHING = -1e-7;

    final ForceRows forces;
    final LineRows lines;
    final StepRows steps;
    final LapAccount account;

    /** Greatest w at each node from which the rest of the lap can be driven. */
    final double[] most;

    /** Greatest w at each node, whatever comes after. */
    final double[] cap;

    private final SpeedPeaks peaks;

    CarSweep(TrailedLane lane) {
        forces = new ForceRows(lane);
        lines = new LineRows(forces);
        steps = new StepRows(forces);
        peaks = new SpeedPeaks(forces, lines, steps);
        account = new LapAccount(this);
        most = new double[lane.cells + 1];
        cap = new double[lane.cells + 1];
    }

    /**
     * Works out everything that the sweeps need.
     *
     * @param lane the lane, as this car follows it
     * @param car the car
     * @param thorough whether no limit may be left out
     * @return false when some place cannot be passed at any speed
     */
    boolean prepare(TrailedLane lane, ResolvedCar car, boolean thorough) {
        forces.take(lane, car);
        boolean withLines = thorough || mayTip(car) || mayLift();
        if (withLines) {
            lines.begin();
        } else if (lines.isFilled()) {
            lines.release();
        }
        boolean passable = true;
        for (int b = 0; b < forces.rows.blocks.length; b++) {
            forces.fill(b);
            if (withLines) {
                lines.fill(b);
            }
            steps.fill(b);
            // Goes on filling after a place that cannot be passed: the patient sweep needs the forces of all of them.
            passable = peaks.tryBlock(b) && passable;
        }
        if (withLines) {
            lines.end();
        }
        SpeedPeaks.capNodes(forces, lines.cap, steps.back, cap);
        return passable;
    }

    /** How many cells the lane has. */
    int cells() {
        return forces.lane.cells;
    }

    /** Begins the sweep backwards at the timing line. Returns the number of cells. */
    int startBackward() {
        int nodes = cells();
        Arrays.fill(most, Double.NaN);
        most[nodes] = cap[nodes];
        return nodes;
    }

    /** Begins the sweep forwards at the timing line. Returns w there. */
    double startForward() {
        for (double[] block : steps.ahead.blocks) {
            Arrays.fill(block, FAR_W, FAR_W + Rows.BLOCK, Double.NaN);
        }
        return most[0];
    }

    /** w at the far edge of the last cell of a block. */
    double lastFar(int b) {
        return steps.ahead.blocks[b][FAR_W + Math.min(Rows.BLOCK, cells() - b * Rows.BLOCK) - 1];
    }

    /** Greatest near edge with the blade on the other side of the slot than taken. */
    double turnedBack(int e, double next) {
        double far = Math.min(next, steps.back.get(StepRows.HELPFUL, e));
        double near = steps.turnedStep(e, -1, far);
        if (lines.isFilled()) {
            near = Math.min(near, LineRows.back(lines.rows.blocks[Rows.block(e)], Rows.place(e), far));
        }
        return Math.max(near, 0);
    }

    /** Greatest far edge with the blade on the other side of the slot than taken. */
    double turnedAhead(int e, double near) {
        double far = Math.min(steps.turnedStep(e, 1, near), most[e + 1]);
        if (lines.isFilled()) {
            far = Math.min(far, LineRows.ahead(lines.rows.blocks[Rows.block(e)], Rows.place(e), near));
        }
        return Math.max(far, 0);
    }

    /** Adds up the lap, and says whether it keeps every limit. */
    boolean accountFor() {
        account.fill();
        return account.room >= TOUCHING && account.clearance >= (lines.isFilled() ? TOUCHING : CLEAR);
    }

    /** Square of the speed at a node. */
    double squareAt(int node) {
        return node < cells() ? steps.ahead.get(NEAR_W, node) : steps.ahead.get(FAR_W, node - 1);
    }

    /** Takes a lap over that was found in another way, and adds it up. */
    void takeOver(double[] squares) {
        for (int i = 0; i < cells(); i++) {
            steps.ahead.set(NEAR_W, i, squares[i]);
            steps.ahead.set(FAR_W, i, squares[i + 1]);
        }
        account.fill();
    }

    private boolean mayTip(ResolvedCar car) {
        double onRear = 1 - car.body().aheadM() / car.body().lengthM();
        double carried = forces.frontShare + (1 - forces.frontShare) * onRear;
        return car.contact().grip() * forces.lane.mostGrip > NEARLY * forces.stance * carried;
    }

    private boolean mayLift() {
        double pressed = ResolvedCar.GRAVITY + forces.magnet;
        double start = Math.min(forces.mostDrive, Math.sqrt(forces.gripSquared) * forces.lane.mostGrip * pressed);
        return forces.height * start > NEARLY * (forces.restingNose() - forces.leastNose);
    }
}
