package org.lapwright.app.usecase;

import java.time.Clock;
import java.util.Optional;
import org.lapwright.app.usecase.OwnListStore.ListKind;

/** What have I written down about all of my garage? One list, word for word: kinds of pieces, classes, labels, a screening. */
public final class OwnList {
    private final OwnListStore store;
    private final ListKind kind;
    private final Clock clock;

    /** The list of a kind in {@code store}. */
    public OwnList(OwnListStore store, ListKind kind, Clock clock) {
        this.store = store;
        this.kind = kind;
        this.clock = clock;
    }

    /** The list as it was kept last; nothing before that. */
    public Optional<String> text() {
        return store.list(kind);
    }

    /** Keeps the list; when this returns it is on disk. Earlier ones stay on record. */
    public void keep(String text) {
        store.keepList(kind, text, clock.instant());
    }
}
