package org.lapwright.core.car.change;

import java.util.List;
import java.util.Optional;
import org.lapwright.core.units.NumberKey;

/**
 * One thing that a kind of change asks for.
 *
 * @param key its name in files and forms
 * @param label its name for people
 * @param range for a number, its range and unit; empty for a text
 * @param choices for a text that has to be one of a few; empty for any
 * @param required whether the change makes no sense without it
 * @param offered what the car has now, or what is usual; empty when there is nothing to offer
 */
public record Ask(
        String key,
        String label,
        Optional<NumberKey> range,
        List<String> choices,
        boolean required,
        Optional<String> offered) {
    /** Copies the choices. */
    public Ask {
        choices = List.copyOf(choices);
    }

    /** A number that has to be given. */
    static Ask number(NumberKey range, String label) {
        return new Ask(range.name(), label, Optional.of(range), List.of(), true, Optional.empty());
    }

    /** A text that may be given. */
    static Ask text(String key, String label) {
        return new Ask(key, label, Optional.empty(), List.of(), false, Optional.empty());
    }

    /** One of a few. */
    static Ask choice(String key, String label, List<String> choices) {
        return new Ask(
                key, label, Optional.empty(), choices, true, choices.stream().findFirst());
    }

    /** The same, not needed. */
    Ask optional() {
        return new Ask(key, label, range, choices, false, offered);
    }

    /** The same, needed. */
    Ask needed() {
        return new Ask(key, label, range, choices, true, offered);
    }

    /** The same, with a value to begin from. */
    Ask offering(double value) {
        return offering(org.lapwright.core.units.Check.number(Math.rint(value * 1000) / 1000));
    }

    /** The same, with a text to begin from. */
    Ask offering(String text) {
        return new Ask(key, label, range, choices, required, Optional.of(text));
    }
}
