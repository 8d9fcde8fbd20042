package org.lapwright.core.advice;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.lapwright.core.car.change.Change;

/**
 * Something adjustable on a car, in steps that a person can set. It has one or more scales, such as how heavy a piece is and where
 * it sits; what stands on all of them together is at most one change.
 *
 * @param scales for each scale how many marks it has
 * @param rest the marks at which nothing is changed
 * @param turned the change at some marks, one for each scale; empty where nothing is changed
 */
record Knob(List<Integer> scales, List<Integer> rest, Function<int[], Optional<Change>> turned) {
    Knob {
        scales = List.copyOf(scales);
        rest = List.copyOf(rest);
        if (scales.isEmpty() || scales.size() != rest.size()) {
            throw new IllegalArgumentException(
                    "a knob has %d scales and rests on %d".formatted(scales.size(), rest.size()));
        }
    }

    /** A knob with one scale. */
    static Knob one(int marks, int rest, Function<Integer, Optional<Change>> turned) {
        return new Knob(List.of(marks), List.of(rest), at -> turned.apply(at[0]));
    }

    /** One of some changes, or none of them. */
    static Knob choice(List<? extends Change> changes) {
        return one(changes.size() + 1, 0, at -> at == 0 ? Optional.empty() : Optional.of(changes.get(at - 1)));
    }

    /** The change at some marks. */
    Optional<Change> at(int[] marks) {
        boolean resting = Arrays.stream(marks).boxed().toList().equals(rest);
        return resting ? Optional.empty() : turned.apply(marks);
    }
}
