package org.lapwright.core.dynamics;

import static org.lapwright.core.dynamics.StepRows.FAR_W;
import static org.lapwright.core.dynamics.StepRows.NEAR_W;

/** The sweeps of {@link SweepGroup} for one car with nose and tip reckoned in. */
final class LineSweep {
    private static final int MOST_LAPS = 400;
    private static final double SETTLED = 1e-14;

    private LineSweep() {}

    /** Sweeps one prepared car. Says whether it has settled. */
    static boolean sweep(CarSweep car) {
        return backward(car) && forward(car);
    }

    private static boolean backward(CarSweep car) {
        int nodes = car.startBackward();
        for (int lap = 0; lap < MOST_LAPS; lap++) {
            double next = car.most[nodes];
            for (int e = nodes - 1; e >= 0; e--) {
                next = Math.min(back(car, e, next), car.cap[e]);
                boolean same = Math.abs(next - car.most[e]) <= SETTLED * next;
                car.most[e] = next;
                if (same) {
                    return true;
                }
            }
            car.most[nodes] = next;
        }
        return false;
    }

    private static double back(CarSweep car, int e, double next) {
        int b = Rows.block(e);
        int i = Rows.place(e);
        double[] v = car.steps.back.blocks[b];
        double far = Math.min(next, v[StepRows.HELPFUL + i]);
        double near = StepRows.backStep(v, i, far);
        near = Math.max(Math.min(near, LineRows.back(car.lines.rows.blocks[b], i, far)), 0);
        return StepRows.onSide(car.steps.ahead.blocks[b], i, near, far) ? near : car.turnedBack(e, next);
    }

    private static boolean forward(CarSweep car) {
        double near = car.startForward();
        LapStart line = new LapStart();
        for (int lap = 0; lap < MOST_LAPS; lap++) {
            double start = near;
            for (int e = 0; e < car.cells(); e++) {
                double[] v = car.steps.ahead.blocks[Rows.block(e)];
                int i = Rows.place(e);
                double far = ahead(car, e, near);
                boolean same = Math.abs(far - v[FAR_W + i]) <= SETTLED * far;
                v[NEAR_W + i] = near;
                v[FAR_W + i] = far;
                near = far;
                if (same) {
                    return true;
                }
            }
            near = line.next(start, near, car.most[0]);
        }
        return false;
    }

    private static double ahead(CarSweep car, int e, double near) {
        int b = Rows.block(e);
        int i = Rows.place(e);
        double[] v = car.steps.ahead.blocks[b];
        double far = Math.min(StepRows.aheadStep(v, i, near), car.most[e + 1]);
        far = Math.max(Math.min(far, LineRows.ahead(car.lines.rows.blocks[b], i, near)), 0);
        return StepRows.onSide(v, i, near, far) ? far : car.turnedAhead(e, near);
    }
}
