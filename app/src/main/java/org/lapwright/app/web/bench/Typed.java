package org.lapwright.app.web.bench;

import java.math.BigDecimal;
import java.util.Optional;
import org.lapwright.core.car.InstrumentDoubt;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

/**
 * A number as typed, with its doubt, before it is believed.
 *
 * @param value the number; a point or a comma marks its decimals
 * @param plusMinus one standard deviation; empty for that of the usual instrument
 */
public record Typed(String value, String plusMinus) {
    static final Typed NOTHING = new Typed("", "");

    private static final int LONGEST = 40;

    /** Strips what surrounds them; nobody types more than {@value #LONGEST} characters. */
    public Typed {
        value = shortened(value);
        plusMinus = shortened(plusMinus);
    }

    /** As it stands in a file. */
    static Typed of(Reading reading) {
        return new Typed(plain(reading.value()), plain(reading.plusMinus()));
    }

    boolean isBlank() {
        return value.isEmpty();
    }

    /**
     * The reading; empty when nothing was typed.
     *
     * @throws IllegalArgumentException with what was typed and what would be right
     */
    Optional<Reading> reading(NumberKey key) {
        if (isBlank()) {
            if (!plusMinus.isEmpty()) {
                throw new IllegalArgumentException(
                        "there is a ± but no number; give a number " + key.range() + ", or empty both");
            }
            return Optional.empty();
        }
        double number = number(value)
                .orElseThrow(() -> new IllegalArgumentException(
                        "'%s' is not a number; give one %s".formatted(value, key.range())));
        if (!(number >= key.min() && number <= key.max())) {
            throw new IllegalArgumentException("'%s' is out of range; it must be %s".formatted(value, key.range()));
        }
        return Optional.of(new Reading(number, doubt(key, number)));
    }

    /**
     * The reading without the doubt of an instrument: without a ± it is taken as exact. Empty when nothing was typed.
     *
     * @throws IllegalArgumentException with what was typed and what would be right
     */
    public Optional<Reading> exactUnlessDoubted(NumberKey key) {
        return new Typed(value, isBlank() || !plusMinus.isEmpty() ? plusMinus : "0").reading(key);
    }

    private double doubt(NumberKey key, double number) {
        if (key.name().endsWith("_teeth")) {
            return 0;
        }
        if (plusMinus.isEmpty()) {
            return rounded(InstrumentDoubt.of(key, number));
        }
        return number(plusMinus)
                .filter(doubt -> doubt >= 0 && doubt < key.max() - key.min())
                .orElseThrow(() -> new IllegalArgumentException(
                        "± '%s' is not a doubt; give 0 for exact or a positive number, as in 78 ± 0.5"
                                .formatted(plusMinus)));
    }

    /** Digits with at most one point or comma; a group mark would be taken for a decimal mark. */
    static Optional<Double> number(String text) {
        String plain = text.strip().replace('\u2212', '-').replace(',', '.');
        return plain.matches("[+-]?(\\d{1,12}(\\.\\d{0,12})?|\\.\\d{1,12})")
                ? Optional.of(Double.parseDouble(plain) + 0.0)
                : Optional.empty();
    }

    static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    private static double rounded(double value) {
        return new BigDecimal(value).round(new java.math.MathContext(3)).doubleValue();
    }

    private static String shortened(String text) {
        String stripped = text.strip();
        return stripped.length() > LONGEST ? stripped.substring(0, LONGEST) : stripped;
    }
}
