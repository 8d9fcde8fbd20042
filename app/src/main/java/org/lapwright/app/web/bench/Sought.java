package org.lapwright.app.web.bench;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * What somebody looks for among names: words, each anywhere in the name, in any order, whatever their case and accents.
 *
 * @param typed as it was typed, without blanks around it
 */
record Sought(String typed) {
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    /** Longer than any name of a car. */
    private static final int LONGEST = 200;

    Sought {
        String stripped = typed.strip();
        typed = stripped.substring(0, Math.min(LONGEST, stripped.length()));
    }

    boolean isEmpty() {
        return typed.isEmpty();
    }

    /** The names that it fits, in their order; all when nothing is sought. */
    <T> List<T> among(List<T> all, Function<T, String> name) {
        List<String> words = Arrays.stream(BLANKS.split(plain(typed))).toList();
        return all.stream()
                .filter(one -> {
                    String plain = plain(name.apply(one));
                    return words.stream().allMatch(plain::contains);
                })
                .toList();
    }

    /** Compatibility forms too, so that a full-width or ligature letter is found by the plain one. */
    private static String plain(String text) {
        return MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
    }
}
