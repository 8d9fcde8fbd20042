package org.lapwright.app.web.bench;

import java.util.List;
import java.util.stream.Stream;
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

/** The numbers of a car in the order in which the form asks for them; ballast, of which there may be many, is apart. */
enum CarKeys {
    /** Without these there is no car. */
    NEEDED(
            "What you need",
            "A kitchen scale, a ruler, and the label of the motor.",
            List.of(
                    WeighedCar.TOTAL,
                    Chassis.GUIDE_TO_REAR_AXLE,
                    Chassis.REAR_TRACK,
                    RearTyre.DIAMETER,
                    Gears.PINION_TEETH,
                    Gears.AXLE_TEETH,
                    Motor.NO_LOAD_RPM,
                    Motor.TEST_VOLTAGE)),
    /** Where its weight is. */
    BALANCE(
            "Balance and height",
            "Two scales, or the length to where it balances; not both.",
            List.of(
                    WeighedCar.GUIDE_SCALE,
                    WeighedCar.REAR_SCALE,
                    WeighedCar.CG_AHEAD,
                    WeighedCar.CG_LEFT,
                    WeighedCar.CG_HEIGHT,
                    WeighedCar.YAW_INERTIA)),
    /** The front. */
    FRONT("Front axle", "", List.of(Chassis.WHEELBASE, Chassis.FRONT_TRACK)),
    /** Tyres. */
    GRIP("Grip and drag", "", List.of(RearTyre.GRIP, Drag.ROLLING_RESISTANCE, Drag.DRAG_AREA)),
    /** Motor and gears. */
    MOTOR(
            "Motor and gears",
            "Stall torque or stall current; not both.",
            List.of(
                    Motor.STALL_TORQUE,
                    Motor.STALL_CURRENT,
                    Motor.NO_LOAD_CURRENT,
                    Motor.ROTOR_INERTIA,
                    Gears.EFFICIENCY)),
    /** Guide. */
    GUIDE(
            "Guide and braids",
            "",
            List.of(Guide.BLADE_DEPTH, Guide.SLOT_FRICTION, Guide.BRAID_DRAG, Guide.MIN_GUIDE_LOAD, SetUp.PICKUP)),
    /** Magnet. */
    MAGNET("Magnet", "Leave both empty if there is none.", List.of(Magnet.DOWNFORCE, Magnet.X));

    private final String title;
    private final String hint;
    private final List<NumberKey> keys;

    CarKeys(String title, String hint, List<NumberKey> keys) {
        this.title = title;
        this.hint = hint;
        this.keys = keys;
    }

    String title() {
        return title;
    }

    String hint() {
        return hint;
    }

    List<NumberKey> keys() {
        return keys;
    }

    static Stream<NumberKey> all() {
        return Stream.of(values()).flatMap(group -> group.keys.stream());
    }
}
