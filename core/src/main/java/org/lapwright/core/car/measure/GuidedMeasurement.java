package org.lapwright.core.car.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapwright.core.car.Balance;
import org.lapwright.core.car.BenchMeasurements;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.MotorStrength;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

/**
 * What can be measured at home, step by step. Doubts of instruments are common practice, no source: a kitchen scale 0.3 g, a ruler 0.3 mm, a
 * calliper 0.03 mm, a phone's tilt 0.3°, a meter 1 %.
 */
public enum GuidedMeasurement {
    /** Where the weight lies along the car. */
    TWO_SCALES("two-scales", "Weight and balance, on two scales") {
        @Override
        public List<Asked> asked() {
            return List.of(
                    Asked.of("guide", "Scale under the guide, g", WeighedCar.GUIDE_SCALE, SCALE_G),
                    Asked.of("rear", "Scale under the rear axle, g", WeighedCar.REAR_SCALE, SCALE_G));
        }

        @Override
        public SetUp into(SetUp car, Map<String, Reading> read) {
            Reading guide = need(read, "guide");
            Reading rear = need(read, "rear");
            Reading total = Derived.of(List.of(guide, rear), at -> at[0] + at[1]);
            WeighedCar mass = car.mass();
            return car.withMass(new WeighedCar(
                    total,
                    new Balance.OnTwoScales(guide, rear),
                    mass.cgLeftMm(),
                    mass.cgHeightMm(),
                    mass.yawInertiaGmm2()));
        }
    },
    /** How far the weight lies off the centre line. */
    SIDE_SCALES("side-scales", "Weight off the centre line") {
        @Override
        public List<Asked> asked() {
            return List.of(
                    Asked.of("left", "Scale under the left rear wheel, g", WeighedCar.REAR_SCALE, SCALE_G),
                    Asked.of("right", "Scale under the right rear wheel, g", WeighedCar.REAR_SCALE, SCALE_G));
        }

        /** Guide on a block in the middle: the wheels differ by the moment of the weight, m y = t/2 (left − right). */
        @Override
        public SetUp into(SetUp car, Map<String, Reading> read) {
            WeighedCar mass = car.mass();
            Reading left = Derived.of(
                    List.of(
                            need(read, "left"),
                            need(read, "right"),
                            mass.totalG(),
                            car.chassis().rearTrackMm()),
                    at -> at[3] / 2 * (at[0] - at[1]) / at[2]);
            return car.withMass(
                    new WeighedCar(mass.totalG(), mass.balance(), left, mass.cgHeightMm(), mass.yawInertiaGmm2()));
        }
    },
    /** How high the weight lies. */
    TILT_TEST("tilt-test", "Height of the weight, by tilting until the car tips") {
        @Override
        public List<Asked> asked() {
            return List.of(Asked.of("angle", "Angle at which it tips, °", TILT, TILT_DEG));
        }

        @Override
        public SetUp into(SetUp car, Map<String, Reading> read) {
            Reading edge = new Reading(car.tippingEdgeMm(), RULER_MM);
            Reading height = Derived.of(
                    List.of(edge, need(read, "angle")), at -> BenchMeasurements.cgHeightByTiltMm(at[0], at[1]));
            WeighedCar mass = car.mass();
            return car.withMass(
                    new WeighedCar(mass.totalG(), mass.balance(), mass.cgLeftMm(), height, mass.yawInertiaGmm2()));
        }
    },
    /** How much the rear tyres grip. */
    TILT_BOARD("tilt-board", "Grip, by tilting until the tyres slide") {
        @Override
        public List<Asked> asked() {
            return List.of(Asked.of("angle", "Angle at which it slides steadily, °", TILT, TILT_DEG));
        }

        @Override
        public SetUp into(SetUp car, Map<String, Reading> read) {
            Reading grip = Derived.of(List.of(need(read, "angle")), at -> BenchMeasurements.gripByTiltBoard(at[0]));
            return car.withRearTyre(new RearTyre(car.rearTyre().diameterMm(), grip));
        }
    },
    /** How large the rear tyres are. */
    TYRE("tyre", "Rear tyre, across with a calliper") {
        @Override
        public List<Asked> asked() {
            return List.of(Asked.of("diameter", "Across the tyre, mm", RearTyre.DIAMETER, CALLIPER_MM));
        }

        @Override
        public SetUp into(SetUp car, Map<String, Reading> read) {
            return car.withRearTyre(
                    new RearTyre(need(read, "diameter"), car.rearTyre().grip()));
        }
    },
    /** How far the car goes in a turn of its tyres. */
    ROLL_OUT("roll-out", "Rear tyre, by rolling it along a ruler") {
        @Override
        public List<Asked> asked() {
            return List.of(
                    Asked.of("distance", "Way rolled, mm", WAY, RULER_MM),
                    Asked.of("turns", "Turns of the wheel", TURNS, 0.01));
        }

        @Override
        public SetUp into(SetUp car, Map<String, Reading> read) {
            Reading diameter =
                    Derived.of(List.of(need(read, "distance"), need(read, "turns")), at -> at[0] / at[1] / Math.PI);
            return car.withRearTyre(new RearTyre(diameter, car.rearTyre().grip()));
        }
    },
    /** What the motor does free and held. */
    MOTOR("motor", "Motor, running free and held for a moment") {
        @Override
        public List<Asked> asked() {
            return List.of(
                    new Asked("volts", "Volts at the motor", Motor.TEST_VOLTAGE, 0.01, 0.005),
                    new Asked("free", "Current running free, A", Motor.NO_LOAD_CURRENT, 0.002, METER),
                    new Asked("held", "Current held still, A", Motor.STALL_CURRENT, 0.01, METER),
                    new Asked("speed", "Turns a minute running free", Motor.NO_LOAD_RPM, 0, METER));
        }

        @Override
        public SetUp into(SetUp car, Map<String, Reading> read) {
            return car.withMotor(new Motor(
                    Reading.exact(need(read, "volts").value()),
                    need(read, "speed"),
                    need(read, "free"),
                    new MotorStrength.StallCurrent(need(read, "held")),
                    car.motor().rotorInertiaGmm2()));
        }
    },
    /** What has to be spun up inside the motor. */
    ROTOR("rotor", "Rotor of the motor, by weight and size") {
        @Override
        public List<Asked> asked() {
            return List.of(
                    Asked.of("mass", "Weight of the armature, g", ARMATURE, SCALE_G),
                    Asked.of("diameter", "Its diameter, mm", ARMATURE_MM, CALLIPER_MM));
        }

        /** A solid cylinder has m d²/8; slots and thin shaft take some of it, which is not known to better than 15 %. */
        @Override
        public SetUp into(SetUp car, Map<String, Reading> read) {
            Reading shape = new Reading(0.9, 0.135);
            Reading inertia = Derived.of(
                    List.of(need(read, "mass"), need(read, "diameter"), shape),
                    at -> at[2] * at[0] * at[1] * at[1] / 8);
            Motor motor = car.motor();
            return car.withMotor(new Motor(
                    motor.testVoltageV(), motor.noLoadRpm(), motor.noLoadCurrentA(), motor.strength(), inertia));
        }
    },
    /** How hard the magnet pulls. */
    MAGNET("magnet", "Pull of the magnet, on a scale") {
        @Override
        public List<Asked> asked() {
            return List.of(Asked.of("lift", "Most that the scale shows below zero, g", LIFT, SCALE_G));
        }

        /** Track and car on the scale are set to zero; the car comes off when the thread carries its weight and the pull. */
        @Override
        public SetUp into(SetUp car, Map<String, Reading> read) {
            Reading weight = new Reading(
                    car.massProperties().totalG(), car.mass().totalG().plusMinus());
            Reading pull = Derived.of(List.of(need(read, "lift"), weight), at -> at[0] - at[1]);
            if (pull.value() <= 0) {
                throw new IllegalArgumentException(
                        "the car weighs %.4g g, so nothing is left for the magnet; read the scale just before the car comes off"
                                .formatted(weight.value()));
            }
            Reading at = car.magnet().map(Magnet::xMm).orElse(new Reading(0, 5));
            return car.withMagnet(Optional.of(new Magnet(pull, at)));
        }
    };

