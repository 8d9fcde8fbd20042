package org.lapwright.core.track;

import org.lapwright.core.units.Check;

/**
 * A point of the plan.
 *
 * @param xMm one coordinate, mm
 * @param yMm the other, to the left of it, mm
 */
public record PlanPoint(double xMm, double yMm) {
    private static final double FARTHEST = 100_000;

    /** Checks both. */
    public PlanPoint {
        xMm = Check.inRange(xMm, -FARTHEST, FARTHEST, "x in points_mm", "mm");
        yMm = Check.inRange(yMm, -FARTHEST, FARTHEST, "y in points_mm", "mm");
    }

    /** Distance to another point, mm. */
    public double distanceMm(PlanPoint other) {
        return Math.hypot(xMm - other.xMm, yMm - other.yMm);
    }
}
