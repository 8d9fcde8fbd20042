package org.lapwright.core.dynamics;

import static org.lapwright.core.dynamics.StepRows.FAR_W;
import static org.lapwright.core.dynamics.StepRows.NEAR_W;

/**
 * The two sweeps of time-optimal path parametrisation round a closed lap, for several cars side by side. Backwards the
 * greatest w at each node from which the rest of the lap can still be driven (the upper end of the controllable set, Pham and
 * Pham 2018); forwards the greatest w that the node before, the cell and the next controllable set allow. The lap is closed, so
 * each sweep goes on past the timing line until it comes upon its own track.
 *
 * <p>A step waits for the step before it, some 35 cycles, most of it for a root. Two cars that take turns fill the wait;
 * four were tried and gained nothing more, because their rows no longer fit the second-level cache.
 */
final class SweepGroup {
    /** How many cars take turns. */
    static final int SIZE = 2;

    private static final int MOST_LAPS = 400;

    /** Cars that take longer to settle are better swept alone. */
    private static final int FEW_LAPS = 12;

    private static final double SETTLED = 1e-14;

    private SweepGroup() {}

    /** Sweeps one prepared car. Says whether it has settled. */
    static boolean sweep(CarSweep car) {
        return car.lines.isFilled() ? LineSweep.sweep(car) : backward(car) && forward(car);
    }

    /** Sweeps {@link #SIZE} prepared cars side by side. Says whether all have settled. */
    static boolean sweep(CarSweep[] cars) {
        boolean plain = true;
        for (CarSweep car : cars) {
            plain &= !car.lines.isFilled();
        }
        if (plain) {
            return backward(cars) && forward(cars);
        }
        boolean settled = true;
        for (CarSweep car : cars) {
            settled &= sweep(car);
        }
        return settled;
    }

    private static boolean backward(CarSweep car) {
        int nodes = car.startBackward();
        for (int lap = 0; lap < MOST_LAPS; lap++) {
            for (int b = Rows.block(nodes - 1); b >= 0; b--) {
                if (backward(b, car)) {
                    return true;
                }
            }
            car.most[nodes] = car.most[0];
        }
        return false;
    }

    /** Sweeps one block; true as soon as it comes out as in the lap before. */
    private static boolean backward(int b, CarSweep car) {
        int first = b * Rows.BLOCK;
        int to = Math.min(Rows.BLOCK, car.cells() - first);
        double[] v = car.steps.back.blocks[b];
        double[] side = car.steps.ahead.blocks[b];
        double[] cap = car.cap;
        double[] most = car.most;
        double next = most[first + to];
        for (int i = to - 1; i >= 0; i--) {
            double near = back(v, side, i, next);
            near = near >= 0 ? near : car.turnedBack(first + i, next);
            next = near < cap[first + i] ? near : cap[first + i];
            if (keep(most, first + i, next)) {
                return true;
            }
        }
        return false;
    }

    private static boolean backward(CarSweep[] cars) {
        int nodes = 0;
        for (CarSweep car : cars) {
            nodes = car.startBackward();
        }
        for (int lap = 0; lap < MOST_LAPS; lap++) {
            for (int b = Rows.block(nodes - 1); b >= 0; b--) {
                if (backward(b, cars)) {
                    return true;
                }
            }
            for (CarSweep car : cars) {
                car.most[nodes] = car.most[0];
            }
        }
        return false;
    }

    private static boolean backward(int b, CarSweep[] cars) {
        int first = b * Rows.BLOCK;
        int to = Math.min(Rows.BLOCK, cars[0].cells() - first);
        double[] v0 = cars[0].steps.back.blocks[b];
        double[] v1 = cars[1].steps.back.blocks[b];
        double[] side0 = cars[0].steps.ahead.blocks[b];
        double[] side1 = cars[1].steps.ahead.blocks[b];
        double[] most0 = cars[0].most;
        double[] most1 = cars[1].most;
        double[] cap0 = cars[0].cap;
        double[] cap1 = cars[1].cap;
        double next0 = most0[first + to];
        double next1 = most1[first + to];
        for (int i = to - 1; i >= 0; i--) {
            int e = first + i;
            double near0 = back(v0, side0, i, next0);
            double near1 = back(v1, side1, i, next1);
            near0 = near0 >= 0 ? near0 : cars[0].turnedBack(e, next0);
            near1 = near1 >= 0 ? near1 : cars[1].turnedBack(e, next1);
            next0 = near0 < cap0[e] ? near0 : cap0[e];
            next1 = near1 < cap1[e] ? near1 : cap1[e];
            if (keep(most0, e, next0) & keep(most1, e, next1)) {
                return true;
            }
        }
        return false;
    }

