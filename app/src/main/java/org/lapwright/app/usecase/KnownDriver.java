package org.lapwright.app.usecase;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.lapwright.core.trial.DriverNoise;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.Session;

/**
 * What do the sessions kept so far say of the driver's noise? Learned when first asked for and kept until what is in the
 * garage changes. Any number of threads may ask; one learns, those who ask meanwhile wait for it.
 */
public final class KnownDriver {
    private final GarageStore store;
    private volatile Belief belief;

    /** Learns from the comparisons of {@code store}. */
    public KnownDriver(GarageStore store) {
        this.store = store;
        this.belief = new Belief();
    }

    /** What to believe beforehand; the usual belief while nothing is kept or the garage cannot be read. */
    public NoisePrior prior() {
        try {
            return belief.learned();
        } catch (StoreException unreadable) {
            return NoisePrior.DEFAULT;
        }
    }

    /** Begins to learn beside the caller, so that a question asked soon need not wait. */
    public void prepare() {
        CompletableFuture<NoisePrior> ignored = CompletableFuture.supplyAsync(this::prior);
    }

    /** What is kept has changed: the next question is answered afresh. */
    void forget() {
        belief = new Belief();
    }

    /**
     * The racer's own, newest first. Presses by hand make neighbouring laps unlike each other, so laps timed by hand
     * tell nothing of the driver.
     */
    private List<Session> sessions() {
        return store.comparisons().stream()
                .map(SavedComparison::kept)
                .filter(kept -> !kept.example() && !kept.settings().handTimed())
                .map(KeptComparison::session)
                .toList();
    }

    /** What follows from the garage as it is at the first question. */
    private final class Belief {
        private Optional<NoisePrior> prior = Optional.empty();

        synchronized NoisePrior learned() {
            if (prior.isEmpty()) {
                prior = Optional.of(DriverNoise.learn(sessions()));
            }
            return prior.get();
        }
    }
}
