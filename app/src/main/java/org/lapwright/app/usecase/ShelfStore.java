package org.lapwright.app.usecase;

import java.time.Instant;
import java.util.List;
import org.lapwright.core.car.shelf.Happened;
import org.lapwright.core.car.shelf.LapsDriven;
import org.lapwright.core.car.shelf.Part;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.car.shelf.PartKind;

/** Where parts live with what happened to them. What has returned survives a kill; nothing is ever altered or deleted. */
public interface ShelfStore {
    /**
     * Adds a part. The same request key adds one.
     *
     * @return the part under its number
     */
    Part addPart(NewPart part, String requestKey, Instant at);

    /**
     * Adds what happened to a part. The same request key adds it once.
     *
     * @throws IllegalArgumentException if there is no such part
     */
    void partHappened(long part, PartEvent event, String requestKey, Instant at);

    /** All parts and all that happened, and the laps of the cars that parts were ever fitted to. */
    ShelfRecord shelf();

    /**
     * A part to add.
     *
     * @param kind what it is
     * @param name which one
     * @param note the racer's word on it; may be empty
     */
    record NewPart(PartKind kind, String name, String note) {
        /** Checks the texts as {@link Part} does. */
        public NewPart {
            Part checked = new Part(0, kind, name, note);
            name = checked.name();
            note = checked.note();
        }
    }

    /**
     * All that is on record about parts. Cars are named as they were spelt first.
     *
     * @param parts in the order in which they were added
     * @param happened in the order in which it was said
     * @param driven laps of the owner's cars, by the runs of the comparisons that were kept, archived ones too: rubber
     *     that is worn is worn
     */
    record ShelfRecord(List<Part> parts, List<Happened> happened, List<LapsDriven> driven) {
        /** Copies the lists. */
        public ShelfRecord {
            parts = List.copyOf(parts);
            happened = List.copyOf(happened);
            driven = List.copyOf(driven);
        }
    }
}