    /** Greatest near edge; negative when the blade is on the other side of the slot than taken. */
    private static double back(double[] v, double[] side, int i, double next) {
        double helpful = v[StepRows.HELPFUL + i];
        double far = next < helpful ? next : helpful;
        double near = StepRows.backStep(v, i, far);
        near = near > 0 ? near : 0;
        return StepRows.onSide(side, i, near, far) ? near : -1;
    }

    /** Keeps a number. Says whether it was so in the lap before. */
    private static boolean keep(double[] v, int i, double number) {
        boolean same = Math.abs(number - v[i]) <= SETTLED * number;
        v[i] = number;
        return same;
    }

    private static boolean forward(CarSweep car) {
        double near = car.startForward();
        LapStart line = new LapStart();
        for (int lap = 0; lap < MOST_LAPS; lap++) {
            double start = near;
            for (int b = 0; b <= Rows.block(car.cells() - 1); b++) {
                if (forward(b, car, near)) {
                    return true;
                }
                near = car.lastFar(b);
            }
            near = line.next(start, near, car.most[0]);
        }
        return false;
    }

    /** Sweeps one block; true as soon as it comes out as in the lap before. */
    private static boolean forward(int b, CarSweep car, double start) {
        int first = b * Rows.BLOCK;
        int to = Math.min(Rows.BLOCK, car.cells() - first);
        double[] v = car.steps.ahead.blocks[b];
        double[] most = car.most;
        double near = start;
        for (int i = 0; i < to; i++) {
            double far = ahead(v, i, near, most[first + i + 1]);
            far = far >= 0 ? far : car.turnedAhead(first + i, near);
            v[NEAR_W + i] = near;
            near = far;
            if (keep(v, FAR_W + i, far)) {
                return true;
            }
        }
        return false;
    }

    /** Greatest far edge; negative when the blade is on the other side of the slot than taken. */
    private static double ahead(double[] v, int i, double near, double top) {
        double far = StepRows.aheadStep(v, i, near);
        far = far < top ? far : top;
        far = far > 0 ? far : 0;
        return StepRows.onSide(v, i, near, far) ? far : -1;
    }

    private static boolean forward(CarSweep[] cars) {
        double[] near = new double[cars.length];
        for (int k = 0; k < cars.length; k++) {
            near[k] = cars[k].startForward();
        }
        int last = Rows.block(cars[0].cells() - 1);
        for (int lap = 0; lap < FEW_LAPS; lap++) {
            for (int b = 0; b <= last; b++) {
                if (forward(b, cars, near)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean forward(int b, CarSweep[] cars, double[] start) {
        int first = b * Rows.BLOCK;
        int to = Math.min(Rows.BLOCK, cars[0].cells() - first);
        double[] v0 = cars[0].steps.ahead.blocks[b];
        double[] v1 = cars[1].steps.ahead.blocks[b];
        double[] most0 = cars[0].most;
        double[] most1 = cars[1].most;
        double near0 = start[0];
        double near1 = start[1];
        for (int i = 0; i < to; i++) {
            int e = first + i;
            double far0 = ahead(v0, i, near0, most0[e + 1]);
            double far1 = ahead(v1, i, near1, most1[e + 1]);
            far0 = far0 >= 0 ? far0 : cars[0].turnedAhead(e, near0);
            far1 = far1 >= 0 ? far1 : cars[1].turnedAhead(e, near1);
            v0[NEAR_W + i] = near0;
            v1[NEAR_W + i] = near1;
            near0 = far0;
            near1 = far1;
            if (keep(v0, FAR_W + i, far0) & keep(v1, FAR_W + i, far1)) {
                return true;
            }
        }
        start[0] = near0;
        start[1] = near1;
        return false;
    }
}
