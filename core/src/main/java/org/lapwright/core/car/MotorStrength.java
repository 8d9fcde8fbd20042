package org.lapwright.core.car;

import org.lapwright.core.units.Reading;

/** What is known of the motor held still at the test voltage. */
public sealed interface MotorStrength {
    /**
     * Its torque.
     *
     * @param gcm stall torque, gf·cm (1 gf·cm = 9.80665e-5 N·m)
     */
    record StallTorque(Reading gcm) implements MotorStrength {
        /** Checks that it turns at all. */
        public StallTorque {
            Motor.STALL_TORQUE.check(gcm);
        }
    }

    /**
     * Its current.
     *
     * @param ampere stall current, A
     */
    record StallCurrent(Reading ampere) implements MotorStrength {
        /** Checks that current flows. */
        public StallCurrent {
            Motor.STALL_CURRENT.check(ampere);
        }
    }
}
