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

    /** The number with its unit. */
    public String shown() {
        return value.isPresent() ? shown(value.getAsDouble()) : Figures.NONE;
    }

    private String shown(double number) {
        String text = Figures.fixed(number, decimals);
        return unit.isEmpty() ? text : text + " " + unit;
    }
}
