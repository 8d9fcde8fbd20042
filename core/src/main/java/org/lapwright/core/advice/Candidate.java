package org.lapwright.core.advice;

import java.util.List;
import java.util.stream.Collectors;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;

/**
 * Something worth trying: one change, or two that go together.
 *
 * @param changes in the order in which they are made, one or two
 * @param effortMin bench work, minutes
 * @param reversible whether the car can be put back as it was
 */
public record Candidate(List<Change> changes, double effortMin, boolean reversible) {
    private static final int MOST = 2;

    /** Checks that there is something to do. */
    public Candidate {
        changes = List.copyOf(changes);
        if (changes.isEmpty() || changes.size() > MOST) {
            throw new IllegalArgumentException(
                    "a candidate has %d changes; it has one or two".formatted(changes.size()));
        }
        if (!(effortMin > 0)) {
            throw new IllegalArgumentException("effort is %s minutes; it must be above 0".formatted(effortMin));
        }
    }

    /** One change with its usual effort. */
    static Candidate of(Change change) {
        Effort effort = Effort.of(change.kind());
        return new Candidate(List.of(change), effort.minutes(), effort.reversible());
    }

    /** This and another one together. */
    Candidate and(Candidate other) {
        return new Candidate(
                List.of(changes.get(0), other.changes.get(0)),
                effortMin + other.effortMin,
                reversible && other.reversible);
    }

    /**
     * The car after it.
     *
     * @throws IllegalArgumentException if it cannot be done to this car
     */
    public Build apply(Build before) {
        return before.after(changes);
    }

    /** What is done, in one line. */
    public String sentence(Build before) {
        Build car = before;
        List<String> said = new java.util.ArrayList<>();
        for (Change change : changes) {
            said.add(change.sentence(car));
            car = change.apply(car);
        }
        return said.stream().collect(Collectors.joining(", and "));
    }
}
