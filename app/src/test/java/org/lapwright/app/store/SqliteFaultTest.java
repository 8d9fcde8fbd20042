package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.StoreException;
import org.sqlite.SQLiteErrorCode;

/** The storage fails at every step of a save in turn: it says so, keeps what was kept, and the save can be repeated. */
class SqliteFaultTest {
    private static final Instant AT = Instant.parse("2026-03-01T20:15:30Z");
    private static final int FAR_MORE_THAN_A_SAVE_TAKES = 200;

    @TempDir
    Path folder;

    /**
     * Fails at the n-th step from when it is armed.
     *
     * <p>{@code goesOn}: everything fails from then on, rolling back and closing too, until the connection is gone.
     * {@code late}: the step is done before it is reported as failed, as when a sync fails after the write.
     */
    private static final class Failing implements UnaryOperator<Connection> {
        private final SQLiteErrorCode code;
        private final boolean goesOn;
        private final boolean late;
        private int left = Integer.MAX_VALUE;

        Failing(SQLiteErrorCode code, boolean goesOn, boolean late) {
            this.code = code;
            this.goesOn = goesOn;
            this.late = late;
        }

        void failAt(int step) {
            left = step;
        }

        @Override
        public Connection apply(Connection connection) {
            AtomicBoolean broken = new AtomicBoolean();
            return Injected.around(connection, (what, database) -> step(what, database, broken));
        }

        private Object step(String what, Injected.Step database, AtomicBoolean broken) throws SQLException {
            boolean ending = what.equals("rollback") || what.equals("close");
            boolean now = !ending && --left == 0;
            if (!now && !broken.get()) {
                return database.go();
            }
            broken.set(goesOn);
            if (late || what.equals("close")) {
                database.go();
            }
            throw new SQLException("injected", "", code.code);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "SQLITE_FULL,             false, false, The disk is full",
        "SQLITE_IOERR_FSYNC,      true,  false, The disk reported an error",
        "SQLITE_IOERR_WRITE,      false, true,  The disk reported an error",
        "SQLITE_READONLY_DBMOVED, false, false, may not be written",
        "SQLITE_CORRUPT,          true,  false, is damaged",
        "SQLITE_INTERNAL,         true,  true,  injected",
    })
    void aFailureAtEveryStepLosesNothing(SQLiteErrorCode code, boolean goesOn, boolean late, String sentence)
            throws IOException {
        Path file = Garages.emptyIn(folder);
        Failing failing = new Failing(code, goesOn, late);
        List<SavedComparison> kept = new ArrayList<>();
        try (SqliteGarage store = SqliteGarage.open(new SqliteDatabase(file, 100, failing), SqliteSchema.SHIPPED)) {
            kept.add(0, store.keep(Sample.numbered(0), Sample.full(), "key 0", AT));
            int step = 1;
            for (boolean failed = true; failed; step++) {
                assertThat(step).isLessThan(FAR_MORE_THAN_A_SAVE_TAKES);
                String key = "key " + step;
                failing.failAt(step);
                StoreException told = catchThrowableOfType(
                        StoreException.class, () -> store.keep(Sample.numbered(3), Sample.full(), key, AT));
                failing.failAt(Integer.MAX_VALUE);
                failed = told != null;
                if (told != null) {
                    String message = String.valueOf(told.getMessage());
                    assertThat(message).contains(sentence, file.toString());
                    boolean unsure = message.contains("Whether this save reached the disk is not sure");
                    assertThat(message.contains("This save was not kept")).isEqualTo(!unsure);
                    assertThat(store.comparisons().size())
                            .isBetween(kept.size(), unsure && late ? kept.size() + 1 : kept.size());
                }
                kept.add(0, store.keep(Sample.numbered(3), Sample.full(), key, AT));
                assertThat(store.comparisons()).isEqualTo(kept);
            }
            assertThat(step)
                    .as("steps of a save, and the one more that did not fail")
                    .isGreaterThan(15);
        }
        try (SqliteGarage store = SqliteGarage.open(file)) {
            assertThat(store.comparisons()).isEqualTo(kept);
        }
    }

    /** SQLite's own limit on a file's pages stands for a disk that is full. */
    @Test
    void aFullDiskIsSaidAndCanBeMended() throws IOException {
        AtomicInteger pages = new AtomicInteger(60);
        UnaryOperator<Connection> small = connection -> {
            try (Statement statement = connection.createStatement()) {
                statement.execute("PRAGMA max_page_count = " + pages.get());
                return connection;
            } catch (SQLException e) {
                throw new IllegalStateException(e);
            }
        };
        SqliteDatabase database = new SqliteDatabase(Garages.emptyIn(folder), 100, small);
        try (SqliteGarage store = SqliteGarage.open(database, SqliteSchema.SHIPPED)) {
            List<SavedComparison> kept = new ArrayList<>();
            StoreException full = catchThrowableOfType(StoreException.class, () -> {
                for (int i = 0; i < 1000; i++) {
                    kept.add(0, store.keep(Sample.numbered(i), Sample.full(), "key " + i, AT));
                }
            });
            assertThat(full)
                    .hasMessageContaining("The disk is full: " + database.file() + " cannot grow.")
                    .hasMessageContaining("This save was not kept; everything saved before it is safe.")
                    .hasMessageContaining("Free some space");
            assertThat(kept).isNotEmpty();
            assertThat(store.comparisons()).isEqualTo(kept);
            pages.set(1_000_000);
            kept.add(0, store.keep(Sample.numbered(0), Sample.full(), "after clearing up", AT));
            assertThat(store.comparisons()).isEqualTo(kept);
        }
    }

    @Test
    void aGarageLockedByAnotherProgramIsSaidSo() throws IOException, SQLException {
        SqliteDatabase database = new SqliteDatabase(Garages.emptyIn(folder), 50, connection -> connection);
        try (SqliteGarage store = SqliteGarage.open(database, SqliteSchema.SHIPPED);
                Connection other = Raw.connect(database.file());
                Statement statement = other.createStatement()) {
            store.keep(Sample.numbered(1), Sample.full(), "first", AT);
            statement.execute("BEGIN IMMEDIATE");
            assertThatThrownBy(() -> store.keep(Sample.numbered(2), Sample.full(), "second", AT))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("Another program is using " + database.file())
                    .hasMessageContaining("This save was not kept")
                    .hasMessageContaining("Close the other program");
            assertThatThrownBy(() -> SqliteGarage.open(database, SqliteSchema.SHIPPED))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("Another program is using");
            assertThat(store.comparisons()).as("reading goes on").hasSize(1);
            statement.execute("ROLLBACK");
            store.keep(Sample.numbered(2), Sample.full(), "second", AT);
            assertThat(store.comparisons()).hasSize(2);
        }
    }

    @Test
    void aFileTakenAwayUnderTheProgramIsSaidSo() throws IOException, SQLException {
        Path file = Garages.emptyIn(folder);
        try (SqliteGarage store = SqliteGarage.open(file)) {
            store.keep(Sample.numbered(1), Sample.full(), "first", AT);
            Raw.run(file, "DROP TRIGGER verdict_no_delete", "DROP TABLE verdict");
            assertThatThrownBy(() -> store.keep(Sample.numbered(2), Sample.full(), "second", AT))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("This save was not kept")
                    .hasMessageContaining(file.toString());
        }
    }
}
