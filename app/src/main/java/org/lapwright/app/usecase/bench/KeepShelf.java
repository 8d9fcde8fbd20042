package org.lapwright.app.usecase.bench;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.lapwright.app.usecase.FileStore;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.ShelfStore.NewPart;
import org.lapwright.app.usecase.ShelfStore.ShelfRecord;
import org.lapwright.core.car.shelf.Part;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.car.shelf.Shelf;

/** What parts do I have, on which car is each, how worn is it, and what is due? */
public final class KeepShelf {
    private final GarageStore store;
    private final Clock clock;

    /** The shelf of {@code store}. */
    public KeepShelf(GarageStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** All parts as they stand. */
    public Shelf shelf() {
        ShelfRecord record = store.shelf();
        return Shelf.of(record.parts(), record.happened(), record.driven());
    }

    /** The owner's cars, by name. */
    public List<String> cars() {
        TreeSet<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        store.files(FileStore.Kind.CAR).stream()
                .filter(file -> !file.example())
                .map(KeptFile::name)
                .forEach(names::add);
        names.addAll(store.carsDriven());
        return List.copyOf(names);
    }

    /** Puts a new part on the shelf; when this returns it is on disk. */
    public Part add(NewPart part, String requestKey) {
        return store.addPart(part, requestKey, clock.instant());
    }

    /**
     * Says what happened to a part; when this returns it is on disk.
     *
     * @throws IllegalArgumentException if there is no such part, or it cannot happen to it, with the reason
     */
    public void happened(long part, PartEvent event, String requestKey) {
        if (event instanceof PartEvent.Fitted fitted) {
            requireOwn(fitted.car());
        }
        store.partHappened(part, event, requestKey, clock.instant());
    }

    private void requireOwn(String car) {
        Optional<String> own = cars().stream().filter(car::equalsIgnoreCase).findFirst();
        if (own.isEmpty()) {
            throw new IllegalArgumentException(
                    "you have no car called '%s' on the Bench or among the kept comparisons; measure it first, or choose one of yours"
                            .formatted(car));
        }
    }
}
