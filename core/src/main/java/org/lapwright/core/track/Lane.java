package org.lapwright.core.track;

import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;

/**
 * One slot.
 *
 * @param name what it is called, most often a colour
 * @param offsetMm left of the centre line, mm, −1,000 to 1,000
 */
public record Lane(String name, double offsetMm) {
    /** Offset of a lane. */
    public static final NumberKey OFFSET = new NumberKey("lanes", "offset_mm", -1000, 1000);

    private static final int LONGEST_NAME = 40;

    /** Checks name and offset. */
    public Lane {
        name = Check.text(name, LONGEST_NAME, "lanes.name");
        offsetMm = OFFSET.check(offsetMm);
    }

    /** Offset in metres. */
    public double offsetM() {
        return offsetMm / 1000;
    }
}
