package org.lapwright.core.advice;

import java.util.OptionalDouble;
import org.lapwright.core.car.SetUp;

/**
 * What the rules of the owner's class allow. Candidates that break one are never offered.
 *
 * @param leastMassG least weight of the car
 * @param mostMassG greatest weight of the car
 * @param mostTrackMm greatest track width
 * @param magnetAllowed whether a magnet may be fitted
 */
public record Bounds(
        OptionalDouble leastMassG, OptionalDouble mostMassG, OptionalDouble mostTrackMm, boolean magnetAllowed) {
    /** Anything goes. */
    public static final Bounds NONE =
            new Bounds(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), true);

    /** Whether a car is within them. */
    public boolean allow(SetUp car) {
        double mass = car.massProperties().totalG();
        double width = Math.max(
                car.chassis().rearTrackMm().value(),
                car.chassis().frontTrackMm().value());
        return !(mass < leastMassG.orElse(0))
                && !(mass > mostMassG.orElse(Double.POSITIVE_INFINITY))
                && !(width > mostTrackMm.orElse(Double.POSITIVE_INFINITY))
                && (magnetAllowed || car.magnet().isEmpty());
    }
}
