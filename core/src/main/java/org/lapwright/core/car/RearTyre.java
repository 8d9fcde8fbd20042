package org.lapwright.core.car;

import java.util.List;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/**
 * The rear tyres.
 *
 * @param diameterMm outer diameter
 * @param grip friction coefficient on a surface of factor 1, as the tilt board gives it
 */
public record RearTyre(Reading diameterMm, Reading grip) {
    /** Outer diameter. */
    public static final NumberKey DIAMETER = new NumberKey("rear_tyre", "diameter_mm", 5, 80);

    /** Grip. */
    public static final NumberKey GRIP = new NumberKey("rear_tyre", "grip", 0.05, 5);

    /** The keys of its numbers, in the order in which files list them. */
    public static final List<NumberKey> KEYS = List.of(DIAMETER, GRIP);

    /** Checks each number. */
    public RearTyre {
        DIAMETER.check(diameterMm);
        GRIP.check(grip);
    }

    /** From the numbers of a file or form. */
    public static RearTyre of(Readings numbers) {
        return new RearTyre(numbers.require(DIAMETER), numbers.require(GRIP));
    }

    /** Its numbers by key. */
    public Readings readings() {
        return Readings.none().with(DIAMETER, diameterMm).with(GRIP, grip);
    }
}
