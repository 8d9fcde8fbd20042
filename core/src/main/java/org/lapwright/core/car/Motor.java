package org.lapwright.core.car;

import java.util.List;
import java.util.Optional;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/**
 * The motor as tested on the bench.
 *
 * @param testVoltageV voltage of the test
 * @param noLoadRpm speed running free
 * @param noLoadCurrentA current running free
 * @param strength stall torque or stall current
 * @param rotorInertiaGmm2 inertia of what turns at motor speed
 */
public record Motor(
        Reading testVoltageV,
        Reading noLoadRpm,
        Reading noLoadCurrentA,
        MotorStrength strength,
        Reading rotorInertiaGmm2) {
    /** Voltage of the test. */
    public static final NumberKey TEST_VOLTAGE = new NumberKey("motor", "test_voltage_v", 0.5, 60);

    /** Speed running free. */
    public static final NumberKey NO_LOAD_RPM = new NumberKey("motor", "no_load_rpm", 500, 200_000);

    /** Current running free. */
    public static final NumberKey NO_LOAD_CURRENT = new NumberKey("motor", "no_load_current_a", 0, 20);

    /** Stall torque. */
    public static final NumberKey STALL_TORQUE = new NumberKey("motor", "stall_torque_gcm", 0.1, 20_000);

    /** Stall current. */
    public static final NumberKey STALL_CURRENT = new NumberKey("motor", "stall_current_a", 0.01, 300);

    /** Rotor inertia. */
    public static final NumberKey ROTOR_INERTIA = new NumberKey("motor", "rotor_inertia_g_mm2", 0, 100_000);

    /** The keys of its numbers, in the order in which files list them. */
    public static final List<NumberKey> KEYS =
            List.of(TEST_VOLTAGE, NO_LOAD_RPM, NO_LOAD_CURRENT, STALL_TORQUE, STALL_CURRENT, ROTOR_INERTIA);

    /** Checks each number, and that the motor has any torque. */
    public Motor {
        TEST_VOLTAGE.check(testVoltageV);
        NO_LOAD_RPM.check(noLoadRpm);
        NO_LOAD_CURRENT.check(noLoadCurrentA);
        ROTOR_INERTIA.check(rotorInertiaGmm2);
        if (strength instanceof MotorStrength.StallCurrent stall
                && stall.ampere().value() <= noLoadCurrentA.value()) {
            throw new IllegalArgumentException(
                    "motor.stall_current_a is %s A; it must be above motor.no_load_current_a (%s A), or the motor has no torque"
                            .formatted(stall.ampere().value(), noLoadCurrentA.value()));
        }
    }

    /** From the numbers of a file or form. */
    public static Motor of(Readings numbers) {
        Optional<Reading> torque = numbers.find(STALL_TORQUE);
        Optional<Reading> current = numbers.find(STALL_CURRENT);
        if (torque.isPresent() == current.isPresent()) {
            throw new IllegalArgumentException(
                    torque.isPresent()
                            ? "motor has both stall_torque_gcm and stall_current_a; keep the one that was measured"
                            : "motor.stall_torque_gcm is missing; give it, or stall_current_a instead");
        }
        return new Motor(
                numbers.require(TEST_VOLTAGE),
                numbers.require(NO_LOAD_RPM),
                numbers.require(NO_LOAD_CURRENT),
                torque.<MotorStrength>map(MotorStrength.StallTorque::new)
                        .orElseGet(() -> new MotorStrength.StallCurrent(numbers.require(STALL_CURRENT))),
                numbers.require(ROTOR_INERTIA));
    }

    /** Its numbers by key. */
    public Readings readings() {
        Readings numbers = Readings.none()
                .with(TEST_VOLTAGE, testVoltageV)
                .with(NO_LOAD_RPM, noLoadRpm)
                .with(NO_LOAD_CURRENT, noLoadCurrentA);
        numbers = strength instanceof MotorStrength.StallTorque torque
                ? numbers.with(STALL_TORQUE, torque.gcm())
                : numbers.with(STALL_CURRENT, ((MotorStrength.StallCurrent) strength).ampere());
        return numbers.with(ROTOR_INERTIA, rotorInertiaGmm2);
    }
}
