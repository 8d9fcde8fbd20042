package org.lapwright.app.files.drawing;

import org.lapwright.core.units.Check;

/** How much a drawing may hold: enough for any track, little enough to be read at once. */
public final class Budget {
    /** Lines and curves of a drawing, and points of a flattened one. */
    public static final int MOST = 200_000;

    /** A coordinate larger than this, in whatever unit, is a slip. */
    public static final double FARTHEST = 1e9;

    private int used;

    /**
     * One more line, curve or point.
     *
     * @throws Trouble if that is one too many
     */
    public void take() {
        used++;
        if (used > MOST) {
            throw Trouble.ofWhole(
                    "The drawing has more than %s lines and points".formatted(Check.number(MOST)),
                    "Save the centre line alone, without text, pictures and hatching");
        }
    }

    /**
     * A coordinate or size that a drawing can have.
     *
     * @throws Trouble if it is too large or no number
     */
    public static double checked(double value) {
        if (!(Math.abs(value) <= FARTHEST)) {
            throw Trouble.ofWhole(
                    "The drawing has a coordinate beyond 1,000,000,000 units, or one that is not a number",
                    "Move the drawing to the origin and save it again");
        }
        return value;
    }
}
