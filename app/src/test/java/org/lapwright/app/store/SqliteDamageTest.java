package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.usecase.StoreException;

/** A damaged file is refused with a sentence, or read; it never hangs, and no other exception comes out. */
class SqliteDamageTest {
    private static final Instant AT = Instant.parse("2026-03-01T20:15:30Z");
    private static final int MUTATIONS = 150;

    @TempDir
    Path folder;

    private Path file;
    private byte[] sound = {};

    @BeforeEach
    void fill() throws IOException {
        file = Garages.emptyIn(folder);
        try (SqliteGarage store = SqliteGarage.open(file)) {
            for (int i = 0; i < 12; i++) {
                store.keep(Sample.numbered(i), Sample.full(), "key " + i, AT);
            }
        }
        sound = Files.readAllBytes(file);
    }

    @Test
    void mutatedFilesAreRefusedOrRead() {
        int refused = 0;
        for (int seed = 0; seed < MUTATIONS; seed++) {
            byte[] damaged = mutate(new Random(seed));
            refused += assertTimeoutPreemptively(Duration.ofSeconds(5), () -> isRefused(damaged)) ? 1 : 0;
        }
        assertThat(refused).as("of " + MUTATIONS).isGreaterThan(MUTATIONS / 3);
    }

    /** Every kind of damage that comes to mind: flipped bits, a page of zeros, a torn end, pages swapped. */
    private byte[] mutate(Random random) {
        byte[] bytes = sound.clone();
        int page = 4096 * random.nextInt(bytes.length / 4096);
        switch (random.nextInt(5)) {
            case 0 -> Arrays.fill(bytes, page, page + 4096, (byte) 0);
            case 1 -> bytes = Arrays.copyOf(bytes, 1 + random.nextInt(bytes.length - 1));
            case 2 -> System.arraycopy(sound, 4096 * random.nextInt(bytes.length / 4096), bytes, page, 4096);
            default -> {
                for (int i = random.nextInt(20); i >= 0; i--) {
                    bytes[random.nextInt(bytes.length)] ^= (byte) (1 + random.nextInt(255));
                }
            }
        }
        return bytes;
    }

    private boolean isRefused(byte[] damaged) throws IOException {
        Files.write(file, damaged);
        Files.deleteIfExists(file.resolveSibling("garage.db-wal"));
        Files.deleteIfExists(file.resolveSibling("garage.db-shm"));
        try (SqliteGarage store = SqliteGarage.open(file)) {
            store.comparisons();
            store.tracks().forEach(store::lapsOnTrack);
            store.keep(Sample.numbered(3), Sample.full(), "another", AT);
            return false;
        } catch (StoreException e) {
            assertThat(e)
                    .hasMessageContaining(file.toString())
                    .hasMessageMatching("(?s).*(Nothing was changed|not touched|not kept|not sure).*");
            return true;
        }
    }

    @Test
    void aDamagedFileIsNamedWithWhatToDo() throws IOException {
        byte[] bytes = sound.clone();
        Arrays.fill(bytes, 3 * 4096, 6 * 4096, (byte) 0x5a);
        Files.write(file, bytes);
        assertThatThrownBy(() -> SqliteGarage.open(file))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(file + " is damaged")
                .hasMessageContaining("Nothing was changed.")
                .hasMessageContaining("put the newest file from " + folder.resolve("backups") + " in its place");
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    }

    @Test
    void rowsThatMakeNoSenseAreDamageToo() throws Exception {
        Raw.run(file, "DROP TRIGGER comparison_no_update", "UPDATE comparison SET plan = 'ABXA x ten'");
        try (SqliteGarage store = SqliteGarage.open(file)) {
            assertThatThrownBy(store::comparisons)
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining(file + " is damaged ('ABXA x ten' is not a run plan");
        }
    }
}
