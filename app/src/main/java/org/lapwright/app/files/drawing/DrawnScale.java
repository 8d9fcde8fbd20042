package org.lapwright.app.files.drawing;

/**
 * What one unit of a drawing is.
 *
 * @param mm millimetres of one unit
 * @param stated whether the drawing says so; else it is a guess to be confirmed
 * @param sentence how it is known
 */
public record DrawnScale(double mm, boolean stated, String sentence) {
    /** Checks that it is a size. */
    public DrawnScale {
        if (!(mm > 0 && mm < 1e7)) {
            throw new IllegalArgumentException("one unit of a drawing is %s mm; it must be a size".formatted(mm));
        }
    }

    /** A size that the racer states. */
    public static DrawnScale told(double mm, String name) {
        return new DrawnScale(mm, true, "One unit of the drawing is one %s, as you say.".formatted(name));
    }
}
