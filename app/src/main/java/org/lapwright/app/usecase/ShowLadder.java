package org.lapwright.app.usecase;

import java.util.List;
import org.lapwright.core.trial.Ladder;
import org.lapwright.core.trial.LadderEntry;
import org.lapwright.core.trial.NoisePrior;

/** Which car is fastest here, and how sure is the order? */
public final class ShowLadder {
    private final GarageStore store;

    /** A ladder of the cars in {@code store}. */
    public ShowLadder(GarageStore store) {
        this.store = store;
    }

    /** Tracks that have laps, the one driven last first. */
    public List<String> tracks() {
        return store.tracks();
    }

    /** The cars on a track, fastest first. */
    public List<LadderEntry> ladder(String track) {
        return Ladder.rank(store.lapsOnTrack(track), NoisePrior.DEFAULT);
    }
}
