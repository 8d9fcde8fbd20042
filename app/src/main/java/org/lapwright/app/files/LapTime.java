package org.lapwright.app.files;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One lap time as people write it: {@code 6.214}, {@code 6,214}, {@code 0:06.214}, {@code 6.214 s}, {@code 6214 ms}. */
final class LapTime {
    /** Whole part, at most 9 digits, and decimals, at most 9: anything longer is not a lap time. */
    private static final Pattern PLAIN = Pattern.compile("([0-9]{1,9})?(?:[.,]([0-9]{0,9}))?");

    private static final Pattern MINUTES = Pattern.compile("([0-9]{1,3}):([0-5][0-9]|[0-9])(?:[.,]([0-9]{1,9}))?");
    private static final Pattern UNIT = Pattern.compile("(?i)^(.*[0-9.,])\\s*(ms|msec|s|sec|secs|seconds)$");

    private LapTime() {}

    /**
     * The time in seconds, if the text is one. The sign, exponents and words for "not a number" are refused, so the
     * result is finite and not negative; whether it is a possible lap is for the caller to say.
     */
    static OptionalDouble parse(String text) {
        String token = text.strip();
        double unit = 1;
        if (!token.isEmpty() && Character.isLetter(token.charAt(token.length() - 1))) {
            Matcher withUnit = UNIT.matcher(token);
            if (withUnit.matches()) {
                token = withUnit.group(1).strip();
                unit = withUnit.group(2).toLowerCase(Locale.ROOT).startsWith("m") ? 1000 : 1;
            }
        }
        Matcher minutes = MINUTES.matcher(token);
        if (minutes.matches()) {
            double seconds = decimal(minutes.group(2), minutes.group(3));
            return OptionalDouble.of((60 * Integer.parseInt(minutes.group(1)) + seconds) / unit);
        }
        Matcher plain = PLAIN.matcher(token);
        boolean hasDigit = plain.matches()
                && (plain.group(1) != null
                        || (plain.group(2) != null && !plain.group(2).isEmpty()));
        return hasDigit ? OptionalDouble.of(decimal(plain.group(1), plain.group(2)) / unit) : OptionalDouble.empty();
    }

    /** Whether the text is digits alone. */
    static boolean isWhole(String text) {
        return !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    /** Built as one decimal text, so that 0:06.214 and 6,214 give the very same number as 6.214. */
    private static double decimal(String whole, String decimals) {
        String left = whole == null || whole.isEmpty() ? "0" : whole;
        String right = decimals == null || decimals.isEmpty() ? "0" : decimals;
        return Double.parseDouble(left + "." + right);
    }
}
