package org.lapwright.core.track.rails;

import java.util.List;
import org.lapwright.core.track.Power;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

/**
 * Resistance of supply and rails from voltages under a known load: a lamp or a resistor across the rails, once where they are fed and
 * once far from there, with its current read.
 *
 * @param readings repeated readings, at least one
 * @param farAt where the far place is, as a share of the lap
 */
public record RailTest(List<Load> readings, double farAt) {
    /** Voltages of the test. */
    public static final NumberKey VOLTAGE = new NumberKey("", "volts_v", 0.5, 30);

    /** Current through the load. */
    public static final NumberKey CURRENT = new NumberKey("", "current_a", 0.05, 5);

    /** Where the far place is. */
    public static final NumberKey FAR = new NumberKey("", "far_share", 0.02, 0.98);

    /** What a usual meter leaves in doubt, one standard deviation: 5 mV, 0.5 % of a current. Common practice, no source. */
    private static final double METER_V = 0.005;

    private static final double METER_A = 0.005;

    /** Checks that there is something to work with. */
    public RailTest {
        readings = List.copyOf(readings);
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("no reading is complete; one needs all five numbers");
        }
        farAt = FAR.check(farAt);
    }

    /**
     * One round of readings.
     *
     * @param openV supply without a load, V
     * @param nearV at the feed under load, V
     * @param nearA current then, A
     * @param farV at the far place under load, V
     * @param farA current then, A
     */
    public record Load(double openV, double nearV, double nearA, double farV, double farA) {
        /** Checks ranges, and that voltage falls under load. */
        public Load {
            for (double volts : new double[] {openV, nearV, farV}) {
                VOLTAGE.check(volts);
            }
            CURRENT.check(nearA);
            CURRENT.check(farA);
            if (nearV > openV || farV > openV) {
                throw new IllegalArgumentException(
                        "under load there are %s V and %s V, without a load %s V; under load it must be less"
                                .formatted(Check.number(nearV), Check.number(farV), Check.number(openV)));
            }
        }

        private double sourceOhm() {
            return (openV - nearV) / nearA;
        }

        private double farOhm() {
            return (openV - farV) / farA;
        }
    }

    /**
     * What the test comes to.
     *
     * @param sourceOhm supply, controller and leads, with one standard deviation
     * @param railOhmPerM a metre of lap, both rails, with one standard deviation
     */
    public record Result(Reading sourceOhm, Reading railOhmPerM) {}

    /**
     * Works it out: the far place lies behind the supply's resistance and that of the ring of rails
     * ({@link Power#feedLengthM}); scatter of repeated readings and the meter's doubt add up as squares (JCGM 100:2008, 4.2, 4.3, 5.1).
     *
     * @param power where the rails are fed
     * @param lapM length of the lap, m
     * @throws IllegalArgumentException if the far place is fed itself, or measures less than the near one
     */
    public Result result(Power power, double lapM) {
        double feedM = power.feedLengthM(farAt * lapM, lapM);
        if (feedM < 0.02 * lapM) {
            throw new IllegalArgumentException(
                    "the far place is fed itself or lies beside a feed; measure far from every feed, half-way between two at best");
        }
        double[] source = readings.stream().mapToDouble(Load::sourceOhm).toArray();
        double[] rail = readings.stream()
                .mapToDouble(load -> (load.farOhm() - load.sourceOhm()) / feedM)
                .toArray();
        double sourceOhm = mean(source);
        double railOhm = mean(rail);
        if (railOhm < 0) {
            throw new IllegalArgumentException(
                    "the far place comes out with less resistance than the feed itself; were the two places swapped, or the current not read each time?");
        }
        double meterSource = meter(readings.get(0).nearA(), sourceOhm);
        double meterFar = meter(readings.get(0).farA(), sourceOhm + railOhm * feedM);
        double share = 1 / Math.sqrt(readings.size());
        return new Result(
                new Reading(sourceOhm, Math.hypot(scatter(source, sourceOhm), share * meterSource)),
                new Reading(
                        railOhm,
                        Math.hypot(scatter(rail, railOhm), share * Math.hypot(meterSource, meterFar) / feedM)));
    }

    /** Doubt about a resistance from two voltages and a current. */
    private static double meter(double current, double ohm) {
        return Math.hypot(Math.sqrt(2) * METER_V / current, ohm * METER_A);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** Standard deviation of the mean; 0 of a single reading, for which the meter's doubt stands alone. */
    private static double scatter(double[] values, double mean) {
        if (values.length < 2) {
            return 0;
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(squares / (values.length - 1) / values.length);
    }
}
