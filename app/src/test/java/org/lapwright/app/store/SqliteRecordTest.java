package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.OwnListStore.ListKind;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** What happened stays as it happened, even for one who writes SQL by hand. */
class SqliteRecordTest {
    private static final Instant AT = Instant.parse("2026-03-01T20:15:30Z");

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void keepOne() throws IOException {
        file = Garages.emptyIn(folder);
        TimedRun run = new TimedRun(List.of(new TimedLap(1, 6.2)), List.of(new Overrule(1, LapKind.OFF, "cat")));
        Session session = new Session(List.of(new DrivenRun(Side.AFTER, run)));
        try (SqliteGarage store = SqliteGarage.open(file)) {
            store.keep(
                    new KeptComparison(
                            "Dunlin",
                            "Shed loop",
                            "red",
                            "d",
                            "",
                            "c",
                            Side.AFTER,
                            session,
                            TrialSettings.DEFAULT,
                            false),
                    Sample.full(),
                    "key",
                    AT);
            store.keepList(ListKind.PIECES, "a list", AT);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "raw_lap,        seconds",
        "raw_lap,        lap_number",
        "run,            set_up_id",
        "overrule,       kind",
        "overrule,       reason",
        "set_up,         note",
        "set_up,         parent_id",
        "comparison_run, side",
        "verdict,        decision",
        "verdict,        shown",
        "request_key,    comparison_id",
        "comparison,     stays",
        "comparison,     alpha",
        "comparison,     prior_run_share",
        "comparison,     saved_at",
        "own_list,       content",
    })
    void recordsAreNeitherAlteredNorDeleted(String table, String column) throws SQLException {
        String content = "SELECT quote(" + column + ") FROM " + table;
        List<String> before = Raw.column(file, content);
        assertThat(before).isNotEmpty();
        assertAborted("UPDATE " + table + " SET " + column + " = 1");
        assertAborted("UPDATE OR IGNORE " + table + " SET " + column + " = " + column);
        assertAborted("DELETE FROM " + table);
        assertThat(Raw.column(file, content)).isEqualTo(before);
    }

    private void assertAborted(String sql) {
        assertThatThrownBy(() -> Raw.run(file, sql))
                .as(sql)
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("never");
    }

    /** Replacing would delete without asking the triggers, were the connection not told otherwise. */
    @Test
    void theProgramsOwnConnectionsDoNotReplaceEither() throws SQLException {
        try (Connection connection = SqliteDatabase.of(file).writer();
                Statement statement = connection.createStatement()) {
            assertThatThrownBy(() -> statement.execute(
                            "INSERT OR REPLACE INTO raw_lap SELECT run_id, position, 9, 9 FROM raw_lap"))
                    .hasMessageContaining("raw laps are never deleted");
            assertThatThrownBy(() -> statement.execute("INSERT INTO raw_lap VALUES (999, 0, 1, 6.0)"))
                    .hasMessageContaining("FOREIGN KEY");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "INSERT INTO raw_lap VALUES (1, 1, 2, 0.0)",
                "INSERT INTO raw_lap VALUES (1, 1, 2, 3600.1)",
                "INSERT INTO raw_lap VALUES (1, 1, 2, 'fast')",
                "INSERT INTO raw_lap VALUES (1, 1, 0, 6.0)",
                "INSERT INTO raw_lap VALUES (1, 0, 2, 6.0)",
                "INSERT INTO comparison_run VALUES (1, 5, 'sideways', 1)",
            })
    void rowsThatCannotBeAreRefused(String sql) {
        assertThatThrownBy(() -> Raw.run(file, sql)).hasMessageContaining("constraint failed");
    }

    @Test
    void allThatWasSaidIsThere() throws SQLException {
        assertThat(Raw.column(
                        file,
                        "SELECT decision || ' ' || difference_s || ' ' || high_s || ' ' || confidence || ' '"
                                + " || steadiness || ' ' || decided_at_lap FROM verdict"))
                .containsExactly("faster -0.1 0.25 0.95 steadier 23");
        assertThat(Raw.column(file, "SELECT shown FROM verdict")).containsExactly(VerdictJson.write(Sample.full()));
        assertThat(Raw.column(file, "SELECT kind || ': ' || note FROM set_up ORDER BY id"))
                .containsExactly("first: ", "other: c");
        assertThat(Raw.column(file, "SELECT parent_id FROM set_up ORDER BY id")).containsExactly("null", "1");
        assertThat(Raw.column(file, "PRAGMA journal_mode")).containsExactly("wal");
    }
}
