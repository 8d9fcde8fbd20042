package org.lapwright.core.dynamics;

import org.lapwright.core.car.Motor;
import org.lapwright.core.car.MotorStrength;

/**
 * A permanent-magnet motor as a straight line: current I = (V − K ω) / R, torque K (I − I₀). One constant K serves as
 * torque constant and as back-EMF constant.
 *
 * <p>Good for a motor that is warm and below saturation. Real motors through small gearboxes lie 5 to 15 % off the line
 * at mid load, and V/I at stall charges the brushes' voltage drop to R.
 *
 * @param constantVs K, V s (equal to N m/A)
 * @param resistanceOhm R, ohm
 * @param noLoadCurrentA I₀, A
 */
public record MotorLine(double constantVs, double resistanceOhm, double noLoadCurrentA) {
    /** Standard gravity, m/s² (Resolution 2 of the 3rd CGPM, 1901). */
    static final double STANDARD_GRAVITY = 9.80665;

    /** 1 gf·cm in N·m. */
    static final double GCM_IN_NM = STANDARD_GRAVITY * 1e-5;

    /** Checks that the motor turns. */
    public MotorLine {
        if (!(constantVs > 0 && resistanceOhm > 0 && noLoadCurrentA >= 0)) {
            throw new IllegalArgumentException("a motor with constant %g V s, %g ohm and %g A does not turn"
                    .formatted(constantVs, resistanceOhm, noLoadCurrentA));
        }
    }

    /** The line through the bench test of a motor. */
    public static MotorLine of(Motor motor) {
        double volts = motor.testVoltageV().value();
        double noLoad = motor.noLoadRpm().value() * 2 * Math.PI / 60;
        double current = motor.noLoadCurrentA().value();
        if (motor.strength() instanceof MotorStrength.StallTorque torque) {
            return ofStallTorque(volts, noLoad, current, torque.gcm().value() * GCM_IN_NM);
        }
        double stall = ((MotorStrength.StallCurrent) motor.strength()).ampere().value();
        return ofStallCurrent(volts, noLoad, current, stall);
    }

    /**
     * From the stall torque: K is the positive root of I₀ ω₀ K² + T ω₀ K − T V = 0, R = K V / (T + K I₀).
     *
     * @param volts test voltage, V
     * @param noLoadRadPerS no-load speed, rad/s
     * @param noLoadA no-load current, A
     * @param stallNm stall torque, N m
     */
    public static MotorLine ofStallTorque(double volts, double noLoadRadPerS, double noLoadA, double stallNm) {
        double half = stallNm * noLoadRadPerS / 2;
        // 2 T V / (T ω₀ + √…) is the root that stays exact when I₀ goes to 0.
        double k = stallNm * volts / (half + Math.sqrt(half * half + noLoadA * noLoadRadPerS * stallNm * volts));
        return new MotorLine(k, k * volts / (stallNm + k * noLoadA), noLoadA);
    }

    /**
     * From the stall current: R = V / I, K = (V − R I₀) / ω₀.
     *
     * @param volts test voltage, V
     * @param noLoadRadPerS no-load speed, rad/s
     * @param noLoadA no-load current, A
     * @param stallA stall current, A
     */
    public static MotorLine ofStallCurrent(double volts, double noLoadRadPerS, double noLoadA, double stallA) {
        double resistance = volts / stallA;
        return new MotorLine((volts - resistance * noLoadA) / noLoadRadPerS, resistance, noLoadA);
    }

    /** Torque at a voltage and speed, N m. */
    public double torqueNm(double volts, double radPerS) {
        return constantVs * (currentA(volts, radPerS) - noLoadCurrentA);
    }

    /** Current at a voltage and speed, A. */
    public double currentA(double volts, double radPerS) {
        return (volts - constantVs * radPerS) / resistanceOhm;
    }

    /** Speed at which the motor runs free, rad/s. */
    public double noLoadRadPerS(double volts) {
        return (volts - resistanceOhm * noLoadCurrentA) / constantVs;
    }

    /** Torque at standstill, N m. */
    public double stallTorqueNm(double volts) {
        return torqueNm(volts, 0);
    }

    /** Greatest mechanical power, W, at half the no-load speed. */
    public double peakPowerW(double volts) {
        return stallTorqueNm(volts) * noLoadRadPerS(volts) / 4;
    }

    /**
     * Greatest efficiency of this line, (1 − √(I₀/I_stall))². With one constant that is exact; a motor whose stall torque
     * and stall current are both known need not lie on such a line, and small cans are 11 to 16 % worse: see
     * {@link #peakEfficiency(double, double, double, double, double)}.
     */
    public double peakEfficiency(double volts) {
        double root = 1 - Math.sqrt(noLoadCurrentA * resistanceOhm / volts);
        return root * root;
    }

    /**
     * Greatest efficiency of a motor whose stall torque and stall current were both measured: (K_t/K_e)(1 − √(I₀/I_s))²
     * with K_t = T_s/(I_s − I₀) and K_e = (V − I₀ R)/ω₀.
     *
     * @param volts test voltage, V
     * @param noLoadRadPerS no-load speed, rad/s
     * @param noLoadA no-load current, A
     * @param stallNm stall torque, N m
     * @param stallA stall current, A, above the no-load current
     */
    public static double peakEfficiency(
            double volts, double noLoadRadPerS, double noLoadA, double stallNm, double stallA) {
        MotorLine byCurrent = ofStallCurrent(volts, noLoadRadPerS, noLoadA, stallA);
        return stallNm / byCurrent.stallTorqueNm(volts) * byCurrent.peakEfficiency(volts);
    }
}
