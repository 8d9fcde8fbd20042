package org.lapwright.core.car.change;

import java.util.Optional;

/**
 * One step from a set-up to the next.
 *
 * <p>Every kind knows what it asks for ({@link ChangeKind}), what it does to the numbers, and what nobody can foresee about it.
 */
public sealed interface Change
        permits BallastChange, TyreChange, NoseChange, DriveChange, MagnetChange, ChassisChange, OtherChange {
    /** Its kind. */
    ChangeKind kind();

    /** What was given for it, as {@link ChangeKind#of} takes it. */
    Values values();

    /**
     * The car after it.
     *
     * @throws IllegalArgumentException with a sentence for the racer, if it cannot be done to this car
     */
    Build apply(Build before);

    /**
     * What is done, in one line without a full stop: {@code 5 g added, 20 mm ahead of the axle}.
     *
     * @param before the car it is done to
     */
    String sentence(Build before);

    /** What the numbers cannot show of it, as a sentence; empty when they show all that matters. */
    default Optional<String> unforeseen() {
        return kind().unforeseen();
    }
}
