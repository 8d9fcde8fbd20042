package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.usecase.SavedComparison;

/** Whatever was acknowledged before a kill -9 is there afterwards, once and whole; nothing else is there by halves. */
@Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SqliteKillTest {
    private static final int GARAGES = 2;
    private static final int KILLS_EACH = 26;

    @TempDir
    Path folder;

    /** What one garage's list of acknowledgements says, kept over all its kills. */
    private static final class History {
        private final Path file;
        private final Random random;
        private final Map<Integer, Long> acknowledged = new HashMap<>();
        private int lastTried;
        private int killedWhileKeeping;

        History(Path file, long seed) {
            this.file = file;
            this.random = new Random(seed);
        }

        /** One process: killed after some of its saves, or, one time in eight, while it starts. */
        void killOnce() throws IOException, InterruptedException, SQLException {
            Path scratch = Files.createDirectories(file.resolveSibling("scratch"));
            try (Child child =
                    Child.start(List.of(), scratch, KeepingChild.class, file.toString(), Integer.toString(lastTried))) {
                if (random.nextInt(8) == 0) {
                    Thread.sleep(100 + random.nextInt(500));
                } else {
                    for (int lines = 2 + random.nextInt(30); lines > 0; lines--) {
                        note(child.line());
                    }
                    TimeUnit.MICROSECONDS.sleep(random.nextInt(4000));
                }
                child.kill();
                List<String> rest = child.rest();
                rest.forEach(this::note);
                killedWhileKeeping += rest.isEmpty() ? 0 : 1;
            }
            tidy(scratch);
            check();
        }

        private void note(String line) {
            String[] words = line.split(" ");
            switch (words[0]) {
                case "try" -> lastTried = Integer.parseInt(words[1]);
                case "kept" -> acknowledged.put(Integer.valueOf(words[1]), Long.valueOf(words[2]));
                case "" -> {} // The process was gone before it printed anything.
                default -> throw new AssertionError(line);
            }
        }

        private void check() throws SQLException {
            try (SqliteGarage store = SqliteGarage.open(file)) {
                Map<Integer, SavedComparison> found = store.comparisons().stream()
                        .collect(
                                Collectors.toMap(saved -> (int) saved.savedAt().getEpochSecond(), Function.identity()));
                found.forEach((number, saved) -> assertThat(saved.kept()).isEqualTo(Sample.numbered(number)));
                acknowledged.forEach((number, id) -> assertThat(found.get(number))
                        .extracting(SavedComparison::id)
                        .isEqualTo(id));
                assertThat(found.keySet())
                        .as("beside the acknowledged there may be the one that was being kept")
                        .allMatch(number -> acknowledged.containsKey(number) || number == lastTried);
            }
            assertThat(Raw.column(file, "PRAGMA integrity_check")).containsExactly("ok");
            assertThat(Raw.column(file, "PRAGMA foreign_key_check")).isEmpty();
            assertThat(Raw.column(
                            file,
                            "SELECT (SELECT COUNT(*) FROM comparison) = (SELECT COUNT(*) FROM verdict)"
                                    + " AND (SELECT COUNT(*) FROM comparison) = (SELECT COUNT(*) FROM request_key)"
                                    + " AND (SELECT COUNT(*) FROM run) = (SELECT COUNT(*) FROM comparison_run)"))
                    .as("a verdict and a key to every comparison, a comparison to every run")
                    .containsExactly("1");
        }
    }

    private static void tidy(Path scratch) throws IOException {
        try (Stream<Path> files = Files.list(scratch)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
    }

    @Test
    void whatWasAcknowledgedSurvivesKills() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(GARAGES);
        try {
            List<Callable<History>> work = Stream.iterate(1, i -> i + 1)
                    .limit(GARAGES)
                    .<Callable<History>>map(i -> () -> {
                        Path place = Files.createDirectories(folder.resolve("garage " + i));
                        History history = new History(Garages.emptyIn(place), i);
                        for (int kill = 0; kill < KILLS_EACH; kill++) {
                            history.killOnce();
                        }
                        return history;
                    })
                    .toList();
            int keeping = 0;
            for (Future<History> done : threads.invokeAll(work)) {
                keeping += done.get().killedWhileKeeping;
                assertThat(done.get().acknowledged).hasSizeGreaterThan(4 * KILLS_EACH);
            }
            assertThat(keeping).as("kills in the midst of keeping").isGreaterThan(GARAGES * KILLS_EACH / 4);
        } finally {
            threads.shutdownNow();
        }
    }
}
