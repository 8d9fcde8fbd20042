package org.lapwright.core.track;

import org.lapwright.core.units.NumberKey;

/**
 * What the tyres run on.
 *
 * @param gripFactor grip here over grip where the tyres were measured, 0.05 to 3
 * @param magnetic whether a magnet pulls towards the rails
 */
public record Surface(double gripFactor, boolean magnetic) {
    /** Grip factor. */
    public static final NumberKey GRIP_FACTOR = new NumberKey("surface", "grip_factor", 0.05, 3);

    /** The bench: nothing pulls, grip as measured. */
    public static final Surface BENCH = new Surface(1, false);

    /** Checks the factor. */
    public Surface {
        gripFactor = GRIP_FACTOR.check(gripFactor);
    }
}
