package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.usecase.DriveStore.Drive;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Passed;

/** Passes that were acknowledged before a kill -9 during a drive are there afterwards, once, and the drive goes on. */
@Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SqlitePassKillTest {
    private static final int KILLS = 50;

    @TempDir
    Path folder;

    private final TreeSet<Long> acknowledged = new TreeSet<>();
    private long lastTried;

    @Test
    void theDriveGoesOnAfterKills() throws IOException, InterruptedException, SQLException {
        Path file = Garages.emptyIn(folder);
        new Kills(folder, file, PassingChild.class, new Random(11), 40)
                .run(KILLS, () -> lastTried, this::note, this::check);
        assertThat(acknowledged).hasSizeGreaterThan(2 * KILLS);
    }

    private void note(String line) {
        String[] words = line.split(" ");
        switch (words[0]) {
            case "try" -> lastTried = Long.parseLong(words[1]);
            case "taken" -> acknowledged.add(Long.valueOf(words[1]));
            case "" -> {} // The process was gone before it printed anything.
            default -> throw new AssertionError(line);
        }
    }

    private void check(Path file) throws SQLException {
        try (SqliteGarage store = SqliteGarage.open(file)) {
            List<Long> found = store.open().stream()
                    .map(Drive::events)
                    .flatMap(List::stream)
                    .map(event -> ((Passed) event).pass().sequence())
                    .toList();
            assertThat(found).doesNotHaveDuplicates().containsAll(acknowledged);
            assertThat(found).allMatch(number -> acknowledged.contains(number) || number == lastTried);
        }
        assertThat(Raw.column(file, "PRAGMA integrity_check")).containsExactly("ok");
    }
}
