package org.lapwright.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.BallastChange;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.ChassisChange;
import org.lapwright.core.car.change.DriveChange;
import org.lapwright.core.car.change.MagnetChange;
import org.lapwright.core.car.change.NoseChange;
import org.lapwright.core.car.change.TyreChange;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.units.Reading;

/** What could be done to a car with what is usually at hand, and with the parts on the shelf. */
public final class Candidates {
    private static final double[] MASSES_G = {1, 2, 3, 5, 7.5, 10};
    private static final double[] SIDEWAYS_MM = {-14, -7, 0, 7, 14};
    private static final double PLACES_EVERY_MM = 2;
    private static final double BEHIND_MM = 8;
    private static final double LOW_MM = 3;
    private static final double[] SHIMS_MM = {0.1, 0.25, 0.5};
    private static final double[] TRUING_MM = {0.2, 0.4, 0.8};
    private static final double[] WIDER_MM = {-2, -1, 1, 2};
    private static final double[] PULLS = {0.5, 0.75, 1.25, 1.5};
    private static final int MOST_TEETH = 3;

    private final Build car;
    private final ClassLimits bounds;
    private final List<Candidate> found = new ArrayList<>();

    private Candidates(Build car, ClassLimits bounds) {
        this.car = car;
        this.bounds = bounds;
    }

    /**
     * All single changes that can be done to the car and leave it within the bounds.
     *
     * @param car as it is
     * @param shelf changes that the parts on the shelf allow
     * @param bounds rules of the class
     */
    public static List<Candidate> of(Build car, List<Change> shelf, ClassLimits bounds) {
        Candidates all = new Candidates(car, bounds);
        all.addBallast();
        all.moveBallast();
        all.shims();
        all.tyres();
        all.gears();
        all.magnet();
        all.trackWidth();
        shelf.forEach(all::add);
        return List.copyOf(all.found);
    }

    /** Keeps a change that can be made and is allowed; one that cannot is no candidate. */
    private void add(Change change) {
        Possible.of(() -> change.apply(car))
                .filter(bounds::allow)
                .ifPresent(allowed -> found.add(Candidate.of(change)));
    }

    private List<Double> places() {
        List<Double> places = new ArrayList<>();
        double nose = car.setUp().chassis().guideToRearAxleMm().value();
        for (double x = -BEHIND_MM; x <= nose; x += PLACES_EVERY_MM) {
            places.add(x);
        }
        return places;
    }

    private void addBallast() {
        for (double x : places()) {
            for (double y : SIDEWAYS_MM) {
                for (double mass : MASSES_G) {
                    add(new BallastChange.Added(
                            new Ballast("ballast", exact(mass), exact(x), exact(y), exact(LOW_MM))));
                }
            }
        }
    }

    private void moveBallast() {
        for (Ballast piece : car.looseBallast()) {
            add(new BallastChange.Removed(piece.name()));
            for (double x : places()) {
                for (double y : new double[] {piece.yMm().value(), 0}) {
                    add(new BallastChange.Moved(piece.name(), exact(x), exact(y), piece.zMm()));
                }
            }
        }
    }

    /** Shims move the front wheels: without a measured gap nobody knows to where. */
    private void shims() {
        if (car.trim().frontGapMm().isPresent()) {
            for (double shim : SHIMS_MM) {
                add(new NoseChange.ShimAdded(shim));
            }
            car.trim().shimsMm().stream().distinct().forEach(shim -> add(new NoseChange.ShimRemoved(shim)));
        }
    }

    private void tyres() {
        double diameter = car.setUp().rearTyre().diameterMm().value();
        for (double less : TRUING_MM) {
            add(new TyreChange.Trued(new Reading(diameter - less, 0.05)));
        }
    }

    private void gears() {
        Gears now = car.setUp().gears();
        for (int pinion = -MOST_TEETH; pinion <= MOST_TEETH; pinion++) {
            for (int axle = -MOST_TEETH; axle <= MOST_TEETH; axle++) {
                // Pinion or axle gear: whoever changes both changes the ratio more finely than it matters.
                if ((pinion == 0) != (axle == 0)) {
                    gears(now.pinionTeeth().value() + pinion, now.axleTeeth().value() + axle);
                }
            }
        }
    }

    private void gears(double pinion, double axle) {
        if (Gears.PINION_TEETH.min() <= pinion && Gears.AXLE_TEETH.min() <= axle) {
            add(new DriveChange.GearsFitted(exact(pinion), exact(axle)));
        }
    }

    private void magnet() {
        Optional<Magnet> fitted = car.setUp().magnet();
        if (fitted.isEmpty() || fitted.get().downforceG().value() == 0) {
            return;
        }
        add(new MagnetChange.Removed(Optional.empty()));
        Magnet magnet = fitted.get();
        for (double share : PULLS) {
            Reading pull = exact(
                    Math.min(Magnet.DOWNFORCE.max(), share * magnet.downforceG().value()));
            add(new MagnetChange.Fitted("", new Magnet(pull, magnet.xMm()), Optional.empty()));
        }
    }

    private void trackWidth() {
        SetUp now = car.setUp();
        for (double wider : WIDER_MM) {
            add(new ChassisChange.TrackWidth(
                    exact(now.chassis().rearTrackMm().value() + wider),
                    exact(now.chassis().frontTrackMm().value() + wider)));
        }
    }

    private static Reading exact(double value) {
        return Reading.exact(value);
    }
}
