package org.lapwright.core.units;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The numbers of one section of a file by their keys, in the order in which they were put in. Immutable. */
public final class Readings {
    private final Map<String, Reading> byName;

    private Readings(Map<String, Reading> byName) {
        this.byName = byName;
    }

    /** No numbers yet. */
    public static Readings none() {
        return new Readings(Map.of());
    }

    /** A copy with one number set. */
    public Readings with(String name, Reading reading) {
        Map<String, Reading> copy = new LinkedHashMap<>(byName);
        copy.put(name, reading);
        return new Readings(copy);
    }

    /** A copy with one number set. */
    public Readings with(NumberKey key, Reading reading) {
        return with(key.name(), reading);
    }

    /** A copy with one number set if it is there. */
    public Readings with(NumberKey key, Optional<Reading> reading) {
        return reading.map(present -> with(key.name(), present)).orElse(this);
    }

    /**
     * The number under a key.
     *
     * @throws IllegalArgumentException if it is missing, saying which range would be right
     */
    public Reading require(NumberKey key) {
        return find(key).orElseThrow(key::missing);
    }

    /** The number under a key, or 0 taken as exact. */
    public Reading orZero(NumberKey key) {
        return find(key).orElse(Reading.exact(0));
    }

    /** The number under a key, if it is there. */
    public Optional<Reading> find(NumberKey key) {
        return Optional.ofNullable(byName.get(key.name()));
    }

    /** The names in their order. */
    public Set<String> names() {
        return java.util.Collections.unmodifiableSet(byName.keySet());
    }

    /**
     * The number under a name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Reading get(String name) {
        return Optional.ofNullable(byName.get(name))
                .orElseThrow(() -> new IllegalArgumentException("there is no number called " + name + " here"));
    }
}
