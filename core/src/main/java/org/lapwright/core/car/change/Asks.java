package org.lapwright.core.car.change;

import java.util.List;
import java.util.Optional;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Guide;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.MotorStrength;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;

/** What the kinds of change ask for, with what the car has now to begin from. */
final class Asks {
    private static final String HEAVIER = "How much heavier the new part is, if weighed";
    private static final String NAME = "Its name";

    private Asks() {}

    static List<Ask> ballastAdded(Build before) {
        return List.of(
                Ask.number(ChangeKeys.MASS, "Mass").offering(lastMass(before)),
                Ask.number(ChangeKeys.X, "Ahead of the rear axle").offering(20),
                Ask.number(ChangeKeys.Y, "Left of the centre line").optional().offering(0),
                Ask.number(ChangeKeys.Z, "Above the track").offering(4),
                Ask.text(ChangeKeys.NAME, "What it is called"));
    }

    private static double lastMass(Build before) {
        return before.setUp().ballast().stream()
                .map(piece -> piece.massG().value())
                .filter(mass -> mass > 0)
                .reduce((first, last) -> last)
                .orElse(5.0);
    }

    static List<Ask> ballastMoved(Build before) {
        List<Ballast> pieces = before.looseBallast();
        double[] place = pieces.stream()
                .findFirst()
                .map(piece -> new double[] {
                    piece.xMm().value(), piece.yMm().value(), piece.zMm().value()
                })
                .orElse(new double[] {20, 0, 4});
        return List.of(
                Ask.choice(ChangeKeys.PIECE, "Which piece", names(pieces)),
                Ask.number(ChangeKeys.X, "Ahead of the rear axle").offering(place[0]),
                Ask.number(ChangeKeys.Y, "Left of the centre line").offering(place[1]),
                Ask.number(ChangeKeys.Z, "Above the track").offering(place[2]));
    }

    static List<Ask> ballastRemoved(Build before) {
        return List.of(Ask.choice(ChangeKeys.PIECE, "Which piece", names(before.looseBallast())));
    }

    private static List<String> names(List<Ballast> pieces) {
        return pieces.stream().map(Ballast::name).toList();
    }

    static List<Ask> tyresFitted(Build before) {
        RearTyre now = before.setUp().rearTyre();
        return List.of(
                Ask.number(RearTyre.DIAMETER, "Diameter")
                        .offering(now.diameterMm().value()),
                Ask.number(RearTyre.GRIP, "Grip, by tilt board")
                        .offering(now.grip().value()),
                Ask.text(ChangeKeys.NAME, NAME),
                Ask.number(ChangeKeys.HEAVIER, HEAVIER).optional());
    }

    static List<Ask> tyresTrued(Build before) {
        double now = before.setUp().rearTyre().diameterMm().value();
        return List.of(Ask.number(RearTyre.DIAMETER, "Diameter now").offering(now - 0.2));
    }

    static List<Ask> guideFitted(Build before) {
        return List.of(
                Ask.number(Guide.BLADE_DEPTH, "Depth of the blade")
                        .offering(before.setUp().guide().bladeDepthMm().value()),
                Ask.text(ChangeKeys.NAME, NAME),
                Ask.number(Chassis.GUIDE_TO_REAR_AXLE, "Pivot to rear axle, where it moved")
                        .optional(),
                Ask.number(ChangeKeys.HEAVIER, HEAVIER).optional());
    }

    static List<Ask> shimAdded(Build before) {
        return List.of(Ask.number(Trim.SHIM, "Thickness").offering(lastShim(before)));
    }

    static List<Ask> shimRemoved(Build before) {
        return List.of(Ask.number(Trim.SHIM, "Thickness").offering(lastShim(before)));
    }

    private static double lastShim(Build before) {
        List<Double> stack = before.trim().shimsMm();
        return stack.isEmpty() ? 0.25 : stack.get(stack.size() - 1);
    }

    static List<Ask> frontGap(Build before) {
        return List.of(Ask.number(Trim.FRONT_GAP, "Front tyres above the track, guide seated")
                .offering(before.trim().frontGapMm().orElse(0)));
    }

