package org.lapwright.core.car;

import java.util.List;
import java.util.Optional;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

/**
 * Everything adjustable about a car at one time, as the racer writes it down. Never edited: a change makes the next one.
 *
 * @param name the car's name
 * @param chassis lengths
 * @param mass the car as weighed, without ballast
 * @param ballast pieces added to or taken from the weighed car
 * @param guide guide and braids
 * @param rearTyre rear tyres
 * @param gears pinion and axle gear
 * @param motor motor as tested
 * @param magnet magnet, if one is fitted
 * @param drag other drag
 * @param pickupOhm resistance of braids and leads
 */
public record SetUp(
        String name,
        Chassis chassis,
        WeighedCar mass,
        List<Ballast> ballast,
        Guide guide,
        RearTyre rearTyre,
        Gears gears,
        Motor motor,
        Optional<Magnet> magnet,
        Drag drag,
        Reading pickupOhm) {
    /** Resistance of braids and leads. */
    public static final NumberKey PICKUP = new NumberKey("", "pickup_ohm", 0, 20);

    private static final int LONGEST_NAME = 80;
    private static final int MOST_BALLAST = 200;

    /** Checks that the parts make a car that can stand in the slot. */
    public SetUp {
        name = Check.text(name, LONGEST_NAME, "name");
        PICKUP.check(pickupOhm);
        ballast = List.copyOf(ballast);
        if (ballast.size() > MOST_BALLAST) {
            throw new IllegalArgumentException(
                    "ballast has %d pieces; at most %d fit".formatted(ballast.size(), MOST_BALLAST));
        }
        checkBalance(chassis, rolledUp(chassis, mass, ballast));
    }

    /** Mass, centre and yaw inertia with all ballast. */
    public MassProperties massProperties() {
        return rolledUp(chassis, mass, ballast);
    }

    /**
     * How far the centre of gravity lies, in plan, inside the line over which the car would tip, mm. Positive.
     *
     * @see BenchMeasurements#tippingEdgeMm
     */
    public double tippingEdgeMm() {
        return BenchMeasurements.tippingEdgeMm(chassis, massProperties());
    }

    /** Every number of the set-up with its place in the car file. */
    public List<NamedReading> numbers() {
        return new NumberRow(this).all();
    }

    /**
     * A copy with one number replaced.
     *
     * @param path its place, as {@link #numbers} gives it
     * @throws IllegalArgumentException if there is no such number, or the car would make no sense with it
     */
    public SetUp with(String path, Reading reading) {
        return new NumberRow(this).with(path, reading);
    }

    /** A copy with other ballast. */
    public SetUp withBallast(List<Ballast> pieces) {
        return new SetUp(name, chassis, mass, pieces, guide, rearTyre, gears, motor, magnet, drag, pickupOhm);
    }

    /** A copy with another chassis. */
    public SetUp withChassis(Chassis other) {
        return new SetUp(name, other, mass, ballast, guide, rearTyre, gears, motor, magnet, drag, pickupOhm);
    }

    /** A copy with other weights. */
    public SetUp withMass(WeighedCar other) {
        return new SetUp(name, chassis, other, ballast, guide, rearTyre, gears, motor, magnet, drag, pickupOhm);
    }

    /** A copy with another guide. */
    public SetUp withGuide(Guide other) {
        return new SetUp(name, chassis, mass, ballast, other, rearTyre, gears, motor, magnet, drag, pickupOhm);
    }

    /** A copy with other rear tyres. */
    public SetUp withRearTyre(RearTyre other) {
        return new SetUp(name, chassis, mass, ballast, guide, other, gears, motor, magnet, drag, pickupOhm);
    }

    /** A copy with other gears. */
    public SetUp withGears(Gears other) {
        return new SetUp(name, chassis, mass, ballast, guide, rearTyre, other, motor, magnet, drag, pickupOhm);
    }

    /** A copy with another motor. */
    public SetUp withMotor(Motor other) {
        return new SetUp(name, chassis, mass, ballast, guide, rearTyre, gears, other, magnet, drag, pickupOhm);
    }

    /** A copy with another magnet, or none. */
    public SetUp withMagnet(Optional<Magnet> other) {
        return new SetUp(name, chassis, mass, ballast, guide, rearTyre, gears, motor, other, drag, pickupOhm);
    }

    /** A copy with other drag. */
    public SetUp withDrag(Drag other) {
        return new SetUp(name, chassis, mass, ballast, guide, rearTyre, gears, motor, magnet, other, pickupOhm);
    }

    /** A copy with another resistance of braids and leads. */
    public SetUp withPickupOhm(Reading other) {
        return new SetUp(name, chassis, mass, ballast, guide, rearTyre, gears, motor, magnet, drag, other);
    }

    private static MassProperties rolledUp(Chassis chassis, WeighedCar mass, List<Ballast> ballast) {
        MassProperties sum = mass.massProperties(chassis.guideToRearAxleMm().value());
        for (Ballast piece : ballast) {
            sum = sum.plus(piece.pointMass());
        }
        return sum;
    }

    private static void checkBalance(Chassis chassis, MassProperties car) {
        double length = chassis.guideToRearAxleMm().value();
        if (car.aheadMm() <= 0) {
            throw new IllegalArgumentException(
                    ("the centre of gravity is %.4g mm ahead of the rear axle, so the guide would lift out at rest;"
                                    + " check mass.cg_ahead_of_rear_axle_mm and the x_mm of the ballast")
                            .formatted(car.aheadMm()));
        }
        if (car.aheadMm() >= length) {
            throw new IllegalArgumentException(
                    ("the centre of gravity is %.4g mm ahead of the rear axle, at or beyond the guide"
                                    + " (chassis.guide_to_rear_axle_mm %.4g mm), so nothing would press on the rear"
                                    + " tyres; check both")
                            .formatted(car.aheadMm(), length));
        }
        if (car.heightMm() <= 0) {
            throw new IllegalArgumentException(
                    "the centre of gravity is %.4g mm above the track; check mass.cg_height_mm and the ballast"
                            .formatted(car.heightMm()));
        }
        double edge = BenchMeasurements.tippingEdgeMm(chassis, car);
        if (edge <= 0) {
            throw new IllegalArgumentException(
                    ("the centre of gravity is %.4g mm left of the centre line, outside the wheels, so the car would"
                                    + " fall over at rest; check mass.cg_left_mm and the y_mm of the ballast")
                            .formatted(car.leftMm()));
        }
        double gyration = Math.sqrt(car.yawInertiaGmm2() / car.totalG());
        if (gyration > length) {
            throw new IllegalArgumentException(
                    ("mass.yaw_inertia_g_mm2 works out to a radius of gyration of %.4g mm, longer than the car; near"
                                    + " %.3g g mm² would be usual")
                            .formatted(gyration, car.totalG() * length * length / 12));
        }
    }
}
