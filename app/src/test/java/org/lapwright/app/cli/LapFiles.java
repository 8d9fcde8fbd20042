package org.lapwright.app.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small files of laps for the tests. */
final class LapFiles {
    /** Twelve laps of a car that goes round in about 6.4 s. */
    static final String BEFORE = "6.41 6.38 6.44 6.40 6.37 6.42 6.39 6.43 6.36 6.40 6.41 6.38";

    /** The same car two tenths faster. */
    static final String AFTER = "6.21 6.18 6.24 6.20 6.17 6.22 6.19 6.23 6.16 6.20 6.21 6.18";

    private final Path folder;

    LapFiles(Path folder) {
        this.folder = folder;
    }

    /** Writes a file and gives its name. */
    String write(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text).toString();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    String before() {
        return write("before.txt", BEFORE);
    }

    String after() {
        return write("after.txt", AFTER);
    }

    /** A table with one run of these laps. */
    String table(String name, String at, String laps) {
        StringBuilder table = new StringBuilder("lap_s,at\n");
        for (String lap : laps.split(" ")) {
            table.append(lap).append(',').append(at).append('\n');
        }
        return write(name, table.toString());
    }

    /** Rows of a run for a table with the columns session, run, side and lap_s. */
    static String rows(String session, int run, String side, String laps) {
        StringBuilder rows = new StringBuilder();
        for (String lap : laps.split(" ")) {
            rows.append(session + "," + run + "," + side + "," + lap + "\n");
        }
        return rows.toString();
    }

    /** A table with such rows. */
    String sessions(String name, String... rows) {
        return write(name, "session,run,side,lap_s\n" + String.join("", rows));
    }
}
