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
import org.lapwright.core.trial.ladder.Ranking;
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
    private final Map<Which, Ranked> remembered = new ConcurrentHashMap<>();
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
     * Which ladder.
     *
     * @param track its name
     * @param lane of it; empty for all of them
     */
    private record Which(String track, String lane) {}

    /**
     * A ladder as it was worked out.
     *
     * @param revision of the garage before its laps were read
     * @param then until when the earlier ladder counts
     * @param ranking of now
     * @param earlier as it stood then; empty for the example, which nobody has driven
     * @param example whether the cars are those of the example garage
     */
    private record Ranked(long revision, Instant then, Ranking ranking, Ranking earlier, boolean example) {}

    /** Tracks that have laps, the one driven last first. */
    public List<String> tracks() {
        long revision = store.revision();
        if (driven.revision() != revision) {
            driven = new Driven(revision, List.copyOf(store.tracks()));
        }
        return driven.tracks();
    }

    /** The cars on a track, fastest first, each as it would be on the average of the lanes. */
    public List<LadderEntry> ladder(String track) {
        return ranking(track, "").entries();
    }

    /** The cars on one lane of a track by their laps there; an empty lane for all of them, corrected for the lanes. */
    public Ranking ranking(String track, String lane) {
        return ranked(new Which(track, lane)).ranking();
    }

    /** The same as it stood a month ago. */
    public Ranking aMonthAgo(String track, String lane) {
        return ranked(new Which(track, lane)).earlier();
    }

    /** When a month ago was: a day begins anew only once. */
    public Instant then() {
        return clock.instant().minus(MONTH).truncatedTo(ChronoUnit.DAYS);
    }

    /** Whether the cars on a track are those of the example garage; they never stand beside the racer's own. */
    public boolean isExample(String track) {
        return ranked(new Which(track, "")).example();
    }

    private Ranked ranked(Which which) {
        long revision = store.revision();
        Instant then = then();
        Ranked before = remembered.get(which);
        if (before != null && before.revision() == revision && before.then().equals(then)) {
            return before;
        }
        List<CarLaps> cars = store.lapsOnTrack(which.track());
        boolean example = cars.stream().anyMatch(car -> store.isExample(car.car()));
        // The racer has not driven the cars of the example.
        NoisePrior prior = example ? NoisePrior.DEFAULT : knownDriver.prior();
        Ranking earlier =
                example ? Ranking.NONE : Ladder.rank(on(which.lane(), store.lapsOnTrack(which.track(), then)), prior);
        Ranked now = new Ranked(revision, then, Ladder.rank(on(which.lane(), cars), prior), earlier, example);
        // A name that nobody keeps laps under may be anything, and is not remembered.
        if (!cars.isEmpty()) {
            remembered.put(which, now);
        }
        return now;
    }

    private static List<CarLaps> on(String lane, List<CarLaps> cars) {
        if (lane.isEmpty()) {
            return cars;
        }
        return cars.stream()
                .map(car -> new CarLaps(
                        car.car(),
                        car.runs().stream()
                                .filter(run -> run.lane().equals(lane))
                                .toList()))
                .toList();
    }
}
