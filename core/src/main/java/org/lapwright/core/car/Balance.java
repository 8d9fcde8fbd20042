package org.lapwright.core.car;

import org.lapwright.core.units.Reading;

/** Where the weighed car balances along its length, in one of the two ways in which it can be known. */
public sealed interface Balance {
    /**
     * How far the centre of gravity lies ahead of the rear axle, mm.
     *
     * @param guideToRearAxleMm guide pivot to rear axle, mm
     */
    double aheadOfRearAxleMm(double guideToRearAxleMm);

    /**
     * Measured or reckoned as a length.
     *
     * @param aheadOfRearAxleMm centre of gravity ahead of the rear axle
     */
    record AsLength(Reading aheadOfRearAxleMm) implements Balance {
        /** Checks the length. */
        public AsLength {
            WeighedCar.CG_AHEAD.check(aheadOfRearAxleMm);
        }

        @Override
        public double aheadOfRearAxleMm(double guideToRearAxleMm) {
            return aheadOfRearAxleMm.value();
        }
    }

    /**
     * Weighed on two scales, car level: the guide on one, the rear axle on the other.
     *
     * @param guideG what the scale under the guide shows
     * @param rearAxleG what the scale under the rear axle shows
     */
    record OnTwoScales(Reading guideG, Reading rearAxleG) implements Balance {
        /** Checks that something stands on both. */
        public OnTwoScales {
            WeighedCar.GUIDE_SCALE.check(guideG);
            WeighedCar.REAR_SCALE.check(rearAxleG);
        }

        @Override
        public double aheadOfRearAxleMm(double guideToRearAxleMm) {
            return BenchMeasurements.cgAheadOfRearAxleMm(guideToRearAxleMm, guideG.value(), rearAxleG.value());
        }
    }
}
