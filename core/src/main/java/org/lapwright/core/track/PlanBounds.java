package org.lapwright.core.track;

import java.util.List;

/**
 * A rectangle of the plan.
 *
 * @param lowXM least x, m
 * @param lowYM least y, m
 * @param highXM greatest x, m
 * @param highYM greatest y, m
 */
public record PlanBounds(double lowXM, double lowYM, double highXM, double highYM) {
    static PlanBounds of(List<PlanPose> poses) {
        double lowX = Double.POSITIVE_INFINITY;
        double lowY = Double.POSITIVE_INFINITY;
        double highX = Double.NEGATIVE_INFINITY;
        double highY = Double.NEGATIVE_INFINITY;
        for (PlanPose pose : poses) {
            lowX = Math.min(lowX, pose.xM());
            lowY = Math.min(lowY, pose.yM());
            highX = Math.max(highX, pose.xM());
            highY = Math.max(highY, pose.yM());
        }
        return new PlanBounds(lowX, lowY, highX, highY);
    }

    /** The rectangle that holds both. */
    public PlanBounds with(PlanBounds other) {
        return new PlanBounds(
                Math.min(lowXM, other.lowXM),
                Math.min(lowYM, other.lowYM),
                Math.max(highXM, other.highXM),
                Math.max(highYM, other.highYM));
    }

    /** Extent along x, m. */
    public double widthM() {
        return highXM - lowXM;
    }

    /** Extent along y, m. */
    public double heightM() {
        return highYM - lowYM;
    }
}
