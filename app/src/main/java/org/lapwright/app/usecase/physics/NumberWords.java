package org.lapwright.app.usecase.physics;

import java.util.LinkedHashMap;
import java.util.Map;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.Drag;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Guide;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.units.NumberKey;

/**
 * A number of the car file in plain words.
 *
 * @param label what people call it
 * @param measure how to measure it at home, a sentence
 * @param usual where the usual value comes from that stands in for it; empty when there is none
 */
public record NumberWords(String label, String measure, String usual) {
    private static final Map<String, NumberWords> WORDS = new LinkedHashMap<>();

    static {
        chassis();
        mass();
        contacts();
        drive();
    }

    /** The words for a number of the car file. */
    public static NumberWords of(NumberKey key) {
        return of(key.path());
    }

    /**
     * The words for a number by its place, as {@code rear_tyre.grip} or {@code ballast[2].x_mm}. A number without words of
     * its own is called by its place.
     */
    public static NumberWords of(String path) {
        NumberWords words = WORDS.get(path.replaceAll("\\[\\d+]", ""));
        return words == null ? new NumberWords(path, "Measure it again, twice.", "") : words;
    }

    private static void chassis() {
        put(
                Chassis.GUIDE_TO_REAR_AXLE,
                "Guide to rear axle",
                "Ruler: middle of the guide's pivot to middle of the axle.");
        put(
                Chassis.WHEELBASE,
                "Wheelbase",
                "Ruler: front axle to rear axle.",
                "0.84 of guide to rear axle (common practice, no source)");
        put(Chassis.REAR_TRACK, "Rear track", "Ruler: over both rear tyres, less the width of one.");
        put(
                Chassis.FRONT_TRACK,
                "Front track",
                "Ruler: over both front tyres, less the width of one.",
                "as wide as the rear (common practice, no source)");
    }

    private static void mass() {
        put(WeighedCar.TOTAL, "Weight of the car", "Kitchen scale: the whole car, ready to race.");
        put(
                WeighedCar.CG_AHEAD,
                "Balance point ahead of the rear axle",
                "Two scales, the guide on one and the rear axle on the other; or balance the car on a round pencil.",
                "0.37 of guide to rear axle (common practice, no source)");
        put(
                WeighedCar.CG_LEFT,
                "Weight off centre (left +)",
                "Weigh the left and the right rear wheel on two scales.",
                "on the centre line (common practice, no source)");
        put(
                WeighedCar.CG_HEIGHT,
                "Height of the weight",
                "Tilt test: tilt a board sideways until the car tips, with its wheels against a strip.",
                "0.65 of the rear tyre; it lies between the axle and the top of the tyre");
        put(
                WeighedCar.YAW_INERTIA,
                "Yaw inertia",
                "Hang the car level on two long threads and time its twisting.",
                "m L²/12, as if the weight were spread evenly from guide to rear axle");
        put(WeighedCar.GUIDE_SCALE, "Scale under the guide", "Guide on this scale, rear axle on the other, car level.");
        put(
                WeighedCar.REAR_SCALE,
                "Scale under the rear axle",
                "Rear axle on this scale, guide on the other, car level.");
        put(Ballast.MASS, "Weight of the ballast", "Kitchen scale, or letter scale.");
        put(Ballast.X, "Ballast ahead of the rear axle", "Ruler.");
        put(Ballast.Y, "Ballast left of the centre line", "Ruler.");
        put(Ballast.Z, "Ballast above the track", "Ruler.");
    }

    private static void contacts() {
        put(
                Guide.BLADE_DEPTH,
                "Depth of the blade in the slot",
                "Ruler: from the braids down to the blade's edge.",
                "5 mm in 1/43, 6.5 mm in 1/32, 7 mm in 1/24 (common practice, no source)");
        put(
                Guide.SLOT_FRICTION,
                "Friction of the blade in the slot",
                "Pull the blade along the slot wall with a known weight against it.",
                "0.2; textbooks have 0.4 for dry plastic on wood, a polished slot is better");
        put(
                Guide.BRAID_DRAG,
                "Drag of the braids",
                "Tilt the track until the car rolls with its motor out, with braids and without.",
                "1 g (common practice, no source)");
        put(
                Guide.MIN_GUIDE_LOAD,
                "Least load that keeps the braids down",
                "Lift the nose on a scale until the lamp or motor flickers.",
                "2 g (common practice, no source)");
        put(RearTyre.DIAMETER, "Rear tyre diameter", "Ruler or caliper, across the tyre.");
        put(
                RearTyre.GRIP,
                "Grip of the rear tyres",
                "Tilt board: wheels locked, tilt until it slides; the tangent of the angle.",
                "1.0; rubber on hard ground is published from 0.8 to 1.05");
        put(
                Drag.ROLLING_RESISTANCE,
                "Rolling resistance",
                "Let the car roll out on the flat with its gears apart.",
                "0.02 (common practice, no source)");
        put(
                Drag.DRAG_AREA,
                "Drag area",
                "Frontal area times drag coefficient; it matters little below 5 m/s.",
                "that of a full-size car, 0.8 m², to scale");
        put(
                Magnet.DOWNFORCE,
                "Pull of the magnet",
                "Weigh the car on a scale with a steel strip at the height of the rails.");
        put(Magnet.X, "Magnet ahead of the rear axle", "Ruler: to the middle of the magnet.");
    }

    private static void drive() {
        put(Gears.PINION_TEETH, "Teeth on the motor", "Count them.");
        put(Gears.AXLE_TEETH, "Teeth on the axle", "Count them.");
        put(
                Gears.EFFICIENCY,
                "Efficiency of the gears",
                "Hard to measure at home; mesh, oil and alignment decide it.",
                "0.85, a published value for one stage");
        put(Motor.TEST_VOLTAGE, "At volts", "The voltage that the label gives with the speed.");
        put(Motor.NO_LOAD_RPM, "Motor speed", "From the label; or a microphone by the motor running free.");
        put(
                Motor.NO_LOAD_CURRENT,
                "Current running free",
                "Meter in line with the motor running free.",
                "7 % of the stall current, as small motors are published");
        put(
                Motor.STALL_TORQUE,
                "Stall torque",
                "From the label; or an arm on the axle that presses on a scale, for a second only.",
                "what a motor of that size and speed has; published toy motors lie in its range");
        put(Motor.STALL_CURRENT, "Stall current", "Meter in line, rotor held, for a second only.");
        put(
                Motor.ROTOR_INERTIA,
                "Inertia of the rotor",
                "Weigh a spare rotor: half its mass times its radius squared.",
                "that of a rotor of that size (common practice, no source)");
        put(
                SetUp.PICKUP,
                "Resistance of braids and leads",
                "Meter from braid to motor, leads touched together first.",
                "0.1 ohm (common practice, no source)");
    }

    private static void put(NumberKey key, String label, String measure) {
        put(key, label, measure, "");
    }

    private static void put(NumberKey key, String label, String measure, String usual) {
        WORDS.put(key.path(), new NumberWords(label, measure, usual));
    }
}
