package org.lapwright.core.units;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The numbers of one section of a file by their keys, in the order in which they were put in. Immutable. */
public final class Readings {
    private final Map<String, Reading> byName;
    private final Map<String, NumberKey> keys;

    private Readings(Map<String, Reading> byName, Map<String, NumberKey> keys) {
        this.byName = byName;
        this.keys = keys;
    }

    /** No numbers yet. */
    public static Readings none() {
        return new Readings(Map.of(), Map.of());
    }

    /** A copy with one number set. */
    public Readings with(String name, Reading reading) {
        Map<String, Reading> copy = new LinkedHashMap<>(byName);
        copy.put(name, reading);
        return new Readings(copy, keys);
    }

    /** A copy with one number set. */
    public Readings with(NumberKey key, Reading reading) {
        Map<String, NumberKey> known = new LinkedHashMap<>(keys);
        known.put(key.name(), key);
        return new Readings(with(key.name(), reading).byName, known);
    }

    /** A copy with one number set if it is there. */
    public Readings with(NumberKey key, Optional<Reading> reading) {
        return reading.map(present -> with(key, present)).orElse(this);
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

    /**
     * A copy with all numbers replaced.
     *
     * @param others as many as there are, in the order of the names
     * @throws IllegalArgumentException if their count is another
     */
    public Readings withAll(List<Reading> others) {
        if (others.size() != byName.size()) {
            throw new IllegalArgumentException("%d numbers are to replace %d".formatted(others.size(), byName.size()));
        }
        Map<String, Reading> copy = new LinkedHashMap<>(2 * others.size());
        int next = 0;
        for (String name : byName.keySet()) {
            copy.put(name, others.get(next++));
        }
        return new Readings(copy, keys);
    }

    /** The names in their order. */
    public Set<String> names() {
        return java.util.Collections.unmodifiableSet(byName.keySet());
    }

    /**
     * The key of a number that was put in under a key.
     *
     * @throws IllegalArgumentException if it was not
     */
    public NumberKey keyOf(String name) {
        return Optional.ofNullable(keys.get(name))
                .orElseThrow(() -> new IllegalArgumentException("the number called " + name + " came without a key"));
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
