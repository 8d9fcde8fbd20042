package org.lapwright.core.car;

import org.lapwright.core.units.NumberKey;

/**
 * How far to trust a number that was measured at home, when nobody says: one standard deviation for a kitchen scale, a ruler,
 * a meter, the label of a motor. All of them are common practice, no source.
 */
public final class InstrumentDoubt {
    private static final double KITCHEN_SCALE_G = 0.5;
    private static final double RULER_MM = 0.5;
    private static final double TILT_TEST_MM = 1;
    private static final double LABEL = 0.1;
    private static final double TORQUE = 0.15;
    private static final double METER = 0.05;
    private static final double GUESSED = 0.2;
    private static final double TILT_BOARD = 0.05;

    private InstrumentDoubt() {}

    /**
     * One standard deviation of a number, in its unit.
     *
     * @param key which number
     * @param value as measured
     * @return 0 for what is counted or set: teeth, the voltage of a test
     */
    public static double of(NumberKey key, double value) {
        if (key.name().endsWith("_teeth") || key.name().equals(Motor.TEST_VOLTAGE.name())) {
            return 0;
        }
        if (key.name().equals(WeighedCar.CG_HEIGHT.name())) {
            return TILT_TEST_MM;
        }
        double size = Math.abs(value);
        return switch (key.unit()) {
            case "g" ->
                key.name().equals(Magnet.DOWNFORCE.name()) ? Math.max(KITCHEN_SCALE_G, METER * size) : KITCHEN_SCALE_G;
            case "mm" -> RULER_MM;
            case "rpm" -> LABEL * size;
            case "gf·cm" -> TORQUE * size;
            case "A" -> METER * size;
            case "" -> TILT_BOARD * size;
            default -> GUESSED * size;
        };
    }
}
