package org.lapwright.app.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Empty garages for tests: made once, then copied, because making one loads Flyway. */
final class Garages {
    private static final byte[] EMPTY = make();

    private Garages() {}

    /** The file of an empty garage of the present version, in this folder. */
    static Path emptyIn(Path folder) throws IOException {
        return Files.write(folder.resolve("garage.db"), EMPTY);
    }

    private static byte[] make() {
        try {
            Path folder = Files.createTempDirectory("empty-garage");
            Path file = folder.resolve("garage.db");
            SqliteGarage.open(file).close();
            byte[] bytes = Files.readAllBytes(file);
            Files.delete(file);
            Files.delete(folder);
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
