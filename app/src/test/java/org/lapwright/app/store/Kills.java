package org.lapwright.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Processes that write to a garage, each killed as "kill -9" does at some moment after it has printed some lines.
 *
 * @param folder for passing files
 * @param file the garage
 * @param main what runs in each; it is given the file and where to go on
 * @param random when each is killed
 * @param lines each prints from two to one more than so many lines before that
 */
record Kills(Path folder, Path file, Class<?> main, Random random, int lines) {
    private static final int MOST_MICROS = 4000;

    /** Looks at the garage after a kill. */
    interface Check {
        void check(Path file) throws SQLException;
    }

    /**
     * Kills so many.
     *
     * @param from where the next one goes on
     * @param note is told every line that one of them prints
     * @param check looks at the garage after each
     */
    void run(int kills, Supplier<? extends Number> from, Consumer<String> note, Check check)
            throws IOException, InterruptedException, SQLException {
        for (int kill = 0; kill < kills; kill++) {
            Path scratch = Files.createDirectories(folder.resolve("scratch " + kill));
            try (Child child = Child.start(
                    List.of(), scratch, main, file.toString(), from.get().toString())) {
                for (int left = 2 + random.nextInt(lines); left > 0; left--) {
                    note.accept(child.line());
                }
                TimeUnit.MICROSECONDS.sleep(random.nextInt(MOST_MICROS));
                child.kill();
                child.rest().forEach(note);
            }
            check.check(file);
        }
    }
}
