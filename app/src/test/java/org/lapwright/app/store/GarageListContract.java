package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.OwnListStore;
import org.lapwright.app.usecase.OwnListStore.ListKind;

/** What every garage does with lists of the owner's. */
abstract class GarageListContract extends GarageShelfContract {
    private static final Instant MONDAY = Instant.parse("2026-03-02T20:00:00Z");

    @Test
    void theListKeptLastIsThere() {
        assertThat(store.list(ListKind.PIECES)).isEmpty();
        store.keepList(ListKind.PIECES, "first", MONDAY);
        store.keepList(ListKind.PIECES, "second \u2713", MONDAY);
        assertThat(store.list(ListKind.PIECES)).contains("second \u2713");
        store.keepList(ListKind.PIECES, "first", MONDAY);
        assertThat(store.list(ListKind.PIECES)).contains("first");
    }

    @Test
    void whatIsNoListIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store.keepList(ListKind.PIECES, "", MONDAY))
                .withMessageContaining("0 characters");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store.keepList(ListKind.PIECES, "x".repeat(OwnListStore.LONGEST_LIST + 1), MONDAY))
                .withMessageContaining("it must have 1 to 1000000");
        assertThat(store.list(ListKind.PIECES)).isEmpty();
    }
}
