package org.lapwright.app.usecase.physics;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Names as people put them: numbers in them by their size ("Plover 29" before "Plover 129"), letters whatever their case. */
public enum NaturalOrder implements Comparator<String> {
    /** The only one. */
    OF_NAMES;

    private static final Pattern PART = Pattern.compile("[0-9]+|[^0-9]+");
    private static final Pattern ZEROS = Pattern.compile("^0+(?=[0-9])");

    @Override
    public int compare(String one, String other) {
        List<String> left = parts(one);
        List<String> right = parts(other);
        for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
            int order = part(left.get(i), right.get(i));
            if (order != 0) {
                return order;
            }
        }
        int longer = Integer.compare(left.size(), right.size());
        return longer == 0 ? one.compareTo(other) : longer;
    }

    private static List<String> parts(String name) {
        return PART.matcher(name.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .toList();
    }

    /** Two numbers by size; anything else letter by letter, where no text begins with a digit. */
    private static int part(String one, String other) {
        if (!isNumber(one) || !isNumber(other)) {
            return one.compareTo(other);
        }
        String left = ZEROS.matcher(one).replaceFirst("");
        String right = ZEROS.matcher(other).replaceFirst("");
        // Of two numbers without leading zeros the longer one is the greater, however long both are.
        int digits = Integer.compare(left.length(), right.length());
        return digits == 0 ? left.compareTo(right) : digits;
    }

    private static boolean isNumber(String part) {
        return part.charAt(0) >= '0' && part.charAt(0) <= '9';
    }
}
