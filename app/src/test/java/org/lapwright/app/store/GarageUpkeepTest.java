package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.usecase.StoreException;

/** Copies of a garage, putting them back, and finding damage. */
class GarageUpkeepTest {
    private static final Instant AT = Instant.parse("2026-03-01T20:15:30Z");
    private static final Instant LATER = Instant.parse("2026-03-02T20:15:30Z");

    @TempDir
    Path folder;

    private Path file;
    private GarageUpkeep upkeep;

    @BeforeEach
    void fill() {
        file = folder.resolve("garage.db");
        keep(0, 5);
        upkeep = new GarageUpkeep(file);
    }

    private void keep(int from, int to) {
        try (SqliteGarage store = SqliteGarage.open(file)) {
            for (int i = from; i < to; i++) {
                store.keep(Sample.numbered(i), Sample.full(), "key " + i, AT);
            }
        }
    }

    private int comparisons() {
        try (SqliteGarage store = SqliteGarage.open(file)) {
            return store.comparisons().size();
        }
    }

    @Test
    void aBackupHoldsWhatWasThereAndComesBack() {
        Path backup = upkeep.backUp(AT);
        assertThat(backup.getFileName()).hasToString("garage-20260301T201530.000Z.db");
        keep(5, 8);
        assertThat(comparisons()).isEqualTo(8);
        Path before = upkeep.restore(backup, LATER);
        assertThat(comparisons()).isEqualTo(5);
        // And that is undone in the same way.
        upkeep.restore(before, LATER.plusSeconds(1));
        assertThat(comparisons()).isEqualTo(8);
        assertThat(folder.resolve("restoring.db")).doesNotExist();
    }

    /** A garage that is open sees what was put back, and goes on keeping. */
    @Test
    void anOpenGarageGoesOnWithWhatWasPutBack() {
        Path backup = upkeep.backUp(AT);
        try (SqliteGarage open = SqliteGarage.open(file)) {
            open.keep(Sample.numbered(9), Sample.full(), "key 9", AT);
            assertThat(open.comparisons()).hasSize(6);
            upkeep.restore(backup, LATER);
            assertThat(open.comparisons()).hasSize(5);
            open.keep(Sample.numbered(10), Sample.full(), "key 10", AT);
            assertThat(open.comparisons()).hasSize(6);
        }
        assertThat(upkeep.check().isSound()).isTrue();
    }

    @Test
    void aBackupGoesWhereItIsWantedAndOverwritesNothing() throws IOException {
        Path mine = folder.resolve("mine.db");
        assertThat(upkeep.backUp(mine, AT)).isEqualTo(mine);
        byte[] whole = Files.readAllBytes(mine);
        assertThatThrownBy(() -> upkeep.backUp(mine, LATER))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("is there already");
        assertThat(Files.readAllBytes(mine)).isEqualTo(whole);
    }

    @Test
    void aBadBackupChangesNothing() throws IOException {
        Path torn = folder.resolve("torn.db");
        byte[] bytes = Files.readAllBytes(upkeep.backUp(AT));
        Files.write(torn, Arrays.copyOf(bytes, bytes.length / 2));
        Path text = Files.writeString(folder.resolve("text.db"), "not a garage at all, but a text");
        for (Path bad : new Path[] {torn, text, folder.resolve("nothing.db")}) {
            assertThatThrownBy(() -> upkeep.restore(bad, LATER))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("Nothing was changed");
        }
        assertThat(comparisons()).isEqualTo(5);
    }

    @Test
    void aCheckCountsAndFindsDamage() throws IOException {
        GarageUpkeep.Findings sound = upkeep.check();
        assertThat(sound.isSound()).isTrue();
        assertThat(sound.counts().get("comparisons")).isEqualTo(5);
        assertThat(sound.counts().get("laps")).isPositive();
        Path copy = upkeep.backUp(AT);
        byte[] bytes = Files.readAllBytes(copy);
        Arrays.fill(bytes, bytes.length - 8192, bytes.length - 4096, (byte) 0x5a);
        Files.write(copy, bytes);
        GarageUpkeep damaged = new GarageUpkeep(copy);
        boolean found;
        try {
            found = !damaged.check().isSound();
        } catch (StoreException told) {
            found = true;
        }
        assertThat(found).isTrue();
    }

    @Test
    void withoutAGarageItIsSaid() {
        GarageUpkeep none = new GarageUpkeep(folder.resolve("none.db"));
        assertThatThrownBy(none::check).hasMessageContaining("There is no garage in");
        assertThatThrownBy(() -> none.backUp(AT)).hasMessageContaining("There is no garage in");
    }

    /** One a day, the newest seven of them, and never one that the racer made himself. */
    @Test
    void aCopyADayIsKeptForAWeek() throws IOException {
        Path own = upkeep.backUp(AT);
        assertThat(upkeep.backUpForToday(AT)).isPresent();
        assertThat(upkeep.backUpForToday(AT.plusSeconds(3600))).isEmpty();
        for (int day = 1; day <= 9; day++) {
            assertThat(upkeep.backUpForToday(AT.plus(Duration.ofDays(day))))
                    .as("day %d", day)
                    .isPresent();
        }
        try (Stream<Path> files = Files.list(folder.resolve("backups"))) {
            assertThat(files.map(file -> file.getFileName().toString()).sorted().toList())
                    .hasSize(8)
                    .startsWith("daily-20260304T201530.000Z.db")
                    .endsWith(own.getFileName().toString());
        }
        assertThat(new GarageUpkeep(folder.resolve("none.db")).backUpForToday(AT))
                .isEmpty();
    }
}
