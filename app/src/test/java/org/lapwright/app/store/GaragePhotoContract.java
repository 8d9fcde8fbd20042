package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.PhotoStore;

/** What every garage does with photos. */
abstract class GaragePhotoContract extends GarageListContract {
    private static final Instant MONDAY = Instant.parse("2026-03-02T20:00:00Z");

    @Test
    void thePhotoKeptLastIsThereUntilItIsTakenAway() {
        assertThat(store.photo("Dunlin")).isEmpty();
        assertThat(store.hasPhoto("Dunlin")).isFalse();
        store.keepPhoto("Dunlin", new byte[] {1, -1, 0}, MONDAY);
        store.keepPhoto("Knot", new byte[] {9}, MONDAY);
        store.keepPhoto("DUNLIN", new byte[] {4, 5}, MONDAY);
        assertThat(store.photo("dunlin").orElseThrow()).containsExactly(4, 5);
        assertThat(store.hasPhoto("dunlin")).isTrue();
        store.removePhoto("dunlin");
        store.removePhoto("dunlin");
        assertThat(store.photo("Dunlin")).isEmpty();
        assertThat(store.hasPhoto("Dunlin")).isFalse();
        assertThat(store.photo("Knot").orElseThrow()).containsExactly(9);
    }

    @Test
    void aPhotoThatIsTooLongOrEmptyIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store.keepPhoto("Dunlin", new byte[PhotoStore.LONGEST_PHOTO + 1], MONDAY));
        assertThatIllegalArgumentException().isThrownBy(() -> store.keepPhoto("Dunlin", new byte[0], MONDAY));
        assertThat(store.photo("Dunlin")).isEmpty();
    }
}
