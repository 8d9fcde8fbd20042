package org.lapwright.app.usecase;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.OptionalDouble;
import org.lapwright.core.units.Interval;

/** How numbers are written for people: a decimal point, no grouping of digits under 10,000, the unit after a space. */
public final class Figures {
    /** What stands for a number that is not there. */
    public static final String NONE = "–";

    private static final int FEWEST_DECIMALS = 2;
    private static final int MOST_DECIMALS = 3;

    private Figures() {}

    /** A lap time with its unit, such as {@code 6.214 s}. */
    public static String seconds(double seconds) {
        return fixed(seconds, 3) + " s";
    }

    /** A number with so many decimals; a true minus sign, and none before zero. */
    public static String fixed(double value, int decimals) {
        if (Double.isInfinite(value)) {
            return value > 0 ? "∞" : "−∞";
        }
        String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
        boolean zero = text.chars().noneMatch(digit -> digit >= '1' && digit <= '9');
        return value < 0 && !zero ? "−" + text : text;
    }

    /** The same of a number that may be absent, which is {@link #NONE} then. */
    public static String fixed(OptionalDouble value, int decimals) {
        return value.isPresent() ? fixed(value.getAsDouble(), decimals) : NONE;
    }

    /** A number with its sign, such as {@code +0.07}. */
    public static String signed(double value, int decimals) {
        String text = fixed(value, decimals);
        boolean zero = text.chars().noneMatch(digit -> digit >= '1' && digit <= '9');
        return value > 0 && !zero && Double.isFinite(value) ? "+" + text : text;
    }

    /** A number in so many significant digits, without an exponent and without trailing zeros. */
    public static String significant(double value, int digits) {
        if (Double.isInfinite(value)) {
            return fixed(value, 0);
        }
        BigDecimal rounded = new BigDecimal(Math.abs(value))
                .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        String text = rounded.signum() == 0 ? "0" : rounded.toPlainString();
        return value < 0 && rounded.signum() != 0 ? "−" + text : text;
    }

    /** A share as a percentage, such as {@code 0.3 %}. */
    public static String percent(double share) {
        return significant(share * 100, 3) + " %";
    }

    /** A whole number, thousands set apart. */
    public static String count(long number) {
        return number < 10_000 ? Long.toString(number) : String.format(Locale.ROOT, "%,d", number);
    }

    /** A number of laps: {@code 1 lap}, {@code 22 laps}. */
    public static String laps(long number) {
        return count(number) + (number == 1 ? " lap" : " laps");
    }

    /** A number of passes: {@code 1 pass}, {@code 22 passes}. */
    public static String passes(long number) {
        return count(number) + (number == 1 ? " pass" : " passes");
    }

    /** How many decimals of a second it takes to tell the ends of an interval from zero and from each other. */
    public static int decimals(Interval interval) {
        int decimals = FEWEST_DECIMALS;
        while (decimals < MOST_DECIMALS && tooCoarse(interval, Math.pow(10, decimals))) {
            decimals++;
        }
        return decimals;
    }

    private static boolean tooCoarse(Interval interval, double scale) {
        boolean narrow = (interval.high() - interval.low()) * scale < 5;
        return narrow || vanishes(interval.low(), scale) || vanishes(interval.high(), scale);
    }

    private static boolean vanishes(double end, double scale) {
        return end != 0 && Math.abs(end) * scale < 0.5;
    }
}
