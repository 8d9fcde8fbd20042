package org.lapwright.core.car;

/**
 * Mass, centre of gravity and yaw inertia of a body, in workshop units.
 *
 * @param totalG mass, g, above 0
 * @param aheadMm centre ahead of the rear axle, mm
 * @param leftMm centre left of the centre line, mm
 * @param heightMm centre above the track, mm
 * @param yawInertiaGmm2 inertia about the vertical axis through the centre, g mm², not negative
 */
public record MassProperties(double totalG, double aheadMm, double leftMm, double heightMm, double yawInertiaGmm2) {
    /** Checks that a body is left. */
    public MassProperties {
        if (!(totalG > 0)) {
            throw new IllegalArgumentException(
                    "the car would weigh %.4g g; take out less than it weighs".formatted(totalG));
        }
        if (!(yawInertiaGmm2 >= 0)) {
            throw new IllegalArgumentException(
                    ("the yaw inertia would be %.4g g mm²; the piece taken out is too heavy or too far out for the"
                                    + " inertia given")
                            .formatted(yawInertiaGmm2));
        }
    }

    /** A single piece. */
    public static MassProperties of(PointMass piece) {
        return new MassProperties(piece.massG(), piece.xMm(), piece.yMm(), piece.zMm(), 0);
    }

    /**
     * This body with one more piece: masses add, moments give the new centre, and the parallel-axis rule the inertia.
     *
     * @throws IllegalArgumentException if nothing would be left
     */
    public MassProperties plus(PointMass piece) {
        double sum = totalG + piece.massG();
        if (!(sum > 0)) {
            throw new IllegalArgumentException(
                    "the car would weigh %.4g g; take out less than it weighs".formatted(sum));
        }
        double share = piece.massG() / sum;
        double dx = piece.xMm() - aheadMm;
        double dy = piece.yMm() - leftMm;
        return new MassProperties(
                sum,
                aheadMm + share * dx,
                leftMm + share * dy,
                heightMm + share * (piece.zMm() - heightMm),
                yawInertiaGmm2 + totalG * share * (dx * dx + dy * dy));
    }
}
