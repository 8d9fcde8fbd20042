package org.lapwright.app.store;

import java.nio.file.Path;
import java.time.Instant;
import org.lapwright.app.usecase.ShelfStore.NewPart;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.core.car.shelf.Part;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.car.shelf.PartKind;

/**
 * Opens the garage in a file, and adds laps to a part and puts photos on its car until it is killed or the storage fails.
 *
 * <p>Prints {@code try N} before it does N and {@code done N} once that is acknowledged.
 */
final class ShelvingChild {
    static final String CAR = "Dunlin";

    private ShelvingChild() {}

    public static void main(String[] arguments) {
        try (SqliteGarage store = SqliteGarage.open(Path.of(arguments[0]))) {
            Part braid = store.addPart(new NewPart(new PartKind("braid"), "wide", ""), "part", Instant.EPOCH);
            store.partHappened(braid.id(), new PartEvent.Fitted(CAR), "fit", Instant.EPOCH);
            for (int number = Integer.parseInt(arguments[1]); ; number++) {
                System.out.println("try " + number);
                store.partHappened(braid.id(), new PartEvent.LapsAdded(number), "laps " + number, Instant.EPOCH);
                store.keepPhoto(CAR, photo(number), Instant.EPOCH);
                System.out.println("done " + number);
            }
        } catch (StoreException e) {
            System.out.println("failed " + e.getMessage());
        }
    }

    /** Long enough for several pages of the database, and of one colour, so that half of it shows. */
    static byte[] photo(int number) {
        byte[] photo = new byte[30_000];
        java.util.Arrays.fill(photo, (byte) number);
        return photo;
    }
}
