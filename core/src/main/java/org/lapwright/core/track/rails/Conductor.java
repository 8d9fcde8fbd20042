package org.lapwright.core.track.rails;

import org.lapwright.core.track.Power;
import org.lapwright.core.units.Check;

/**
 * A rail or a wire at 20 °C.
 *
 * @param resistivityOhmM resistivity, ohm m
 * @param areaMm2 cross-section, mm²
 */
public record Conductor(double resistivityOhmM, double areaMm2) {
    /**
     * Resistivity of annealed copper at 20 °C, ohm m: 1/58 ohm mm²/m, the International Annealed Copper Standard, from
     * memory; the table of preproom.org rounds it to 1.72e-8.
     */
    public static final double COPPER_OHM_M = 1 / 58e6;

    /** Resistivity of carbon steel 1010 at 20 °C, ohm m (table of kutayzorlu.com); rails of other steel may have more. */
    public static final double STEEL_OHM_M = 1.43e-7;

    /**
     * Diameter of gauge 36, mm, and ratio and number of steps up to gauge 0000 (rule of the American wire gauge,
     * wp.1728.org).
     */
    private static final double GAUGE_36_MM = 0.127;

    private static final double GAUGE_RATIO = 92;
    private static final double GAUGE_STEPS = 39;

    /** Checks both numbers. */
    public Conductor {
        Check.inRange(resistivityOhmM, 1e-8, 1e-4, "resistivity", "ohm m");
        Check.inRange(areaMm2, 1e-3, 1e3, "cross-section", "mm²");
    }

    /**
     * A solid copper wire by its American wire gauge.
     *
     * @param gauge 0 to 40
     */
    public static Conductor copperOfGauge(int gauge) {
        double diameter = gaugeDiameterMm(gauge);
        return new Conductor(COPPER_OHM_M, Math.PI * diameter * diameter / 4);
    }

    /** Diameter of an American wire gauge, 0.127 · 92^((36 − n)/39) mm. */
    public static double gaugeDiameterMm(int gauge) {
        return GAUGE_36_MM * Math.pow(GAUGE_RATIO, (36 - Check.inRange(gauge, 0, 40, "wire gauge")) / GAUGE_STEPS);
    }

    /** Resistance of one metre, ohm per m. */
    public double ohmPerM() {
        return resistivityOhmM / (areaMm2 * 1e-6);
    }

    /** Resistance of one metre there and back, ohm per m: what {@link Power} calls the resistance of a metre of lap. */
    public double pairOhmPerM() {
        return 2 * ohmPerM();
    }
}
