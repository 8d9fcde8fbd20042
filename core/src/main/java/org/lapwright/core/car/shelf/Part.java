package org.lapwright.core.car.shelf;

import org.lapwright.core.units.Check;

/**
 * A part that the racer owns, or a pair that is always fitted together.
 *
 * @param id its number
 * @param kind what it is
 * @param name which one of them, 1 to {@value #LONGEST_NAME} characters
 * @param note the racer's word on it, up to {@value #LONGEST_NOTE} characters; may be empty
 */
public record Part(long id, PartKind kind, String name, String note) {
    /** Longest name. */
    public static final int LONGEST_NAME = 80;

    /** Longest note. */
    public static final int LONGEST_NOTE = 400;

    /** Checks the texts. */
    public Part {
        name = Check.text(name, LONGEST_NAME, "name of the part");
        note = note.isBlank() ? "" : Check.text(note, LONGEST_NOTE, "note");
    }
}
