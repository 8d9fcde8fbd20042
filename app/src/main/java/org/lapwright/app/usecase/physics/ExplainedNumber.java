package org.lapwright.app.usecase.physics;

import java.util.List;
import java.util.OptionalDouble;
import org.lapwright.app.usecase.Figures;

/**
 * One number that a set-up works out to, with its working.
 *
 * @param key its name in files and scripts
 * @param label what people call it
 * @param value in {@code unit}; empty when the car has no such number
 * @param plusMinus one standard deviation, from the doubts of the car's numbers; 0 when there is none, or no telling
 * @param unit after the number; may be empty
 * @param decimals worth showing
 * @param meaning what it says about the car, in a sentence or two
 * @param formula how it is reckoned
 * @param inputs what went in
 */
public record ExplainedNumber(
        String key,
        String label,
        OptionalDouble value,
        double plusMinus,
        String unit,
        int decimals,
        String meaning,
        String formula,
        List<Input> inputs) {
    /** Copies the list. */
    public ExplainedNumber {
        inputs = List.copyOf(inputs);
    }

    /**
     * One number that went in.
     *
     * @param symbol as the formula has it
     * @param name what it is
     * @param shown the number with its unit
     */
    public record Input(String symbol, String name, String shown) {}

    /** The number with its doubt and unit: {@code 28.5 ± 0.4 g}. */
    public String shown() {
        if (value.isEmpty()) {
            return Figures.NONE;
        }
        String text = Figures.fixed(value.getAsDouble(), decimals) + doubt();
        return unit.isEmpty() ? text : text + " " + unit;
    }

    private String doubt() {
        boolean seen = plusMinus >= 0.5 * Math.pow(10, -decimals);
        return seen ? " ± " + Figures.fixed(plusMinus, decimals) : "";
    }
}
