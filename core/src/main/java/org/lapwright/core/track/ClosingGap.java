package org.lapwright.core.track;

/**
 * By how much the end of a layout misses its start.
 *
 * @param distanceM between the ends, height included, m
 * @param headingRad between the directions, rad, not negative
 */
public record ClosingGap(double distanceM, double headingRad) {
    private static final double WIDEST_M = 0.005;
    private static final double WIDEST_RAD = Math.toRadians(0.5);

    /** Whether a racer should look at it: more than 5 mm or 0.5°. */
    public boolean isOpen() {
        return distanceM > WIDEST_M || headingRad > WIDEST_RAD;
    }
}
