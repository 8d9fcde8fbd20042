package org.lapwright.core.advice;

import java.util.Optional;
import java.util.function.Supplier;

/** What the constructors of cars and changes refuse is no candidate, and no fault. */
final class Possible {
    private Possible() {}

    /** What comes out; empty when it was refused. */
    static <T> Optional<T> of(Supplier<T> attempt) {
        try {
            return Optional.of(attempt.get());
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }
}
