package org.lapwright.app.web.shelf;

import java.util.List;
import java.util.stream.Stream;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.car.shelf.PartKind;
import org.lapwright.core.car.shelf.PartState;
import org.lapwright.core.car.shelf.Shelf;

/**
 * All parts.
 *
 * @param shell around it
 * @param lying on the shelf, not fitted
 * @param fitted to a car
 * @param away put away
 * @param kinds that can be chosen: the known ones, and those of the racer's own that are in use
 * @param form what was typed for a new part
 * @param problems with it; empty when there are none
 */
public record ShelfPage(
        Shell shell,
        List<Row> lying,
        List<Row> fitted,
        List<Row> away,
        List<String> kinds,
        Form form,
        List<String> problems) {
    /** Copies the lists. */
    public ShelfPage {
        lying = List.copyOf(lying);
        fitted = List.copyOf(fitted);
        away = List.copyOf(away);
        kinds = List.copyOf(kinds);
        problems = List.copyOf(problems);
    }

    /**
     * A new part as typed.
     *
     * @param kind what it is
     * @param name which one
     * @param note on it
     * @param text a part file
     * @param key made up once for it
     */
    public record Form(String kind, String name, String note, String text, String key) {}

    /**
     * One part.
     *
     * @param address of its page
     * @param name which one
     * @param kind what it is
     * @param where it is, and how worn
     * @param isDue whether something is to be done to it
     */
    public record Row(String address, String name, String kind, String where, boolean isDue) {
        static Row of(PartState state) {
            return new Row(
                    ShelfPage.address(state.part().id()),
                    state.part().name(),
                    state.part().kind().label(),
                    state.car().map(car -> "on " + car + ", ").orElse("") + laps(state.laps()),
                    state.isDue());
        }
    }

    /** The page of this shelf. */
    public static ShelfPage of(Shell shell, Shelf shelf, Form form, List<String> problems) {
        return new ShelfPage(
                shell,
                rows(shelf.parts().stream()
                        .filter(state -> !state.isAway() && state.car().isEmpty())),
                rows(shelf.parts().stream()
                        .filter(state -> !state.isAway() && state.car().isPresent())),
                rows(shelf.parts().stream().filter(PartState::isAway)),
                Stream.concat(
                                PartKind.KNOWN.stream(),
                                shelf.parts().stream().map(state -> state.part().kind()))
                        .map(PartKind::label)
                        .distinct()
                        .toList(),
                form,
                problems);
    }

    /** Whether there is any part. */
    public boolean isEmpty() {
        return lying.isEmpty() && fitted.isEmpty() && away.isEmpty();
    }

    /** Where a part is. */
    public static String address(long part) {
        return "/shelf/part?id=" + part;
    }

    static String laps(long laps) {
        return laps == 1 ? "1 lap" : laps + " laps";
    }

    private static List<Row> rows(Stream<PartState> states) {
        return states.map(Row::of).toList();
    }
}
