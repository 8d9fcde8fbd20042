package org.lapwright.core.car.history;

import java.util.Optional;
import org.lapwright.core.units.Reading;

/**
 * One number or word that two set-ups have otherwise.
 *
 * @param path its place in the car file; for a part, a shim or a screw what it is called
 * @param unit its unit, empty for a pure number or a word
 * @param before in the first; empty where it has none
 * @param after in the second; empty where it has none
 */
public record Difference(String path, String unit, Optional<Side> before, Optional<Side> after) {
    /** What one set-up has there. */
    public sealed interface Side {
        /**
         * A number.
         *
         * @param reading with its doubt
         */
        record Number(Reading reading) implements Side {}

        /**
         * A word.
         *
         * @param text as written
         */
        record Word(String text) implements Side {}
    }
}
