package org.lapwright.app.store;

import java.nio.file.Path;
import java.time.Instant;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.StoreException;

/**
 * Opens the garage in a file and keeps comparisons until it is killed or the storage fails.
 *
 * <p>Prints {@code try N} before it keeps comparison N and {@code kept N ID} once that is acknowledged.
 */
final class KeepingChild {
    private KeepingChild() {}

    public static void main(String[] arguments) {
        try (SqliteGarage store = SqliteGarage.open(Path.of(arguments[0]))) {
            for (int number = Integer.parseInt(arguments[1]); ; number++) {
                System.out.println("try " + number);
                SavedComparison saved = keep(store, number);
                System.out.println("kept " + number + " " + saved.id());
            }
        } catch (StoreException e) {
            System.out.println("failed " + e.getMessage());
        }
    }

    /** Comparison N: its content, key and time all follow from N. */
    static SavedComparison keep(SqliteGarage store, int number) {
        return store.keep(Sample.numbered(number), Sample.full(), "key " + number, Instant.ofEpochSecond(number));
    }
}
