package org.lapwright.core.fit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.track.Lane;
import org.lapwright.core.units.Interval;

/**
 * What the laps of a car tell of it.
 *
 * @param numbers the driver's share first, then the car's numbers in the order of its file
 * @param lanes what the car can do now on each lane of the track
 * @param lap the same as the mean over the lanes
 * @param tradeOffs pairs that the laps cannot tell apart, the closest first
 * @param measurements what would narrow the best lap, the most first
 * @param diagnosis whether the draws can be believed
 * @param draws cars as they may be, all alike likely; what is suggested can be tried on them
 */
public record Learned(
        List<Parameter> numbers,
        List<OnLane> lanes,
        OnLane lap,
        List<TradeOff> tradeOffs,
        List<Measurement> measurements,
        Diagnosis diagnosis,
        List<SetUp> draws) {
    /** Copies the lists. */
    public Learned {
        numbers = List.copyOf(numbers);
        lanes = List.copyOf(lanes);
        tradeOffs = List.copyOf(tradeOffs);
        measurements = List.copyOf(measurements);
        draws = List.copyOf(draws);
    }

    /** Name of the driver's share of the best lap. */
    public static final String DRIVER = "driver_share";

    /**
     * A value and how sure it is.
     *
     * @param value mean
     * @param plusMinus standard deviation
     */
    public record Estimate(double value, double plusMinus) {}

    /**
     * One unknown.
     *
     * @param name as {@link Unknown#name}, or {@link #DRIVER}
     * @param path its place in the car file; empty for the driver
     * @param before what was believed before the laps
     * @param after what the laps leave
     * @param interval where it lies after them
     * @param laplace the same as {@code after} by the normal approximation, in another way
     */
    public record Parameter(
            String name, Optional<String> path, Estimate before, Estimate after, Interval interval, Estimate laplace) {
        /** How much of the doubt the laps took away, 0 to 1. */
        public double learned() {
            return Math.max(0, 1 - after.plusMinus() / before.plusMinus());
        }
    }

    /**
     * What the car can do on a lane.
     *
     * @param lane the lane; empty for the mean over all
     * @param lapS best lap, s
     * @param intervalS where it lies, s
     * @param paceS pace that this driver would hold, s
     * @param paceIntervalS where it lies, s
     * @param measuredS pace that was held with this set-up there, s, if it was driven
     */
    public record OnLane(
            Optional<Lane> lane,
            double lapS,
            Interval intervalS,
            double paceS,
            Interval paceIntervalS,
            OptionalDouble measuredS) {}

    /**
     * Two unknowns that the laps cannot tell apart.
     *
     * @param first name
     * @param second name
     * @param correlation of the draws, −1 to 1
     */
    public record TradeOff(String first, String second, double correlation) {}

    /**
     * A measurement on the bench that is worth its while.
     *
     * @param name what to measure
     * @param lapPlusMinusS doubt about the best lap that it would leave, s
     * @param lessBy share of the doubt that it takes away, 0 to 1
     */
    public record Measurement(String name, double lapPlusMinusS, double lessBy) {}

    /**
     * How the draws came about.
     *
     * @param paces how many runs told something
     * @param greatestRHat of all unknowns; below 1.01 is good
     * @param leastEffective independent draws that the worst unknown's are worth
     * @param curveMisfit how far laps lie off the curve, as a share of the lap
     * @param exactShare of the draws that count after their laps were driven by the solver itself, 0 to 1
     */
    public record Diagnosis(
            int paces, double greatestRHat, double leastEffective, double curveMisfit, double exactShare) {
        private static final double GOOD_R_HAT = 1.01;
        private static final double ENOUGH_EFFECTIVE = 400;
        private static final double ENOUGH_EXACT = 0.3;

        /** Whether the draws can be believed. */
        public boolean isSound() {
            return greatestRHat < GOOD_R_HAT && leastEffective > ENOUGH_EFFECTIVE && exactShare > ENOUGH_EXACT;
        }
    }
}
