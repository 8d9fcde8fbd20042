package org.lapwright.core.car.change;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

/**
 * What was given for a change, by key. Immutable.
 *
 * @param numbers the numbers
 * @param texts the texts
 */
public record Values(Map<String, Reading> numbers, Map<String, String> texts) {
    /** Nothing given. */
    public static final Values NONE = new Values(Map.of(), Map.of());

    /** Copies, in the order given. */
    public Values {
        numbers = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
        texts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    }

    /** A copy with one number. */
    public Values with(NumberKey key, Reading number) {
        return with(key.name(), number);
    }

    /** A copy with one number. */
    public Values with(String key, Reading number) {
        Map<String, Reading> more = new LinkedHashMap<>(numbers);
        more.put(key, number);
        return new Values(more, texts);
    }

    /** A copy with one number, if it is there. */
    public Values with(NumberKey key, Optional<Reading> number) {
        return number.map(given -> with(key, given)).orElse(this);
    }

    /** A copy with one text; an empty one is as none. */
    public Values with(String key, String text) {
        if (text.isBlank()) {
            return this;
        }
        Map<String, String> more = new LinkedHashMap<>(texts);
        more.put(key, text);
        return new Values(numbers, more);
    }

    /**
     * A number that has to be there, in its range.
     *
     * @throws IllegalArgumentException saying which range would be right
     */
    public Reading require(NumberKey key) {
        return key.check(Optional.ofNullable(numbers.get(key.name())).orElseThrow(key::missing));
    }

    /** A number in its range, if it was given. */
    public Optional<Reading> find(NumberKey key) {
        return Optional.ofNullable(numbers.get(key.name())).map(key::check);
    }

    /** A text, or an empty one. */
    public String text(String key) {
        return Optional.ofNullable(texts.get(key)).orElse("").strip();
    }

    /**
     * A text that has to be there.
     *
     * @throws IllegalArgumentException saying what is missing
     */
    public String requireText(String key, String what) {
        String text = text(key);
        if (text.isEmpty()) {
            throw new IllegalArgumentException("%s is missing; give %s".formatted(key, what));
        }
        return text;
    }
}
