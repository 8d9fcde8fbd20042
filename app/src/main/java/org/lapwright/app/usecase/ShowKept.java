package org.lapwright.app.usecase;

import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** What have I kept, and can I have it back? */
public final class ShowKept {
    private final GarageStore store;
    private final KnownDriver knownDriver;
    private final Clock clock;

    /** The comparisons of {@code store}; {@code knownDriver} is told when they change. */
    public ShowKept(GarageStore store, KnownDriver knownDriver, Clock clock) {
        this.store = store;
        this.knownDriver = knownDriver;
        this.clock = clock;
    }

    /**
     * Some of those not removed, newest first.
     *
     * @param from how many of the newest to leave out
     * @param most how many at most
     */
    public List<SavedComparison> page(int from, int most) {
        return store.comparisons(from, most);
    }

    /** Names of the racer's own cars among them, the one kept last first. */
    public List<String> cars() {
        return store.carsDriven();
    }

    /** One comparison, removed or not. */
    public Optional<SavedComparison> find(long id) {
        return store.comparison(id);
    }

    /** Those removed one by one, newest first; an example garage that was taken out comes back as a whole. */
    public List<SavedComparison> removed() {
        boolean exampleIsOut = store.exampleState() == GarageStore.ExampleState.REMOVED;
        return store.archived().stream()
                .filter(saved -> !(exampleIsOut && saved.kept().example()))
                .toList();
    }

    /** Whether a comparison has been removed from the lists. */
    public boolean isRemoved(long id) {
        return store.archived().stream().anyMatch(saved -> saved.id() == id);
    }

    /** Takes a comparison out of the lists; nothing is deleted. */
    public void remove(long id) {
        store.archive(id, clock.instant());
        knownDriver.forget();
    }

    /** Brings a removed comparison back. */
    public void bringBack(long id) {
        store.restore(id);
        knownDriver.forget();
    }

    /** What there is of the example garage. */
    public GarageStore.ExampleState exampleState() {
        return store.exampleState();
    }

    /** Takes the example garage out. */
    public void removeExample() {
        store.archiveExample(clock.instant());
    }

    /** Brings the example garage back. */
    public void bringExampleBack() {
        store.restoreExample();
    }
}
