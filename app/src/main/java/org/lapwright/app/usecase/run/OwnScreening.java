package org.lapwright.app.usecase.run;

import java.time.Clock;
import java.util.Optional;
import org.lapwright.app.usecase.OwnListStore;
import org.lapwright.app.usecase.OwnListStore.ListKind;

/** Which of several tweaks matter? */
public final class OwnScreening {
    private final OwnListStore store;
    private final Clock clock;

    /** The screening that {@code store} keeps. */
    public OwnScreening(OwnListStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** The screening begun last, as it was kept; nothing before the first. */
    public Optional<String> text() {
        return store.list(ListKind.SCREENING);
    }

    /** Keeps how far it has come; when this returns it is on disk. Earlier states stay on record. */
    public void keep(String text) {
        store.keepList(ListKind.SCREENING, text, clock.instant());
    }
}
