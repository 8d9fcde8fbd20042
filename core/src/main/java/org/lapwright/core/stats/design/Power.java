package org.lapwright.core.stats.design;

import org.lapwright.core.stats.NormalTail;

/**
 * Planning by the normal approximation: how much it takes to show an effect.
 *
 * @param critical what |z| has to reach, above 0: 1.96 for one look at 5 %, the height of a boundary for many
 * @param power wanted chance to reach it, 0.5 to below 1
 */
public record Power(double critical, double power) {
    /** Checks the settings. */
    public Power {
        if (!(critical > 0 && critical < Double.POSITIVE_INFINITY && power >= 0.5 && power < 1)) {
            throw new IllegalArgumentException(
                    "critical value is %s and power %s; they must be above 0 and from 0.5 to below 1"
                            .formatted(critical, power));
        }
    }

    /**
     * For a single look.
     *
     * @param alpha allowed chance of a false alarm, both sides together, above 0 and below 1
     * @param power wanted chance to show the effect, 0.5 to below 1
     * @return the settings
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static Power ofSingleLook(double alpha, double power) {
        return new Power(NormalTail.quantile(alpha / 2), power);
    }

    /** The effect, in standard errors, that is shown with the wanted chance. */
    private double reach() {
        return critical + NormalTail.quantile(1 - power);
    }

    /**
     * Information that shows an effect: s with δ√s/σ at the critical value plus the quantile of the power.
     *
     * @param effect the effect δ, not 0
     * @param sigma scatter of a value within a run σ, in the same unit, at least 0
     * @return s as {@link org.lapwright.core.stats.model.RunGls#information} counts it
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public double information(double effect, double sigma) {
        double ratio = reach() * requireNotNegative(sigma, "scatter") / requireEffect(effect);
        return ratio * ratio;
    }

    /**
     * Runs a side that show a difference between two sides.
     *
     * @param effect the difference, not 0
     * @param runVariance variance of the mean of one run, as {@link RunNoise#meanVariance} gives it
     * @return the number, not rounded
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public double runsPerSide(double effect, double runVariance) {
        double ratio = reach() / requireEffect(effect);
        return 2 * ratio * ratio * requireNotNegative(runVariance, "variance");
    }

    /**
     * The least difference that so many runs a side show.
     *
     * @param runs runs a side, above 0
     * @param runVariance variance of the mean of one run
     * @return the difference, in the unit of the values
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public double detectable(double runs, double runVariance) {
        if (!(runs > 0)) {
            throw new IllegalArgumentException("number of runs is %s; it must be above 0".formatted(runs));
        }
        return reach() * Math.sqrt(2 * requireNotNegative(runVariance, "variance") / runs);
    }

    private static double requireEffect(double effect) {
        if (!(Math.abs(effect) > 0 && Math.abs(effect) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("effect is %s; it must be finite and not 0".formatted(effect));
        }
        return effect;
    }

    private static double requireNotNegative(double value, String name) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("%s is %s; it must be finite and at least 0".formatted(name, value));
        }
        return value;
    }
}
