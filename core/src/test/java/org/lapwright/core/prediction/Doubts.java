package org.lapwright.core.prediction;

import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.LapFiles;
import org.lapwright.core.units.Reading;

/** Reference cars with doubts put on. */
final class Doubts {
    private Doubts() {}

    /** Every number of a reference car in doubt by a share of itself; teeth are counted. */
    static SetUp everywhere(String car, double share) {
        return everywhere(LapFiles.car(car), share);
    }

    static SetUp everywhere(SetUp car, double share) {
        SetUp doubtful = car;
        for (NamedReading number : car.numbers()) {
            if (!number.path().endsWith("_teeth")) {
                double value = number.reading().value();
                doubtful = doubtful.with(number.path(), new Reading(value, share * Math.abs(value)));
            }
        }
        return doubtful;
    }

    /** One number in doubt. */
    static SetUp one(SetUp car, String path, double plusMinus) {
        double value = car.numbers().stream()
                .filter(number -> number.path().equals(path))
                .findFirst()
                .orElseThrow()
                .reading()
                .value();
        return car.with(path, new Reading(value, plusMinus));
    }
}
