package org.lapwright.app.usecase;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.ladder.Ladder;
import org.lapwright.core.trial.ladder.LadderEntry;
import org.lapwright.core.trial.session.NoisePrior;

/**
 * Which car is fastest here, and how sure is the order? Ranking reads all laps of the cars on a track, so a ladder is remembered
 * until anything in the garage changes. Any number of threads may ask.
 */
public final class ShowLadder {
    private final GarageStore store;
    private final KnownDriver knownDriver;
    private final Map<String, Ranked> remembered = new ConcurrentHashMap<>();

    /** A ladder of the cars in {@code store}, for the driver that its comparisons show. */
    public ShowLadder(GarageStore store) {
        this(store, new KnownDriver(store));
    }

    /** A ladder of the cars in {@code store}, for a driver that is known. */
    public ShowLadder(GarageStore store, KnownDriver knownDriver) {
        this.store = store;
        this.knownDriver = knownDriver;
    }

    /**
     * A ladder as it was worked out.
     *
     * @param revision of the garage before its laps were read
     * @param entries the fastest first
     * @param example whether the cars are those of the example garage
     */
    private record Ranked(long revision, List<LadderEntry> entries, boolean example) {}

    /** Tracks that have laps, the one driven last first. */
    public List<String> tracks() {
        return store.tracks();
    }

    /** The cars on a track, fastest first. */
    public List<LadderEntry> ladder(String track) {
        return ranked(track).entries();
    }

    /** Whether the cars on a track are those of the example garage; they never stand beside the racer's own. */
    public boolean isExample(String track) {
        return ranked(track).example();
    }

    private Ranked ranked(String track) {
        long revision = store.revision();
        Ranked before = remembered.get(track);
        if (before != null && before.revision() == revision) {
            return before;
        }
        List<CarLaps> cars = store.lapsOnTrack(track);
        boolean example = cars.stream().anyMatch(car -> store.isExample(car.car()));
        // The racer has not driven the cars of the example.
        List<LadderEntry> entries = Ladder.rank(cars, example ? NoisePrior.DEFAULT : knownDriver.prior());
        Ranked now = new Ranked(revision, List.copyOf(entries), example);
        // A name that nobody keeps laps under may be anything, and is not remembered.
        if (!cars.isEmpty()) {
            remembered.put(track, now);
        }
        return now;
    }
}