    static List<Ask> gears(Build before) {
        Gears now = before.setUp().gears();
        return List.of(
                Ask.number(Gears.PINION_TEETH, "Teeth of the pinion")
                        .offering(now.pinionTeeth().value()),
                Ask.number(Gears.AXLE_TEETH, "Teeth of the axle gear")
                        .offering(now.axleTeeth().value()));
    }

    static List<Ask> motor(Build before) {
        Motor now = before.setUp().motor();
        Ask torque = Ask.number(Motor.STALL_TORQUE, "Stall torque").optional();
        Ask current = Ask.number(Motor.STALL_CURRENT, "or stall current").optional();
        boolean byTorque = now.strength() instanceof MotorStrength.StallTorque;
        return List.of(
                Ask.number(Motor.NO_LOAD_RPM, "Speed running free")
                        .offering(now.noLoadRpm().value()),
                Ask.number(Motor.TEST_VOLTAGE, "at").offering(now.testVoltageV().value()),
                Ask.number(Motor.NO_LOAD_CURRENT, "Current running free")
                        .offering(now.noLoadCurrentA().value()),
                byTorque
                        ? torque.offering(
                                now.readings().get(Motor.STALL_TORQUE.name()).value())
                        : torque,
                byTorque
                        ? current
                        : current.offering(
                                now.readings().get(Motor.STALL_CURRENT.name()).value()),
                Ask.number(Motor.ROTOR_INERTIA, "Rotor inertia")
                        .offering(now.rotorInertiaGmm2().value()),
                Ask.text(ChangeKeys.NAME, NAME),
                Ask.number(ChangeKeys.HEAVIER, HEAVIER).optional(),
                Ask.number(ChangeKeys.X, "Where it sits, ahead of the rear axle")
                        .optional());
    }

    static List<Ask> motorBedded(Build before) {
        return List.of(
                Ask.number(ChangeKeys.MINUTES, "Minutes run").optional(),
                Ask.number(Motor.TEST_VOLTAGE, "at").optional(),
                Ask.text(ChangeKeys.WHAT, "What was done"));
    }

    static List<Ask> magnet(Build before) {
        Optional<Magnet> now = before.setUp().magnet();
        return List.of(
                Ask.number(Magnet.DOWNFORCE, "Pull at the height it has")
                        .offering(now.map(fitted -> fitted.downforceG().value()).orElse(60.0)),
                Ask.number(Magnet.X, "Ahead of the rear axle")
                        .offering(now.map(fitted -> fitted.xMm().value()).orElse(15.0)),
                Ask.text(ChangeKeys.NAME, NAME),
                Ask.number(ChangeKeys.HEAVIER, "How much heavier the car is for it, if weighed")
                        .optional());
    }

    static List<Ask> magnetRemoved(Build before) {
        return List.of(Ask.number(ChangeKeys.MASS, "What it weighs, if weighed").optional());
    }

    static List<Ask> trackWidth(Build before) {
        Chassis now = before.setUp().chassis();
        return List.of(
                Ask.number(Chassis.REAR_TRACK, "Rear track, between the tyres' middles")
                        .offering(now.rearTrackMm().value()),
                Ask.number(Chassis.FRONT_TRACK, "Front track")
                        .offering(now.frontTrackMm().value()));
    }

    static List<Ask> bodyFloat(Build before) {
        return List.of(
                Ask.number(Trim.BODY_TURNS, "Screws backed off by, in turns")
                        .optional()
                        .offering(before.trim().bodyTurns().orElse(1)),
                Ask.text(ChangeKeys.EDGES, "Edges relieved, and where"));
    }

    static List<Ask> braid(Build before) {
        return List.of(
                Ask.text(ChangeKeys.NAME, NAME),
                Ask.number(Guide.BRAID_DRAG, "Drag along the rails, if measured")
                        .optional(),
                Ask.number(SetUp.PICKUP, "Resistance, if measured").optional());
    }

    static List<Ask> oiled(Build before) {
        return List.of(Ask.text(ChangeKeys.WHERE, "Where"));
    }

    static List<Ask> noted(Build before) {
        return List.of(Ask.text(ChangeKeys.WHAT, "What was done").needed());
    }
}
