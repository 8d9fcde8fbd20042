package org.lapwright.core.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.NumberRow;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

/** One car with its unknowns: its set-ups and best laps at any point z of them. Not safe for use by several threads. */
final class CarUnknowns {
    private final List<Unknown> unknowns;
    private final Track track;
    private final Map<Lane, LapSolver> solvers = new LinkedHashMap<>();

    CarUnknowns(SetUp car, Track track) {
        this.track = track;
        unknowns = Unknown.of(car, track.surface().magnetic());
    }

    List<Unknown> all() {
        return unknowns;
    }

    int size() {
        return unknowns.size();
    }

    /** The values at a point. */
    double[] values(double[] z) {
        double[] values = new double[unknowns.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = unknowns.get(i).belief().at(z[i]);
        }
        return values;
    }

    /**
     * A set-up of the car at a point.
     *
     * @throws IllegalArgumentException if no such car can be
     */
    SetUp setUp(NumberRow numbers, double[] z) {
        List<Reading> row = new ArrayList<>(numbers.all().size());
        for (NamedReading number : numbers.all()) {
            row.add(number.reading());
        }
        double[] values = values(z);
        for (int i = 0; i < values.length; i++) {
            Unknown unknown = unknowns.get(i);
            for (int k = 0; k < row.size(); k++) {
                if (numbers.all().get(k).path().equals(unknown.path())) {
                    double there = numbers.all().get(k).reading().value();
                    row.set(k, Reading.exact(unknown.carriedTo(there, values[i])));
                }
            }
        }
        return numbers.withAll(row);
    }

    /**
     * Best laps at many points: the mean over lanes.
     *
     * @return by point, s; not finite where there is none
     */
    double[] laps(SetUp setUp, List<Lane> lanes, double[][] points) {
        NumberRow numbers = new NumberRow(setUp);
        List<ResolvedCar> cars = new ArrayList<>();
        int[] place = new int[points.length];
        for (int i = 0; i < points.length; i++) {
            place[i] = -1;
            try {
                cars.add(ResolvedCar.of(setUp(numbers, points[i]), track.surface()));
                place[i] = cars.size() - 1;
            } catch (IllegalArgumentException senseless) {
                // A number that no car can have has no lap.
                continue;
            }
        }
        double[] sum = new double[points.length];
        double[] lapS = new double[cars.size()];
        for (Lane lane : lanes) {
            solvers.computeIfAbsent(lane, each -> new LapSolver(track.cells(each)))
                    .lapTimes(cars, 0, lapS.length, lapS);
            for (int i = 0; i < sum.length; i++) {
                sum[i] += place[i] < 0 ? Double.NaN : lapS[place[i]] / lanes.size();
            }
        }
        return sum;
    }

    /** Logarithms of the same. */
    double[] lnLaps(SetUp setUp, List<Lane> lanes, double[][] points) {
        return Arrays.stream(laps(setUp, lanes, points)).map(Math::log).toArray();
    }
}
