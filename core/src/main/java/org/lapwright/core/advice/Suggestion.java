package org.lapwright.core.advice;

import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.track.Surface;
import org.lapwright.core.units.Interval;

/**
 * A candidate with what it would bring.
 *
 * @param candidate what to do
 * @param after the car after it
 * @param gainS what it takes off the lap on the mean, s; negative when it makes the car slower
 * @param intervalS of the gain, from what is not known of the car
 * @param chance that the car is faster with it
 * @param margins what is left to tipping, lifting the nose and sliding, before and after
 * @param worth expected gain for each minute of work and laps, weighed by the chance, ms a minute
 */
public record Suggestion(
        Candidate candidate,
        Build after,
        double gainS,
        Interval intervalS,
        double chance,
        Margins margins,
        double worth) {
    /**
     * Margins of a car before and after.
     *
     * @param tipBeforeG sideways g at which it tips, over that at which it slides, before
     * @param tipAfterG the same after
     * @param noseBeforeG load on the guide at rest over the least that it needs, g, before
     * @param noseAfterG the same after
     */
    public record Margins(double tipBeforeG, double tipAfterG, double noseBeforeG, double noseAfterG) {
        private static final double CLEAR_G = 0.1;
        private static final double LIGHT = 0.85;

        /** The margins of a car and of what becomes of it, on a surface at a voltage. */
        static Margins of(SetUp before, SetUp after, Surface surface, double supplyV) {
            SetUpNumbers was = SetUpNumbers.of(before, surface, supplyV);
            SetUpNumbers is = SetUpNumbers.of(after, surface, supplyV);
            return new Margins(
                    tip(was),
                    tip(is),
                    was.standing().guideLoadG() - before.guide().minGuideLoadG().value(),
                    is.standing().guideLoadG() - after.guide().minGuideLoadG().value());
        }

        private static double tip(SetUpNumbers numbers) {
            return numbers.holding().tipG() - numbers.holding().slideG().orElse(0);
        }

        /** Whether the car gives less warning after it: it tips sooner than it slides, or its nose gets light. */
        public boolean twitchier() {
            boolean tips = tipAfterG < tipBeforeG - 1e-3 && tipAfterG < CLEAR_G;
            return tips || noseAfterG < LIGHT * noseBeforeG;
        }
    }
}
