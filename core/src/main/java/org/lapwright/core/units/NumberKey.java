package org.lapwright.core.units;

import java.util.Locale;
import java.util.Map;

/**
 * The name of one number in files, forms and messages, with the range that makes sense for it.
 *
 * <p>The unit stands at the end of the name ({@code _mm}, {@code _g}), so a file never depends on who reads it.
 *
 * @param section the object that holds the number, as {@code chassis}; may be empty
 * @param name the key inside the section, as {@code wheelbase_mm}
 * @param min least value that makes sense
 * @param max greatest value that makes sense
 */
public record NumberKey(String section, String name, double min, double max) {
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("mm", "mm"),
            Map.entry("mm2", "g mm²"),
            Map.entry("cm2", "cm²"),
            Map.entry("g", "g"),
            Map.entry("v", "V"),
            Map.entry("a", "A"),
            Map.entry("rpm", "rpm"),
            Map.entry("gcm", "gf·cm"),
            Map.entry("ohm", "ohm"),
            Map.entry("m", "ohm per m"),
            Map.entry("deg", "°"));

    /** Checks the order of the ends. */
    public NumberKey {
        if (!(min <= max)) {
            throw new IllegalArgumentException("range of " + name + " is upside down");
        }
    }

    /** Section and name, as messages show them: {@code chassis.wheelbase_mm}. */
    public String path() {
        return section.isEmpty() ? name : section + "." + name;
    }

    /** The unit at the end of the name, or an empty text for a pure number. */
    public String unit() {
        String last = name.substring(name.lastIndexOf('_') + 1).toLowerCase(Locale.ROOT);
        return UNITS.getOrDefault(last, "");
    }

    /** The range that makes sense, as messages say it: {@code from 15 to 300 mm}. */
    public String range() {
        return "from " + Check.number(min) + " to " + Check.withUnit(max, unit());
    }

    /** The same number in another place, such as one entry of a list. */
    public NumberKey in(String otherSection) {
        return new NumberKey(otherSection, name, min, max);
    }

    /**
     * The number is missing.
     *
     * @return an error that says which range would be right
     */
    public IllegalArgumentException missing() {
        return new IllegalArgumentException(path() + " is missing; give a number " + range());
    }

    /**
     * The reading, if it lies in the range.
     *
     * @throws IllegalArgumentException if it does not
     */
    public Reading check(Reading reading) {
        Check.inRange(reading.value(), min, max, path(), unit());
        return reading;
    }

    /**
     * The number, if it lies in the range.
     *
     * @throws IllegalArgumentException if it does not, or is not a number
     */
    public double check(double value) {
        return Check.inRange(value, min, max, path(), unit());
    }
}
