package org.lapwright.core.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.BallastChange;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.ChangeKind;
import org.lapwright.core.car.change.ChassisChange;
import org.lapwright.core.car.change.DriveChange;
import org.lapwright.core.car.change.MagnetChange;
import org.lapwright.core.car.change.NoseChange;
import org.lapwright.core.car.change.TyreChange;
import org.lapwright.core.units.Reading;

/** Everything adjustable on a car, in steps as fine as they can be set on a bench (common practice, no source). */
final class Knobs {
    private static final double HEAVIEST_G = 15;
    private static final double MASS_STEP_G = 0.5;
    private static final int BEHIND_MM = 8;
    private static final double LOW_MM = 3;
    private static final int MOST_PIECES = 3;
    private static final int REACH_MM = 30;
    private static final int MOST_TEETH = 3;
    private static final int TRUINGS = 8;
    private static final double TRUING_MM = 0.1;
    private static final int WIDTHS = 4;
    private static final double WIDTH_MM = 0.5;
    private static final int PULLS = 30;
    private static final int PULL_AS_IS = 20;
    private static final double[] SHIMS_MM = {0.1, 0.25, 0.5};

    private final Build car;
    private final List<Knob> knobs = new ArrayList<>();

    private Knobs(Build car) {
        this.car = car;
    }

    /**
     * The knobs of a car.
     *
     * @param car as it is
     * @param shelf changes that the parts on the shelf allow; of each kind one is taken at most
     */
    static List<Knob> of(Build car, List<Change> shelf) {
        Knobs all = new Knobs(car);
        // What is moved or taken off is named before a new piece of the same name is there.
        all.looseBallast();
        all.newBallast();
        all.magnet();
        all.trackWidth();
        all.gears();
        all.shims();
        all.tyres();
        all.shelf(shelf);
        return List.copyOf(all.knobs);
    }

    private void looseBallast() {
        for (Ballast piece : car.looseBallast().stream().limit(MOST_PIECES).toList()) {
            int marks = 2 * REACH_MM + 1;
            knobs.add(new Knob(List.of(2, marks, marks), List.of(0, REACH_MM, REACH_MM), at -> moved(piece, at)));
        }
    }

    private Optional<Change> moved(Ballast piece, int[] at) {
        if (at[0] == 1) {
            return Optional.of(new BallastChange.Removed(piece.name()));
        }
        double x = piece.xMm().value() + at[1] - REACH_MM;
        double y = piece.yMm().value() + at[2] - REACH_MM;
        boolean onTheCar = x >= -BEHIND_MM
                && x <= car.setUp().chassis().guideToRearAxleMm().value()
                && Math.abs(y) <= halfMm();
        return onTheCar
                ? Optional.of(new BallastChange.Moved(piece.name(), exact(x), exact(y), piece.zMm()))
                : Optional.empty();
    }

    /** How far out ballast may sit: no further than the wheels. */
    private int halfMm() {
        return (int) (car.setUp().chassis().rearTrackMm().value() / 2);
    }

    private void newBallast() {
        int half = halfMm();
        int places =
                BEHIND_MM + 1 + (int) car.setUp().chassis().guideToRearAxleMm().value();
        int masses = 1 + (int) (HEAVIEST_G / MASS_STEP_G);
        knobs.add(new Knob(List.of(masses, places, 2 * half + 1), List.of(0, BEHIND_MM, half), at -> {
            if (at[0] == 0) {
                return Optional.empty();
            }
            return Optional.of(new BallastChange.Added(new Ballast(
                    "ballast",
                    exact(at[0] * MASS_STEP_G),
                    exact(at[1] - BEHIND_MM),
                    exact(at[2] - half),
                    exact(LOW_MM))));
        }));
    }

    private void magnet() {
        Optional<Magnet> fitted =
                car.setUp().magnet().filter(magnet -> magnet.downforceG().value() > 0);
        fitted.ifPresent(magnet -> knobs.add(Knob.one(
                PULLS + 1,
                PULL_AS_IS,
                at -> Optional.of(
                        at == 0
                                ? new MagnetChange.Removed(Optional.empty())
                                : new MagnetChange.Fitted(
                                        "",
                                        new Magnet(
                                                exact(rounded(
                                                        magnet.downforceG().value() * at / PULL_AS_IS)),
                                                magnet.xMm()),
                                        Optional.empty())))));
    }

    private void trackWidth() {
        SetUp now = car.setUp();
        knobs.add(Knob.one(2 * WIDTHS + 1, WIDTHS, at -> {
            double wider = (at - WIDTHS) * WIDTH_MM;
            return Optional.of(new ChassisChange.TrackWidth(
                    exact(now.chassis().rearTrackMm().value() + wider),
                    exact(now.chassis().frontTrackMm().value() + wider)));
        }));
    }

    private void gears() {
        double pinion = car.setUp().gears().pinionTeeth().value();
        double axle = car.setUp().gears().axleTeeth().value();
        int marks = 2 * MOST_TEETH + 1;
        knobs.add(new Knob(
                List.of(marks, marks),
                List.of(MOST_TEETH, MOST_TEETH),
                at -> Optional.of(new DriveChange.GearsFitted(
                        exact(Math.max(Gears.PINION_TEETH.min(), pinion + at[0] - MOST_TEETH)),
                        exact(Math.max(Gears.AXLE_TEETH.min(), axle + at[1] - MOST_TEETH))))));
    }

    /** Shims move the front wheels: without a measured gap nobody knows to where. */
    private void shims() {
        if (car.trim().frontGapMm().isPresent()) {
            List<Change> changes = new ArrayList<>();
            for (double shim : SHIMS_MM) {
                changes.add(new NoseChange.ShimAdded(shim));
            }
            car.trim().shimsMm().stream().distinct().forEach(shim -> changes.add(new NoseChange.ShimRemoved(shim)));
            knobs.add(Knob.choice(changes));
        }
    }

    private void tyres() {
        double diameter = car.setUp().rearTyre().diameterMm().value();
        knobs.add(Knob.one(TRUINGS + 1, 0, at -> {
            double trued = rounded(diameter - at * TRUING_MM);
            return trued < RearTyre.DIAMETER.min()
                    ? Optional.empty()
                    : Optional.of(new TyreChange.Trued(new Reading(trued, TRUING_MM / 2)));
        }));
    }

    private void shelf(List<Change> shelf) {
        Map<ChangeKind, List<Change>> kinds = new LinkedHashMap<>();
        shelf.forEach(change ->
                kinds.computeIfAbsent(change.kind(), kind -> new ArrayList<>()).add(change));
        kinds.values().forEach(changes -> knobs.add(Knob.choice(changes)));
    }

    private static Reading exact(double value) {
        return Reading.exact(value);
    }

    /** To hundredths: nobody sets it finer. */
    private static double rounded(double value) {
        return Math.round(100 * value) / 100.0;
    }
}
