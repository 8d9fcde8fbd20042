package org.lapwright.app.usecase;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
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
    /** What is told beside a ladder is how it stood so long ago. */
    private static final Duration MONTH = Duration.ofDays(30);

    private final GarageStore store;
    private final KnownDriver knownDriver;
    private final Clock clock;
    private final Map<String, Ranked> remembered = new ConcurrentHashMap<>();
    private volatile Driven driven = new Driven(Long.MIN_VALUE, List.of());

    /** A ladder of the cars in {@code store}, for the driver that its comparisons show. */
    public ShowLadder(GarageStore store, Clock clock) {
        this(store, new KnownDriver(store), clock);
    }

    /** A ladder of the cars in {@code store}, for a driver that is known. */
    public ShowLadder(GarageStore store, KnownDriver knownDriver, Clock clock) {
        this.store = store;
        this.knownDriver = knownDriver;
        this.clock = clock;
    }

    /**
     * Where there are laps.
     *
     * @param revision of the garage before they were looked for
     * @param tracks the one driven last first
     */
    private record Driven(long revision, List<String> tracks) {}

    /**
     * A ladder as it was worked out.
     *
     * @param revision of the garage before its laps were read
     * @param then until when the earlier ladder counts
     * @param entries the fastest first
     * @param earlier the ladder as it stood then, the fastest first; empty for the example, which nobody has driven
     * @param example whether the cars are those of the example garage
     */
    private record Ranked(
            long revision, Instant then, List<LadderEntry> entries, List<LadderEntry> earlier, boolean example) {}

    /** Tracks that have laps, the one driven last first. */
    public List<String> tracks() {
        long revision = store.revision();
        if (driven.revision() != revision) {
            driven = new Driven(revision, List.copyOf(store.tracks()));
        }
        return driven.tracks();
    }

    /** The cars on a track, fastest first. */
    public List<LadderEntry> ladder(String track) {
        return ranked(track).entries();
    }

    /** The cars on a track as they stood a month ago, fastest first. */
    public List<LadderEntry> aMonthAgo(String track) {
        return ranked(track).earlier();
    }

    /** When a month ago was: a day begins anew only once. */
    public Instant then() {
        return clock.instant().minus(MONTH).truncatedTo(ChronoUnit.DAYS);
    }

    /** Whether the cars on a track are those of the example garage; they never stand beside the racer's own. */
    public boolean isExample(String track) {
        return ranked(track).example();
    }

    private Ranked ranked(String track) {
        long revision = store.revision();
        Instant then = then();
        Ranked before = remembered.get(track);
        if (before != null && before.revision() == revision && before.then().equals(then)) {
            return before;
        }
        List<CarLaps> cars = store.lapsOnTrack(track);
        boolean example = cars.stream().anyMatch(car -> store.isExample(car.car()));
        // The racer has not driven the cars of the example.
        NoisePrior prior = example ? NoisePrior.DEFAULT : knownDriver.prior();
        List<LadderEntry> earlier = example ? List.of() : Ladder.rank(store.lapsOnTrack(track, then), prior);
        Ranked now = new Ranked(revision, then, List.copyOf(Ladder.rank(cars, prior)), List.copyOf(earlier), example);
        // A name that nobody keeps laps under may be anything, and is not remembered.
        if (!cars.isEmpty()) {
            remembered.put(track, now);
        }
        return now;
    }
}
