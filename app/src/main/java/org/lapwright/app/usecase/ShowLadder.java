package org.lapwright.app.usecase;

import java.util.List;
import java.util.function.BiFunction;
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.ladder.Ladder;
import org.lapwright.core.trial.ladder.LadderEntry;
import org.lapwright.core.trial.session.NoisePrior;

/** Which car is fastest here, and how sure is the order? */
public final class ShowLadder {
    private final GarageStore store;
    private final BiFunction<List<CarLaps>, NoisePrior, List<LadderEntry>> ranking;

    /** A ladder of the cars in {@code store}, ranked by {@link Ladder}. */
    public ShowLadder(GarageStore store) {
        this(store, Ladder::rank);
    }

    /** A ladder ranked in another way. */
    public ShowLadder(GarageStore store, BiFunction<List<CarLaps>, NoisePrior, List<LadderEntry>> ranking) {
        this.store = store;
        this.ranking = ranking;
    }

    /** Tracks that have laps, the one driven last first. */
    public List<String> tracks() {
        return store.tracks();
    }

    /** The cars on a track, fastest first. */
    public List<LadderEntry> ladder(String track) {
        return ranking.apply(store.lapsOnTrack(track), NoisePrior.DEFAULT);
    }

    /** Whether a car is part of the example garage. */
    public boolean isExample(String car) {
        return store.isExample(car);
    }
}
