package org.lapwright.core.car;

import org.lapwright.core.units.Check;

/** What measurements on the bench work out to. Lengths in mm, masses in g, angles in degrees. */
public final class BenchMeasurements {
    private static final double STEEPEST_DEG = 89;

    private BenchMeasurements() {}

    /**
     * Centre of gravity ahead of the rear axle, from two scales, car level: L W_guide / (W_guide + W_rear).
     *
     * @param guideToRearAxleMm guide pivot to rear axle, mm
     * @param guideG scale under the guide, g
     * @param rearAxleG scale under the rear axle, g
     * @return mm
     * @throws IllegalArgumentException if a weight is negative or both are 0
     */
    public static double cgAheadOfRearAxleMm(double guideToRearAxleMm, double guideG, double rearAxleG) {
        Check.inRange(guideG, 0, 1e6, "weight under the guide", "g");
        Check.inRange(rearAxleG, 0, 1e6, "weight under the rear axle", "g");
        Check.inRange(guideG + rearAxleG, Double.MIN_NORMAL, 2e6, "weight on both scales", "g");
        return guideToRearAxleMm * guideG / (guideG + rearAxleG);
    }

    /**
     * Height of the centre of gravity from a sideways tilt test, wheels kept from sliding: the car tips at the angle
     * whose tangent is edge / height.
     *
     * @param tippingEdgeMm distance in plan from the centre of gravity to the tipping line, mm
     * @param tiltDeg angle at which it tips, above 0 to 89°
     * @return mm
     */
    public static double cgHeightByTiltMm(double tippingEdgeMm, double tiltDeg) {
        Check.inRange(tippingEdgeMm, 0.01, 1000, "distance to the tipping line", "mm");
        Check.inRange(tiltDeg, 0.1, STEEPEST_DEG, "tilt", "°");
        return tippingEdgeMm / Math.tan(Math.toRadians(tiltDeg));
    }

    /**
     * Height of the centre of gravity from lifting the rear axle: r + L ΔW / (W tan θ) (method of ISO 10392).
     *
     * @param wheelbaseMm distance between the two supports, mm
     * @param totalG weight of the car, g
     * @param frontGainG what the front scale gains, g
     * @param liftDeg angle of the axle line, above 0 to 89°
     * @param wheelRadiusMm radius of the wheels, equal front and rear, mm
     * @return mm
     */
    public static double cgHeightByAxleLiftMm(
            double wheelbaseMm, double totalG, double frontGainG, double liftDeg, double wheelRadiusMm) {
        Check.inRange(totalG, 0.1, 1e7, "weight of the car", "g");
        Check.inRange(liftDeg, 0.1, STEEPEST_DEG, "lift", "°");
        return wheelRadiusMm + wheelbaseMm * frontGainG / (totalG * Math.tan(Math.toRadians(liftDeg)));
    }

    /**
     * Grip from a tilt board, wheels locked: the tangent of the angle at the first steady slide.
     *
     * @param slideDeg angle, above 0 to 89°
     */
    public static double gripByTiltBoard(double slideDeg) {
        return Math.tan(Math.toRadians(Check.inRange(slideDeg, 0.1, STEEPEST_DEG, "slide angle", "°")));
    }

    /**
     * Distance in plan from the centre of gravity to the nearer tipping line, mm; negative when it lies outside. The
     * line joins the outer rear contact with the front support: the guide when the front wheels hang clear, the outer
     * front contact when they touch.
     */
    public static double tippingEdgeMm(Chassis chassis, MassProperties car) {
        return tippingEdgeMm(chassis, car.aheadMm(), car.leftMm());
    }

    /**
     * Distance in plan from a place on the car to the nearer tipping line, mm; negative when it lies outside.
     *
     * @param chassis the lengths
     * @param aheadMm ahead of the rear axle, mm
     * @param leftMm left of the centre line, mm
     */
    public static double tippingEdgeMm(Chassis chassis, double aheadMm, double leftMm) {
        double rear = chassis.rearTrackMm().value() / 2;
        boolean touching = chassis.frontWheels() == FrontWheels.TOUCHING;
        double frontX = touching
                ? chassis.wheelbaseMm().value()
                : chassis.guideToRearAxleMm().value();
        double frontY = touching ? chassis.frontTrackMm().value() / 2 : 0;
        double length = Math.hypot(frontX, frontY - rear);
        return (frontX * (rear - Math.abs(leftMm)) + (frontY - rear) * aheadMm) / length;
    }
}
