package org.lapwright.core.track.closing;

/** What can be changed about a piece, and what a change of it weighs against the others. */
public enum Quantity {
    /** Length of a straight, mm: cut, measured and mistyped more easily than anything else. */
    LENGTH(1),

    /**
     * Angle of a turn, degrees. A degree weighs as much as {@value #MM_PER_DEGREE} mm: about what it moves the far end of
     * a turn of a home track (a degree of 570 mm radius is 10 mm). A round number, our choice.
     */
    ANGLE(Quantity.MM_PER_DEGREE),

    /** Radius of a turn, mm. */
    RADIUS(1);

    private static final double MM_PER_DEGREE = 10;

    private final double weight;

    Quantity(double weight) {
        this.weight = weight;
    }

    /** How many millimetres of straight a change by one unit weighs. */
    public double weight() {
        return weight;
    }
}
