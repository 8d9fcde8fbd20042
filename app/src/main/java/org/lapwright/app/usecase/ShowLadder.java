package org.lapwright.app.usecase;

import java.util.List;
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.ladder.Ladder;
import org.lapwright.core.trial.ladder.LadderEntry;
import org.lapwright.core.trial.session.NoisePrior;

/** Which car is fastest here, and how sure is the order? */
public final class ShowLadder {
    private final GarageStore store;
    private final KnownDriver knownDriver;

    /** A ladder of the cars in {@code store}, for the driver that its comparisons show. */
    public ShowLadder(GarageStore store) {
        this(store, new KnownDriver(store));
    }

    /** A ladder of the cars in {@code store}, for a driver that is known. */
    public ShowLadder(GarageStore store, KnownDriver knownDriver) {
        this.store = store;
        this.knownDriver = knownDriver;
    }

    /** Tracks that have laps, the one driven last first. */
    public List<String> tracks() {
        return store.tracks();
    }

    /** The cars on a track, fastest first. */
    public List<LadderEntry> ladder(String track) {
        List<CarLaps> cars = store.lapsOnTrack(track);
        // The racer has not driven the cars of the example.
        return Ladder.rank(cars, isExample(cars) ? NoisePrior.DEFAULT : knownDriver.prior());
    }

    /** Whether the cars on a track are those of the example garage; they never stand beside the racer's own. */
    public boolean isExample(String track) {
        return isExample(store.lapsOnTrack(track));
    }

    private boolean isExample(List<CarLaps> cars) {
        return cars.stream().anyMatch(car -> store.isExample(car.car()));
    }
}
