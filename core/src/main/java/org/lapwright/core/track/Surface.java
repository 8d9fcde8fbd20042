package org.lapwright.core.track;

import org.lapwright.core.units.NumberKey;

/**
 * What the tyres run on.
 *
 * @param gripFactor grip here over grip where the tyres were measured, 0.05 to 3
 * @param magnetic whether a magnet pulls towards the rails
 * @param conditions the owner's word on what the grip factor holds for, such as dust, damp and warmth; may be empty, at most
 *     {@value #LONGEST_CONDITIONS} characters
 */
public record Surface(double gripFactor, boolean magnetic, String conditions) {
    /** Grip factor. */
    public static final NumberKey GRIP_FACTOR = new NumberKey("surface", "grip_factor", 0.05, 3);

    /** The bench: nothing pulls, grip as measured. */
    public static final Surface BENCH = new Surface(1, false);

    /** Longest word on the conditions. */
    public static final int LONGEST_CONDITIONS = 500;

    /** Checks the factor and the length of the words. */
    public Surface {
        gripFactor = GRIP_FACTOR.check(gripFactor);
        conditions = conditions.strip();
        if (conditions.length() > LONGEST_CONDITIONS) {
            throw new IllegalArgumentException("conditions are %d characters long; at most %d fit"
                    .formatted(conditions.length(), LONGEST_CONDITIONS));
        }
    }

    /** One of whose conditions nothing is said. */
    public Surface(double gripFactor, boolean magnetic) {
        this(gripFactor, magnetic, "");
    }
}
