package org.lapwright.app.usecase.physics;

import java.time.Clock;
import java.util.Optional;
import org.lapwright.app.usecase.OwnListStore;
import org.lapwright.app.usecase.OwnListStore.ListKind;

/** Which kinds of track pieces do I have? */
public final class OwnPieces {
    private final OwnListStore store;
    private final Clock clock;

    /** The lists of {@code store}. */
    public OwnPieces(OwnListStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** The owner's list as kept, or nothing while it is the usual one. */
    public Optional<String> list() {
        return store.list(ListKind.PIECES);
    }

    /** Keeps the list; when this returns it is on disk. */
    public void keep(String text) {
        store.keepList(ListKind.PIECES, text, clock.instant());
    }
}