    private static final double SCALE_G = 0.3;
    private static final double RULER_MM = 0.3;
    private static final double CALLIPER_MM = 0.03;
    private static final double TILT_DEG = 0.3;
    private static final double METER = 0.01;
    private static final NumberKey TILT = new NumberKey("", "tilt_deg", 1, 85);
    private static final NumberKey WAY = new NumberKey("", "way_mm", 20, 20_000);
    private static final NumberKey LIFT = new NumberKey("", "lift_g", 1, 5000);
    private static final NumberKey TURNS = new NumberKey("", "turns", 1, 200);
    private static final NumberKey ARMATURE = new NumberKey("", "armature_g", 0.5, 300);
    private static final NumberKey ARMATURE_MM = new NumberKey("", "armature_mm", 3, 60);

    private final String code;
    private final String title;

    GuidedMeasurement(String code, String title) {
        this.code = code;
        this.title = title;
    }

    /** Its name in addresses; fixed. */
    public String code() {
        return code;
    }

    /** What people call it. */
    public String title() {
        return title;
    }

    /** The one with a code, if there is one. */
    public static Optional<GuidedMeasurement> find(String code) {
        return Arrays.stream(values()).filter(each -> each.code.equals(code)).findFirst();
    }

    /** What to read. */
    public abstract List<Asked> asked();

    /**
     * The car with what was measured.
     *
     * @param read every quantity asked for, by its code
     * @throws IllegalArgumentException if something is missing, or the car would make no sense with it
     */
    public abstract SetUp into(SetUp car, Map<String, Reading> read);

    private static Reading need(Map<String, Reading> read, String code) {
        Reading reading = read.get(code);
        if (reading == null) {
            throw new IllegalArgumentException(code + " was not read; give at least one reading");
        }
        return reading;
    }
}
