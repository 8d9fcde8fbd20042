package org.lapwright.core.dynamics;

import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.MassProperties;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.track.Surface;

/**
 * A set-up on a surface in SI units, worked out once; the only form that the equations accept.
 *
 * @param body masses and lengths
 * @param contact what happens where the car touches the track
 * @param drive motor, gears and wheels
 */
public record ResolvedCar(Body body, Contact contact, Drive drive) {
    /** Standard gravity, m/s². */
    public static final double GRAVITY = MotorLine.STANDARD_GRAVITY;

    /** Density of air, kg/m³. */
    public static final double AIR_DENSITY = 1.2;

    /**
     * Masses and lengths.
     *
     * @param massKg m
     * @param lengthM guide pivot to rear axle, L
     * @param aheadM centre of gravity ahead of the rear axle, x_c
     * @param heightM centre of gravity above the track, h
     * @param yawInertiaKgM2 yaw inertia about the centre of gravity, I_z
     * @param rearTrackM between the rear contacts, t_r
     * @param tippingEdgeM centre of gravity to the nearer tipping line in plan
     * @param frontShare 1 when the front wheels touch, 0 when they hang clear (λ)
     */
    public record Body(
            double massKg,
            double lengthM,
            double aheadM,
            double heightM,
            double yawInertiaKgM2,
            double rearTrackM,
            double tippingEdgeM,
            double frontShare) {
        /** Masses and lengths of a set-up. */
        public static Body of(SetUp setUp) {
            MassProperties mass = setUp.massProperties();
            return new Body(
                    mass.totalG() / 1e3,
                    setUp.chassis().guideToRearAxleMm().value() / 1e3,
                    mass.aheadMm() / 1e3,
                    mass.heightMm() / 1e3,
                    mass.yawInertiaGmm2() / 1e9,
                    setUp.chassis().rearTrackMm().value() / 1e3,
                    setUp.tippingEdgeMm() / 1e3,
                    setUp.chassis().frontWheels() == FrontWheels.TOUCHING ? 1 : 0);
        }
    }

    /**
     * What happens where the car touches the track.
     *
     * @param grip rear tyre grip times the surface's factor, μ
     * @param slotFriction blade against the slot wall
     * @param braidDragN drag of the braids
     * @param minGuideLoadN least load on the guide
     * @param magnetN magnet downforce, 0 on a track that is not magnetic
     * @param magnetAheadM where it acts, ahead of the rear axle
     * @param rollingResistance drag of the rear tyres as a share of their load
     * @param dragAreaM2 drag area in air
     */
    public record Contact(
            double grip,
            double slotFriction,
            double braidDragN,
            double minGuideLoadN,
            double magnetN,
            double magnetAheadM,
            double rollingResistance,
            double dragAreaM2) {
        /** How a set-up touches a surface. */
        public static Contact of(SetUp setUp, Surface surface) {
            double gram = GRAVITY / 1e3;
            boolean pulled = surface.magnetic() && setUp.magnet().isPresent();
            return new Contact(
                    setUp.rearTyre().grip().value() * surface.gripFactor(),
                    setUp.guide().slotFriction().value(),
                    setUp.guide().braidDragG().value() * gram,
                    setUp.guide().minGuideLoadG().value() * gram,
                    pulled ? setUp.magnet().orElseThrow().downforceG().value() * gram : 0,
                    pulled ? setUp.magnet().orElseThrow().xMm().value() / 1e3 : 0,
                    setUp.drag().rollingResistance().value(),
                    setUp.drag().dragAreaCm2().value() / 1e4);
        }
    }

    /**
     * Motor, gears and wheels.
     *
     * @param motor the motor's line
     * @param ratio motor turns for one of the axle, i
     * @param efficiency of the gears, η
     * @param tyreRadiusM r
     * @param rotorMassKg what the rotor adds to the mass when the car speeds up, J (i/r)²
     * @param pickupOhm resistance of braids and leads
     */
    public record Drive(
            MotorLine motor,
            double ratio,
            double efficiency,
            double tyreRadiusM,
            double rotorMassKg,
            double pickupOhm) {
        /** The drive of a set-up. */
        public static Drive of(SetUp setUp) {
            double ratio = setUp.gears().ratio();
            double radius = setUp.rearTyre().diameterMm().value() / 2e3;
            double gearing = ratio / radius;
            return new Drive(
                    MotorLine.of(setUp.motor()),
                    ratio,
                    setUp.gears().efficiency().value(),
                    radius,
                    setUp.motor().rotorInertiaGmm2().value() / 1e9 * gearing * gearing,
                    setUp.pickupOhm().value());
        }

        /** Motor speed for one m/s at the tyre, rad/m. */
        public double gearing() {
            return ratio / tyreRadiusM;
        }
    }

    /** Works out a set-up on a surface. */
    public static ResolvedCar of(SetUp setUp, Surface surface) {
        return new ResolvedCar(Body.of(setUp), Contact.of(setUp, surface), Drive.of(setUp));
    }

    /** Distance from the guide pivot back to the centre of gravity, l, m. */
    public double guideToCentreM() {
        return body.lengthM() - body.aheadM();
    }
}
