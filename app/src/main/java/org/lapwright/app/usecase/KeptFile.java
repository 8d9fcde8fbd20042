package org.lapwright.app.usecase;

import java.time.Instant;
import org.lapwright.core.units.Check;

/**
 * A car or track file on record.
 *
 * @param kind what it is about
 * @param name of the car or track, 1 to 80 characters
 * @param text all of it, up to {@value #LONGEST_TEXT} characters
 * @param example whether it belongs to the example garage
 * @param savedAt when
 */
public record KeptFile(FileStore.Kind kind, String name, String text, boolean example, Instant savedAt) {
    /** No file is longer: the readers refuse it. */
    public static final int LONGEST_TEXT = 2_000_000;

    /** Checks name and length. */
    public KeptFile {
        name = Check.text(name, 80, "name of the " + (kind == FileStore.Kind.CAR ? "car" : "track"));
        if (text.length() > LONGEST_TEXT) {
            throw new IllegalArgumentException(
                    "the file has %d characters; at most %d can be kept".formatted(text.length(), LONGEST_TEXT));
        }
    }

    /** The same under another name and time, as it is on record. */
    public KeptFile onRecord(String firstName, Instant at) {
        return new KeptFile(kind, firstName, text, example, at);
    }
}
