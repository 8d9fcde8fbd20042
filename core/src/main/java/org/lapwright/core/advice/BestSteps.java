package org.lapwright.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Interval;

/**
 * Several changes in an order in which a person would make them: each time the one that brings most for its minutes of work. So
 * whoever stops after any of the steps has the best of what that much work gives: the steps are the front between pace and
 * ease.
 */
public final class BestSteps {
    private final Track track;
    private final CourseLaps courseLaps;
    private final List<SetUp> cars;

    private BestSteps(List<Course> courses, List<SetUp> cars) {
        this.track = courses.get(0).track();
        this.cars = cars;
        courseLaps = new CourseLaps(courses);
    }

    /**
     * A step.
     *
     * @param change what is done
     * @param after the car after it
     * @param lapS its lap, mean of the lanes, s
     * @param gainS what this step takes off the lap, s
     * @param allGainS what all steps so far take off, on cars drawn from what is known of this one
     * @param chance that the car is faster with all steps so far
     * @param minutes of work for this step
     * @param reversible whether the car can be put back as it was before this step
     * @param margins of the car as it was at first, and after this step
     */
    public record Step(
            Change change,
            Build after,
            double lapS,
            double gainS,
            Interval allGainS,
            double chance,
            double minutes,
            boolean reversible,
            Suggestion.Margins margins) {}

    /**
     * Orders changes.
     *
     * @param car as it is
     * @param changes what is to be done to it
     * @param courses the lanes; the mean of their laps counts
     * @param bounds rules of the owner's class, kept by every step from the first that keeps them
     * @param cars cars as this one may be, the first as it is written
     * @return the steps; fewer than there are changes where no order keeps the rules
     */
    public static List<Step> of(
            Build car, List<Change> changes, List<Course> courses, ClassLimits bounds, List<SetUp> cars) {
        return new BestSteps(courses, cars).order(car, changes, bounds);
    }

    /** The same on cars drawn from what is known of the car. */
    public static List<Step> of(
            Build car, List<Change> changes, List<Course> courses, ClassLimits bounds, int draws, long seed) {
        List<SetUp> cars = DrawnCars.of(car.setUp(), courses.get(0).track().surface(), draws, seed);
        return of(car, changes, courses, bounds, cars);
    }

    private List<Step> order(Build car, List<Change> changes, ClassLimits bounds) {
        List<Change> left = new ArrayList<>(changes);
        List<Change> done = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        double[] base = laps(List.of(), car);
        Build now = car;
        double nowS = base[0];
        while (!left.isEmpty()) {
            Optional<Change> next = next(now, nowS, left, bounds);
            if (next.isEmpty()) {
                return steps;
            }
            Change change = next.get();
            left.remove(change);
            done.add(change);
            now = change.apply(now);
            double lapS = courseLaps.meanS(now.setUp());
            steps.add(step(car, change, now, nowS - lapS, base, laps(done, car)));
            nowS = lapS;
        }
        return steps;
    }

    private Optional<Change> next(Build now, double nowS, List<Change> left, ClassLimits bounds) {
        Change next = null;
        double most = Double.NEGATIVE_INFINITY;
        for (Change change : left) {
            Optional<Build> after =
                    Possible.of(() -> change.apply(now)).filter(build -> bounds.allow(build) || !bounds.allow(now));
            double gain =
                    after.isPresent() ? nowS - courseLaps.meanS(after.get().setUp()) : Double.NEGATIVE_INFINITY;
            double minutes = Effort.of(change.kind()).minutes();
            // A step that only pays with a later one goes last, the quickest of them first.
            double worth = gain > 0 ? gain / minutes : gain * minutes;
            if (worth > most) {
                most = worth;
                next = change;
            }
        }
        return Optional.ofNullable(next);
    }

    private Step step(Build car, Change change, Build now, double gainS, double[] base, double[] after) {
        double[] gainsS = new double[base.length];
        for (int i = 0; i < gainsS.length; i++) {
            gainsS[i] = base[i] - after[i];
        }
        DrawnGains gains = DrawnGains.of(gainsS);
        Effort effort = Effort.of(change.kind());
        return new Step(
                change,
                now,
                after[0],
                gainS,
                gains.interval(),
                gains.chance(),
                effort.minutes(),
                effort.reversible(),
                Suggestion.Margins.of(
                        car.setUp(), now.setUp(), track.surface(), track.power().supplyV()));
    }

    /** The laps of all cars with some changes; where those make no sense of one, with them on the car as written. */
    private double[] laps(List<Change> changes, Build car) {
        return courseLaps.meanS(cars.stream()
                .map(drawn -> Possible.of(() -> car.with(drawn).after(changes))
                        .orElseGet(() -> car.after(changes))
                        .setUp())
                .toList());
    }
}
