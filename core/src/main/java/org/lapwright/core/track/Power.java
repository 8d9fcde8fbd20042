package org.lapwright.core.track;

import java.util.List;
import java.util.OptionalDouble;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;

/**
 * What feeds a lane.
 *
 * @param supplyV voltage of the supply
 * @param sourceOhm resistance of supply, controller and leads
 * @param railOhmPerM resistance of one metre of lap, both rails together
 * @param tapsAt where the rails are fed, as fractions of the lap from 0 up to below 1; in order
 * @param brakeOhm resistance of the braking circuit; empty when the controller does not brake
 */
public record Power(
        double supplyV, double sourceOhm, double railOhmPerM, List<Double> tapsAt, OptionalDouble brakeOhm) {
    /** Voltage of the supply. */
    public static final NumberKey SUPPLY = new NumberKey("power", "supply_v", 0.5, 60);

    /** Resistance of the source. */
    public static final NumberKey SOURCE = new NumberKey("power", "source_ohm", 0, 100);

    /** Resistance of the rails. */
    public static final NumberKey RAIL = new NumberKey("power", "rail_ohm_per_m", 0, 50);

    /** Resistance of the brake. */
    public static final NumberKey BRAKE = new NumberKey("power", "brake_ohm", 0, 10_000);

    private static final int MOST_TAPS = 100;

    /** The same at another voltage. */
    public Power withSupplyV(double volts) {
        return new Power(volts, sourceOhm, railOhmPerM, tapsAt, brakeOhm);
    }

    /** The same with another braking circuit. */
    public Power withBrakeOhm(double ohm) {
        return new Power(supplyV, sourceOhm, railOhmPerM, tapsAt, OptionalDouble.of(ohm));
    }

    /** Checks the numbers and puts the taps in order. */
    public Power {
        supplyV = SUPPLY.check(supplyV);
        sourceOhm = SOURCE.check(sourceOhm);
        railOhmPerM = RAIL.check(railOhmPerM);
        brakeOhm.ifPresent(BRAKE::check);
        if (tapsAt.isEmpty() || tapsAt.size() > MOST_TAPS) {
            throw new IllegalArgumentException(
                    "power.taps_at has %d places; it needs from 1 to %d".formatted(tapsAt.size(), MOST_TAPS));
        }
        for (double tap : tapsAt) {
            Check.inRange(tap, 0, 1, "power.taps_at", "");
        }
        tapsAt = tapsAt.stream().map(tap -> tap % 1.0 + 0.0).distinct().sorted().toList();
    }

    /**
     * The length of rail that stands in for a closed ring fed at the taps: d1 d2 / (d1 + d2), with d1 the way back to
     * the last tap and d2 the way on to the next, m. Times the resistance per metre it is the rail resistance there.
     *
     * @param s place, m from the timing line, 0 to {@code lapM}
     * @param lapM length of the lap, m
     */
    public double feedLengthM(double s, double lapM) {
        double at = s / lapM;
        double before = tapsAt.get(tapsAt.size() - 1) - 1;
        double after = tapsAt.get(0) + 1;
        for (double tap : tapsAt) {
            if (tap <= at) {
                before = tap;
            } else {
                after = tap;
                break;
            }
        }
        return lapM * (at - before) * (after - at) / (after - before);
    }
}
