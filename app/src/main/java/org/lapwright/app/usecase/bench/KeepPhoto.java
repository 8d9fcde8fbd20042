package org.lapwright.app.usecase.bench;

import java.time.Clock;
import java.util.Optional;
import org.lapwright.app.usecase.PhotoStore;

/** What does my car look like? */
public final class KeepPhoto {
    private final PhotoStore store;
    private final Clock clock;

    /** The photos of {@code store}. */
    public KeepPhoto(PhotoStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** Whether there is a photo of a car. */
    public boolean isThere(String car) {
        return store.hasPhoto(car);
    }

    /** The photo of a car. */
    public Optional<byte[]> of(String car) {
        return store.photo(car);
    }

    /** Keeps the photo of a car; when this returns it is on disk. */
    public void keep(String car, byte[] jpeg) {
        store.keepPhoto(car, jpeg, clock.instant());
    }

    /** Takes it away for good. */
    public void remove(String car) {
        store.removePhoto(car);
    }
}
