package org.lapwright.core.track;

import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;

/**
 * A timing gate beside the timing line, where a section of the lap ends.
 *
 * @param name what the section that ends here is called
 * @param at share of the lap from the timing line, in the direction of travel; above 0 and below 1
 */
public record Gate(String name, double at) {
    /** Place of a gate. */
    public static final NumberKey AT = new NumberKey("gates", "at", 0.001, 0.999);

    private static final int LONGEST_NAME = 40;

    /** Checks name and place. */
    public Gate {
        name = Check.text(name, LONGEST_NAME, "gates.name");
        at = AT.check(at);
    }
}
