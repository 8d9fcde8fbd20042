package org.lapwright.app.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.OptionalLong;
import org.lapwright.app.usecase.HistoryStore.NewStep;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.HistoryStore.Why;
import org.lapwright.app.usecase.StoreException;

/**
 * Opens the garage in a file, logs changes to one car and undoes every third of them, until it is killed or the storage fails.
 *
 * <p>Prints {@code try N} before it does step N and {@code done N PRESENT} once that is acknowledged.
 */
final class LoggingChild {
    static final String CAR = "Dunlin";

    private LoggingChild() {}

    public static void main(String[] arguments) {
        try (SqliteGarage store = SqliteGarage.open(Path.of(arguments[0]))) {
            for (int number = Integer.parseInt(arguments[1]); ; number++) {
                System.out.println("try " + number);
                System.out.println("done " + number + " " + step(store, number).present());
            }
        } catch (StoreException e) {
            System.out.println("failed " + e.getMessage());
        }
    }

    /** Step N: a change whose words, content and key follow from N, or every third time an undo. */
    static StoredHistory step(SqliteGarage store, int number) {
        Instant at = Instant.ofEpochSecond(number);
        StoredHistory before = store.history(CAR).orElse(null);
        if (before != null && number % 3 == 0 && before.presentStep().parent().isPresent()) {
            long parent = before.presentStep().parent().getAsLong();
            return store.putOn(CAR, before.present(), parent, Why.UNDO, "key " + number, at);
        }
        OptionalLong onto = before == null ? OptionalLong.empty() : OptionalLong.of(before.present());
        NewStep step = new NewStep(CAR, onto, "base", "noted", "step " + number, "{}", "file " + number, false, at);
        return store.log(step, "key " + number);
    }
}
