package org.lapwright.core.advice;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;

/** Laps of set-ups on some lanes, of one track or several, the mean of the lanes. Not safe for use by several threads. */
final class CourseLaps {
    private final List<Course> courses;
    private final List<LapSolver> solvers;

    CourseLaps(List<Course> courses) {
        this.courses = courses;
        solvers = courses.stream()
                .map(course -> new LapSolver(course.track().cells(course.lane())))
                .toList();
    }

    /** How many lanes. */
    int count() {
        return solvers.size();
    }

    /**
     * The lap of one set-up, s; infinite where it does not get round.
     *
     * @throws IllegalArgumentException if it makes no car
     */
    double meanS(SetUp car) {
        return meanS(List.of(car))[0];
    }

    /** The laps of several set-ups, as of each alone, but faster. */
    double[] meanS(List<SetUp> cars) {
        double[] mean = new double[cars.size()];
        double[] lapS = new double[cars.size()];
        for (int k = 0; k < solvers.size(); k++) {
            solvers.get(k).lapTimes(resolved(cars, courses.get(k)), 0, lapS.length, lapS);
            for (int i = 0; i < lapS.length; i++) {
                mean[i] += lapS[i] / solvers.size();
            }
        }
        return mean;
    }

    private static List<ResolvedCar> resolved(List<SetUp> cars, Course course) {
        List<ResolvedCar> resolved = new ArrayList<>(cars.size());
        cars.forEach(car -> resolved.add(ResolvedCar.of(car, course.track().surface())));
        return resolved;
    }
}
