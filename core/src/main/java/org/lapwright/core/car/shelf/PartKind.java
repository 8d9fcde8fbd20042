package org.lapwright.core.car.shelf;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.units.Check;

/**
 * What a part is: one of the places on a car that hold one part at a time, or a kind of the racer's own.
 *
 * @param label its name, 1 to {@value #LONGEST} characters; one of the known kinds is spelt as it is known
 */
public record PartKind(String label) {
    /** Longest name. */
    public static final int LONGEST = 40;

    /** The kinds that every car has a place for. */
    public static final List<PartKind> KNOWN = Arrays.stream(PartPlace.values())
            .map(place -> new PartKind(place.label()))
            .toList();

    /** Checks the name, and spells a known one as it is known. */
    public PartKind {
        String given = Check.text(label, LONGEST, "kind of part");
        label = known(given).map(PartPlace::label).orElse(given);
    }

    /** The place on the car that holds one part of this kind; empty for a kind of the racer's own, of which a car may hold many. */
    public Optional<PartPlace> place() {
        return known(label);
    }

    private static Optional<PartPlace> known(String given) {
        String folded = given.toLowerCase(Locale.ROOT);
        return Arrays.stream(PartPlace.values())
                .filter(place -> place.label().equals(folded))
                .findFirst();
    }
}
