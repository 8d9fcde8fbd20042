package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;

/** Changes and undos that were acknowledged before a kill -9 are there afterwards, once, in their order, and the rest is whole. */
@Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SqliteStepKillTest {
    private static final int KILLS = 20;

    @TempDir
    Path folder;

    private final Map<Integer, Long> acknowledged = new TreeMap<>();
    private int lastTried;

    @Test
    void whatWasLoggedSurvivesKills() throws IOException, InterruptedException, SQLException {
        Path file = Garages.emptyIn(folder);
        new Kills(folder, file, LoggingChild.class, new Random(7), 40)
                .run(KILLS, () -> lastTried, this::note, this::check);
        assertThat(acknowledged).hasSizeGreaterThan(2 * KILLS);
    }

    private void note(String line) {
        String[] words = line.split(" ");
        switch (words[0]) {
            case "try" -> lastTried = Integer.parseInt(words[1]);
            case "done" -> acknowledged.put(Integer.valueOf(words[1]), Long.valueOf(words[2]));
            case "" -> {} // The process was gone before it printed anything.
            default -> throw new AssertionError(line);
        }
    }

    /** Every row of what was on the car follows from a number tried; all acknowledged numbers are among them, each once. */
    private void check(Path file) throws SQLException {
        List<String> rows = Raw.column(
                file, "SELECT (b.put_at / 1000000) || ' ' || b.step_id || ' ' || b.why FROM on_bench b ORDER BY b.id");
        Map<Integer, Long> found = new TreeMap<>();
        for (String row : rows) {
            String[] words = row.split(" ");
            assertThat(found.put(Integer.valueOf(words[0]), Long.valueOf(words[1])))
                    .as("step %s is there once", words[0])
                    .isNull();
        }
        assertThat(found).containsAllEntriesOf(acknowledged);
        assertThat(found.keySet()).allMatch(number -> acknowledged.containsKey(number) || number == lastTried);
        try (SqliteGarage store = SqliteGarage.open(file)) {
            store.history(LoggingChild.CAR).ifPresent(SqliteStepKillTest::checkFiles);
        }
        assertThat(Raw.column(file, "PRAGMA integrity_check")).containsExactly("ok");
        assertThat(Raw.column(file, "PRAGMA foreign_key_check")).isEmpty();
    }

    private static void checkFiles(StoredHistory history) {
        assertThat(history.steps().stream().skip(1))
                .allSatisfy(
                        step -> assertThat(step.file()).isEqualTo(step.words().replace("step", "file")));
    }
}
