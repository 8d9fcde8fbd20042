package org.lapwright.core.units;

/**
 * Checks that return the value they checked, so that a constructor can say what it needs in one line.
 *
 * <p>Messages name the field, the value, the unit and the allowed range, because they reach the racer unchanged.
 */
public final class Check {
    private Check() {}

    /**
     * A finite number inside a closed range.
     *
     * @param value the number to check
     * @param min least allowed value
     * @param max greatest allowed value
     * @param name what the number is, as the racer knows it
     * @param unit its unit, or an empty text for a pure number
     * @return {@code value}, with -0.0 turned into 0.0
     * @throws IllegalArgumentException if the value is NaN, infinite or outside the range
     */
    public static double inRange(double value, double min, double max, String name, String unit) {
        if (!(value >= min && value <= max)) {
            throw new IllegalArgumentException("%s is %s; it must be from %s to %s"
                    .formatted(name, withUnit(value, unit), number(min), withUnit(max, unit)));
        }
        return value + 0.0;
    }

    /**
     * A whole number inside a closed range.
     *
     * @param value the number to check
     * @param min least allowed value
     * @param max greatest allowed value
     * @param name what the number is, as the racer knows it
     * @return {@code value}
     * @throws IllegalArgumentException if the value is outside the range
     */
    public static int inRange(int value, int min, int max, String name) {
        if (value < min || value > max) {
            throw new IllegalArgumentException("%s is %d; it must be from %d to %d".formatted(name, value, min, max));
        }
        return value;
    }

    /**
     * A text that says something.
     *
     * @param text the text to check
     * @param maxLength greatest number of characters after trimming
     * @param name what the text is, as the racer knows it
     * @return the trimmed text
     * @throws IllegalArgumentException if the text is blank or too long
     */
    public static String text(String text, int maxLength, String name) {
        String trimmed = text.strip();
        if (trimmed.isEmpty()) {
            throw new IllegalArgumentException(name + " is empty; it needs at least one character");
        }
        if (trimmed.length() > maxLength) {
            throw new IllegalArgumentException(
                    "%s has %d characters; at most %d fit".formatted(name, trimmed.length(), maxLength));
        }
        return trimmed;
    }

    static String withUnit(double value, String unit) {
        return unit.isEmpty() ? number(value) : number(value) + " " + unit;
    }

    /** A number as messages show it: whole ones without a decimal point. */
    public static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
