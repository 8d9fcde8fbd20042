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
import org.lapwright.core.car.shelf.Happened;
import org.lapwright.core.car.shelf.PartEvent;

/** What happened to a part and was acknowledged before a kill -9 is there afterwards, once; a photo is the last or the one before, whole. */
@Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SqliteShelfKillTest {
    private static final int KILLS = 15;

    @TempDir
    Path folder;

    private final TreeSet<Integer> acknowledged = new TreeSet<>();
    private int lastTried = 1;

    @Test
    void theShelfSurvivesKills() throws IOException, InterruptedException, SQLException {
        Path file = Garages.emptyIn(folder);
        new Kills(folder, file, ShelvingChild.class, new Random(13), 30)
                .run(KILLS, () -> lastTried, this::note, this::check);
        assertThat(acknowledged).hasSizeGreaterThan(2 * KILLS);
    }

    private void note(String line) {
        String[] words = line.split(" ");
        switch (words[0]) {
            case "try" -> lastTried = Integer.parseInt(words[1]);
            case "done" -> acknowledged.add(Integer.valueOf(words[1]));
            case "" -> {} // The process was gone before it printed anything.
            default -> throw new AssertionError(line);
        }
    }

    private void check(Path file) throws SQLException {
        try (SqliteGarage store = SqliteGarage.open(file)) {
            List<Integer> found = store.shelf().happened().stream()
                    .map(Happened::event)
                    .filter(PartEvent.LapsAdded.class::isInstance)
                    .map(event -> ((PartEvent.LapsAdded) event).laps())
                    .toList();
            assertThat(found).doesNotHaveDuplicates().containsAll(acknowledged);
            assertThat(found).allMatch(number -> acknowledged.contains(number) || number == lastTried);
            if (!acknowledged.isEmpty()) {
                byte[] photo = store.photo(ShelvingChild.CAR).orElseThrow();
                assertThat(photo).isIn(ShelvingChild.photo(acknowledged.last()), ShelvingChild.photo(lastTried));
            }
        }
        assertThat(Raw.column(file, "PRAGMA integrity_check")).containsExactly("ok");
        assertThat(Raw.column(file, "PRAGMA foreign_key_check")).isEmpty();
    }
}
