package org.lapwright.core.track;

/**
 * A part of a lap that a racer would call one thing: a straight or a turn.
 *
 * @param kind which
 * @param fromCell its first cell
 * @param toCell one after its last cell
 * @param fromM where it begins, m from the timing line
 * @param toM where it ends, m
 * @param turnedRad angle turned through, rad, left positive
 */
public record Stretch(Kind kind, int fromCell, int toCell, double fromM, double toM, double turnedRad) {
    /** What a stretch is. */
    public enum Kind {
        /** Nearly straight. */
        STRAIGHT,
        /** A turn to the left. */
        LEFT,
        /** A turn to the right. */
        RIGHT
    }

    /** Its length, m. */
    public double lengthM() {
        return toM - fromM;
    }

    /** This and the one after it, as one of a kind. */
    Stretch joined(Stretch next, Kind as) {
        return new Stretch(as, fromCell, next.toCell, fromM, next.toM, turnedRad + next.turnedRad);
    }
}
