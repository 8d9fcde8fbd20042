package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.store.SqliteSchema.Standing;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.StoreException;

/** An upgrade keeps everything and a copy from before; one that is interrupted leaves the old or the new, never neither. */
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SqliteUpgradeTest {
    private static final Instant AT = Instant.parse("2026-03-01T20:15:30Z");
    private static final int KILLS = 8;

    @TempDir
    Path folder;

    private Path file;
    private List<SavedComparison> kept = List.of();

    @BeforeEach
    void fill() throws IOException {
        file = Garages.emptyIn(Files.createDirectories(folder.resolve("old")));
        try (SqliteGarage store = SqliteGarage.open(file)) {
            for (int i = 0; i < 20; i++) {
                store.keep(Sample.numbered(i), Sample.full(), "key " + i, AT);
            }
            kept = store.comparisons();
        }
    }

    @Test
    void anUpgradeKeepsEverythingAndACopy() throws IOException, SQLException {
        openLater(SqliteDatabase.of(file));
        assertThat(Raw.column(file, "SELECT COUNT(*) FROM filler WHERE text LIKE '%of no use'"))
                .containsExactly("40000");
        List<Path> backups = list(SqliteBackup.folderOf(file));
        assertThat(backups).hasSize(1);
        assertThat(backups.get(0).getFileName().toString())
                .matches("garage-before-version-99-\\d{8}T\\d{6}\\.\\d{3}Z\\.db");
        try (SqliteGarage copy = SqliteGarage.open(backups.get(0))) {
            assertThat(copy.comparisons()).isEqualTo(kept);
        }
        assertThatThrownBy(() -> SqliteGarage.open(file))
                .as("the old program on the new file")
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(
                        "made by a newer Lapwright, version 98; this one knows up to " + SqliteSchema.SHIPPED.newest());
        openLater(SqliteDatabase.of(file));
        assertThat(list(SqliteBackup.folderOf(file)))
                .as("nothing left to upgrade, nothing to copy")
                .isEqualTo(backups);
    }

    /** The file and its log as they stand before each statement are what a kill at that moment leaves. */
    @Test
    void everyStepOfAnUpgradeLeavesOldOrNew() throws IOException, SQLException {
        List<Path> moments = new ArrayList<>();
        UnaryOperator<Connection> watching = connection -> Injected.around(connection, (what, database) -> {
            moments.add(copyOf(file));
            return database.go();
        });
        openLater(new SqliteDatabase(file, 1000, watching));
        assertThat(moments).hasSizeGreaterThan(20);
        Set<Boolean> old = new HashSet<>();
        for (int i = 0; i < moments.size(); i++) {
            if (i == 0 || differ(moments.get(i - 1), moments.get(i))) {
                old.add(isOld(copyOf(moments.get(i))));
            }
        }
        assertThat(old).as("both were seen").containsExactlyInAnyOrder(true, false);
    }

    private static boolean differ(Path one, Path other) throws IOException {
        for (String ending : List.of("", "-wal")) {
            Path left = one.resolveSibling(one.getFileName() + ending);
            Path right = other.resolveSibling(other.getFileName() + ending);
            if (Files.exists(left) != Files.exists(right) || Files.exists(left) && Files.mismatch(left, right) >= 0) {
                return true;
            }
        }
        return false;
    }

    @Test
    void killingAnUpgradeLeavesOldOrNew() throws Exception {
        Path scratch = Files.createDirectories(folder.resolve("scratch"));
        long wholeMillis = upgradeMillis(copyOf(file), scratch);
        Random random = new Random(4);
        for (int kill = 0; kill < KILLS; kill++) {
            Path copy = copyOf(file);
            try (Child child = Child.start(List.of(), scratch, UpgradingChild.class, copy.toString())) {
                assertThat(child.line()).isEqualTo("begin");
                Thread.sleep(random.nextLong(wholeMillis));
                child.kill();
            }
            isOld(copy);
        }
    }

    /** How long an upgrade takes that is left alone, so that the kills fall within it. */
    private static long upgradeMillis(Path garage, Path scratch) throws IOException {
        try (Child child = Child.start(List.of(), scratch, UpgradingChild.class, garage.toString())) {
            assertThat(child.line()).isEqualTo("begin");
            long begin = System.nanoTime();
            assertThat(child.line()).isEqualTo("done");
            return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begin);
        }
    }

    /** Checks that the garage is whole and can go on, and says whether it is the old one. */
    private boolean isOld(Path garage) throws IOException, SQLException {
        Standing standing;
        try (Connection connection = SqliteDatabase.of(garage).inspector()) {
            standing = UpgradingChild.later().standing(connection, "");
        }
        assertThat(standing).isIn(Standing.OLDER, Standing.CURRENT);
        if (standing == Standing.OLDER) {
            assertThat(Raw.column(garage, "SELECT name FROM sqlite_master WHERE name LIKE 'filler%'"))
                    .isEmpty();
            assertThat(Raw.column(garage, "SELECT name FROM pragma_table_info('car')"))
                    .doesNotContain("colour");
            try (SqliteGarage store = SqliteGarage.open(garage)) {
                assertThat(store.comparisons()).isEqualTo(kept);
            }
        }
        openLater(SqliteDatabase.of(garage));
        assertThat(Raw.column(garage, "PRAGMA integrity_check")).containsExactly("ok");
        return standing == Standing.OLDER;
    }

    private void openLater(SqliteDatabase database) {
        try (SqliteGarage store = SqliteGarage.open(database, UpgradingChild.later())) {
            assertThat(store.comparisons()).isEqualTo(kept);
        }
    }

    /** A copy of a garage's file and log, as a kill would leave them now. */
    private Path copyOf(Path garage) {
        try {
            Path place = Files.createTempDirectory(folder, "moment");
            for (String ending : List.of("", "-wal")) {
                Path from = garage.resolveSibling(garage.getFileName() + ending);
                if (Files.exists(from)) {
                    Files.copy(from, place.resolve(from.getFileName()));
                }
            }
            return place.resolve(garage.getFileName());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }
}
