package org.lapwright.core.car;

import java.util.List;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/**
 * Pinion and axle gear.
 *
 * @param pinionTeeth teeth on the motor
 * @param axleTeeth teeth on the axle
 * @param efficiency share of the motor's power that reaches the axle
 */
public record Gears(Reading pinionTeeth, Reading axleTeeth, Reading efficiency) {
    /** Teeth on the motor. */
    public static final NumberKey PINION_TEETH = new NumberKey("gears", "pinion_teeth", 4, 100);

    /** Teeth on the axle. */
    public static final NumberKey AXLE_TEETH = new NumberKey("gears", "axle_teeth", 4, 200);

    /** Efficiency. */
    public static final NumberKey EFFICIENCY = new NumberKey("gears", "efficiency", 0.2, 1);

    /** The keys of its numbers, in the order in which files list them. */
    public static final List<NumberKey> KEYS = List.of(PINION_TEETH, AXLE_TEETH, EFFICIENCY);

    /** Checks each number, and that teeth are counted. */
    public Gears {
        counted(PINION_TEETH, pinionTeeth);
        counted(AXLE_TEETH, axleTeeth);
        EFFICIENCY.check(efficiency);
    }

    /** From the numbers of a file or form. */
    public static Gears of(Readings numbers) {
        return new Gears(numbers.require(PINION_TEETH), numbers.require(AXLE_TEETH), numbers.require(EFFICIENCY));
    }

    /** Its numbers by key. */
    public Readings readings() {
        return Readings.none()
                .with(PINION_TEETH, pinionTeeth)
                .with(AXLE_TEETH, axleTeeth)
                .with(EFFICIENCY, efficiency);
    }

    /** Motor turns for one turn of the axle. */
    public double ratio() {
        return axleTeeth.value() / pinionTeeth.value();
    }

    /**
     * Way over the ground for one turn of the motor, mm.
     *
     * @param tyreDiameterMm diameter of the rear tyre, mm
     */
    public double mmPerMotorTurn(double tyreDiameterMm) {
        return Math.PI * tyreDiameterMm / ratio();
    }

    private static void counted(NumberKey key, Reading teeth) {
        key.check(teeth);
        if (teeth.value() != Math.rint(teeth.value())) {
            throw new IllegalArgumentException(
                    "%s is %s; teeth are counted, give a whole number".formatted(key.path(), teeth.value()));
        }
        if (teeth.isUncertain()) {
            throw new IllegalArgumentException(key.path() + " has a plus_minus; teeth are counted, leave it out");
        }
    }
}
