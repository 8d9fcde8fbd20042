package org.lapwright.core.car.change;

import java.util.Optional;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.MotorStrength;
import org.lapwright.core.units.Reading;

/** Gears and motor. */
public sealed interface DriveChange extends Change {
    /**
     * Other gears.
     *
     * @param pinionTeeth teeth of the pinion
     * @param axleTeeth teeth of the axle gear
     */
    record GearsFitted(Reading pinionTeeth, Reading axleTeeth) implements DriveChange {
        static GearsFitted of(Values values) {
            return new GearsFitted(values.require(Gears.PINION_TEETH), values.require(Gears.AXLE_TEETH));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.GEARS_FITTED;
        }

        @Override
        public Values values() {
            return Values.NONE.with(Gears.PINION_TEETH, pinionTeeth).with(Gears.AXLE_TEETH, axleTeeth);
        }

        @Override
        public Build apply(Build before) {
            Reading efficiency = before.setUp().gears().efficiency();
            return before.with(before.setUp().withGears(new Gears(pinionTeeth, axleTeeth, efficiency)));
        }

        @Override
        public String sentence(Build before) {
            return "gears %s/%s instead of %s/%s"
                    .formatted(
                            Say.number(pinionTeeth),
                            Say.number(axleTeeth),
                            Say.number(before.setUp().gears().pinionTeeth()),
                            Say.number(before.setUp().gears().axleTeeth()));
        }
    }

    /**
     * Another motor.
     *
     * @param name what the racer calls it; may be empty
     * @param motor its numbers
     * @param heavierG how much more it weighs than the old one
     * @param xMm where it sits, ahead of the rear axle
     */
    record MotorFitted(String name, Motor motor, Optional<Reading> heavierG, Optional<Reading> xMm)
            implements DriveChange {
        private static final double USUAL_PLACE_MM = 25;

        static MotorFitted of(Values values) {
            Optional<Reading> torque = values.find(Motor.STALL_TORQUE);
            Optional<Reading> current = values.find(Motor.STALL_CURRENT);
            if (torque.isPresent() == current.isPresent()) {
                throw new IllegalArgumentException(
                        torque.isPresent()
                                ? "stall_torque_gcm and stall_current_a are both given; keep the one that was measured"
                                : "stall_torque_gcm is missing; give it, or stall_current_a instead");
            }
            MotorStrength strength = torque.<MotorStrength>map(MotorStrength.StallTorque::new)
                    .orElseGet(() -> new MotorStrength.StallCurrent(current.orElseThrow()));
            return new MotorFitted(
                    values.text(ChangeKeys.NAME),
                    new Motor(
                            values.require(Motor.TEST_VOLTAGE),
                            values.require(Motor.NO_LOAD_RPM),
                            values.require(Motor.NO_LOAD_CURRENT),
                            strength,
                            values.require(Motor.ROTOR_INERTIA)),
                    values.find(ChangeKeys.HEAVIER),
                    values.find(ChangeKeys.X));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.MOTOR_FITTED;
        }

        @Override
        public Values values() {
            Values values = Values.NONE.with(ChangeKeys.NAME, name);
            for (String key : motor.readings().names()) {
                values = values.with(key, motor.readings().get(key));
            }
            return values.with(ChangeKeys.HEAVIER, heavierG).with(ChangeKeys.X, xMm);
        }

        @Override
        public Build apply(Build before) {
            Build fitted =
                    new Build(before.setUp().withMotor(motor), before.trim().withFitted(PartPlace.MOTOR, name));
            double place = xMm.map(Reading::value).orElse(USUAL_PLACE_MM);
            double height = before.setUp().rearTyre().diameterMm().value() / 2;
            return PartMass.added(fitted, PartMass.MOTOR, heavierG, place, height);
        }

        @Override
        public String sentence(Build before) {
            return "motor%s fitted, %s rpm at %s V"
                    .formatted(Say.named(name), Say.number(motor.noLoadRpm()), Say.number(motor.testVoltageV()));
        }
    }

    /**
     * The motor run in, bedded in its mount, or both.
     *
     * @param minutes for how long it ran, if it did
     * @param voltageV at what voltage
     * @param what what was done, in the racer's words; may be empty
     */
    record MotorBedded(Optional<Reading> minutes, Optional<Reading> voltageV, String what) implements DriveChange {
        static MotorBedded of(Values values) {
            return new MotorBedded(
                    values.find(ChangeKeys.MINUTES), values.find(Motor.TEST_VOLTAGE), values.text(ChangeKeys.WHAT));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.MOTOR_BEDDED;
        }

        @Override
        public Values values() {
            return Values.NONE
                    .with(ChangeKeys.MINUTES, minutes)
                    .with(Motor.TEST_VOLTAGE, voltageV)
                    .with(ChangeKeys.WHAT, what);
        }

        @Override
        public Build apply(Build before) {
            return before;
        }

        @Override
        public String sentence(Build before) {
            String run = minutes.map(time -> ", %s minutes".formatted(Say.number(time))
                            + voltageV.map(volts -> " at %s V".formatted(Say.number(volts)))
                                    .orElse(""))
                    .orElse("");
            return "motor bedded%s%s".formatted(run, what.isEmpty() ? "" : ": " + what);
        }
    }
}
