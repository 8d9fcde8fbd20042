package org.lapwright.app.usecase.bench;

import java.time.Clock;
import java.util.Optional;
import org.lapwright.app.usecase.OwnListStore;
import org.lapwright.app.usecase.OwnListStore.ListKind;

/** In which classes are my cars run, and what do those allow? */
public final class OwnClasses {
    private final OwnListStore store;
    private final Clock clock;

    /** The lists of {@code store}. */
    public OwnClasses(OwnListStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** The owner's list as kept, or nothing while there is none. */
    public Optional<String> list() {
        return store.list(ListKind.CLASSES);
    }

    /** Keeps the list; when this returns it is on disk. */
    public void keep(String text) {
        store.keepList(ListKind.CLASSES, text, clock.instant());
    }
}
