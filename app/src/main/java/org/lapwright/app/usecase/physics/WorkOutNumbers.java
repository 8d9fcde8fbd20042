package org.lapwright.app.usecase.physics;

import org.lapwright.core.car.SetUp;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.track.Track;

/** What does a set-up work out to, and how sure is that? */
public final class WorkOutNumbers {
    /** On the bench: grip as measured, no steel for the magnet, the motor at its test voltage. */
    public NumbersInWords onBench(SetUp setUp) {
        return new NumbersInWords(
                setUp,
                car -> SetUpNumbers.onBench(car),
                setUp.motor().testVoltageV().value(),
                setUp.rearTyre().grip().value());
    }

    /** On a track: its grip, its rails, its supply. */
    public NumbersInWords on(SetUp setUp, Track track) {
        double volts = track.power().supplyV();
        return new NumbersInWords(
                setUp,
                car -> SetUpNumbers.of(car, track.surface(), volts),
                volts,
                setUp.rearTyre().grip().value() * track.surface().gripFactor());
    }
}
