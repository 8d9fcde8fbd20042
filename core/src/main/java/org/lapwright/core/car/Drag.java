package org.lapwright.core.car;

import java.util.List;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/**
 * What holds the car back besides braids and slot.
 *
 * @param rollingResistance drag of the rear tyres as a share of their load
 * @param dragAreaCm2 frontal area times drag coefficient
 */
public record Drag(Reading rollingResistance, Reading dragAreaCm2) {
    /** Rolling resistance. */
    public static final NumberKey ROLLING_RESISTANCE = new NumberKey("drag", "rolling_resistance", 0, 0.5);

    /** Drag area. */
    public static final NumberKey DRAG_AREA = new NumberKey("drag", "drag_area_cm2", 0, 200);

    /** The keys of its numbers, in the order in which files list them. */
    public static final List<NumberKey> KEYS = List.of(ROLLING_RESISTANCE, DRAG_AREA);

    /** No drag. */
    public static final Drag NONE = new Drag(Reading.exact(0), Reading.exact(0));

    /** Checks each number. */
    public Drag {
        ROLLING_RESISTANCE.check(rollingResistance);
        DRAG_AREA.check(dragAreaCm2);
    }

    /** From the numbers of a file or form; what is missing is 0. */
    public static Drag of(Readings numbers) {
        return new Drag(numbers.orZero(ROLLING_RESISTANCE), numbers.orZero(DRAG_AREA));
    }

    /** Its numbers by key. */
    public Readings readings() {
        return Readings.none().with(ROLLING_RESISTANCE, rollingResistance).with(DRAG_AREA, dragAreaCm2);
    }
}
