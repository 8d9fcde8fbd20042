package org.lapwright.core.dynamics;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.lapwright.core.track.LaneCells;

/**
 * The fastest lap of a car on a lane: time-optimal path parametrisation of the quasi-steady model
 * ({@code docs/model/lap-solver.md}) by a sweep backwards that finds what can still be driven and a sweep forwards that takes as
 * much as it may.
 *
 * <p>A solver keeps its own working memory for one lane. It is not safe for use by several threads; give each its own. Results
 * do not depend on what was solved before.
 */
public final class LapSolver {
    private static final double FAR_OUT = Math.toRadians(45);

    /**
     * Most grip × height / length of a car for the closed forms of {@link StepRows}. Near 1 the cone of grip loses its end in
     * the direction of driving, because driving loads the rear tyres by as much as it asks of them; then only the motor and the
     * nose limit the start.
     */
    private static final double MOST_GRIP_BY_HEIGHT = 0.9;

    private final LaneCells lane;
    private final CarSweep[] sweeps;

    /** The lane as the cars in hand follow it; the first serves all that have one length. */
    private final TrailedLane[] followed;

    /** A solver for a lane. */
    public LapSolver(LaneCells lane) {
        this.lane = lane;
        sweeps = new CarSweep[SweepGroup.SIZE];
        followed = new TrailedLane[SweepGroup.SIZE];
        for (int k = 0; k < sweeps.length; k++) {
            followed[k] = new TrailedLane(lane);
            sweeps[k] = new CarSweep(followed[k]);
        }
    }

    /** The lane. */
    public LaneCells lane() {
        return lane;
    }

    /** The fastest lap of a car, or why there is none. */
    public LapOutcome solve(ResolvedCar car) {
        CarSweep sweep = sweeps[0];
        TrailedLane trail = followed[0];
        trail.follow(car.body().lengthM());
        OptionalDouble tooTight = trail.tooTightAtM();
        if (tooTight.isPresent()) {
            return tooTight(tooTight.getAsDouble());
        }
        if (attempt(sweep, trail, car, false) || attempt(sweep, trail, car, true)) {
            return predicted(sweep);
        }
        PatientSweep patient = new PatientSweep(sweep.forces, sweep.lines);
        if (!patient.solve()) {
            return new Stuck(patient.stuckLimit, placeM(patient.stuckCell));
        }
        sweep.takeOver(patient.w);
        if (!Double.isFinite(sweep.account.lapS)) {
            return standing(sweep);
        }
        return predicted(sweep);
    }

    /**
     * Lap times of many cars. Faster than one after the other, because several take turns; each comes out as by
     * {@link #solve}.
     *
     * @param cars the cars
     * @param from first car to solve
     * @param to one after the last
     * @param lapS where the lap times go, s, at the places of their cars; infinite where there is no lap
     */
    public void lapTimes(List<ResolvedCar> cars, int from, int to, double[] lapS) {
        int next = from;
        while (to - next >= sweeps.length) {
            if (together(cars, next)) {
                for (int k = 0; k < sweeps.length; k++) {
                    lapS[next + k] = sweeps[k].accountFor() ? sweeps[k].account.lapS : Double.NaN;
                }
                for (int k = 0; k < sweeps.length; k++) {
                    if (!Double.isFinite(lapS[next + k])) {
                        lapS[next + k] = solve(cars.get(next + k)).lapS();
                    }
                }
            } else {
                for (int k = 0; k < sweeps.length; k++) {
                    lapS[next + k] = solve(cars.get(next + k)).lapS();
                }
            }
            next += sweeps.length;
        }
        for (; next < to; next++) {
            lapS[next] = solve(cars.get(next)).lapS();
        }
    }

    private boolean together(List<ResolvedCar> cars, int first) {
        for (int k = 0; k < sweeps.length; k++) {
            ResolvedCar car = cars.get(first + k);
            TrailedLane trail = car.body().lengthM() == followed[0].lengthM ? followed[0] : followed[k];
            trail.follow(car.body().lengthM());
            if (trail.tooTightAtM().isPresent() || isOpen(car, trail) || !sweeps[k].prepare(trail, car, false)) {
                return false;
            }
        }
        return SweepGroup.sweep(sweeps);
    }

    private static boolean attempt(CarSweep sweep, TrailedLane trail, ResolvedCar car, boolean thorough) {
        return sweep.prepare(trail, car, thorough)
                && !isOpen(car, trail)
                && SweepGroup.sweep(sweep)
                && sweep.accountFor()
                && Double.isFinite(sweep.account.lapS);
    }

    private static boolean isOpen(ResolvedCar car, TrailedLane trail) {
        return car.contact().grip() * trail.mostGrip * car.body().heightM()
                > MOST_GRIP_BY_HEIGHT * car.body().lengthM();
    }

    private PredictedLap predicted(CarSweep sweep) {
        int cells = lane.count();
        double[] places = new double[cells + 1];
        double[] speeds = new double[cells + 1];
        byte[] limits = new byte[cells];
        double[] cellS = new double[cells];
        sweep.account.list(cellS, limits);
        double[] times = new double[Limit.values().length];
        for (int i = 0; i < cells; i++) {
            times[limits[i]] += cellS[i];
            places[i + 1] = places[i] + lane.lengthM(i);
            speeds[i] = Math.sqrt(sweep.squareAt(i));
        }
        speeds[cells] = Math.sqrt(sweep.squareAt(cells));
        double lapS = sweep.account.lapS;
        Map<Limit, Double> shares = new EnumMap<>(Limit.class);
        for (Limit limit : Limit.values()) {
            if (times[limit.ordinal()] > 0) {
                shares.put(limit, times[limit.ordinal()] / lapS);
            }
        }
        return new PredictedLap(
                lapS,
                Math.sqrt(sweep.account.topSquared),
                Math.sqrt(sweep.account.slowestSquared),
                shares,
                new LapTrace(places, speeds, limits),
                caveats(sweep));
    }

    private List<Caveat> caveats(CarSweep sweep) {
        List<Caveat> found = new ArrayList<>();
        if (lane.closingGap().isOpen()) {
            found.add(new Caveat.OpenLayout(lane.closingGap()));
        }
        double widest = Math.acos(1 / sweep.forces.lane.mostInvCos);
        if (widest > FAR_OUT) {
            found.add(new Caveat.TailFarOut(widest));
        }
        return found;
    }

    private Stuck standing(CarSweep sweep) {
        double[] cellS = new double[lane.count()];
        byte[] limits = new byte[lane.count()];
        sweep.account.list(cellS, limits);
        int cell = 0;
        while (cell < lane.count() - 1 && Double.isFinite(cellS[cell])) {
            cell++;
        }
        return new Stuck(Limit.values()[limits[cell]], placeM(cell));
    }

    private TooTight tooTight(double atM) {
        double place = 0;
        int cell = 0;
        while (cell < lane.count() - 1 && place + lane.lengthM(cell) < atM) {
            place += lane.lengthM(cell);
            cell++;
        }
        return new TooTight(atM, 1 / Math.abs(lane.curvature(cell)));
    }

    private double placeM(int cell) {
        double place = 0;
        for (int i = 0; i < cell; i++) {
            place += lane.lengthM(i);
        }
        return place;
    }
}
