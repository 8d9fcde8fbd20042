package org.lapwright.app.store;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What two spellings of one name have in common: letter case, runs of blanks and composed accents do not count.
 *
 * <p>Folded here and stored, because databases disagree on case. Upper before lower case, so that "ß" meets "SS" and
 * both Greek sigmas meet.
 */
final class NameKey {
    private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}]+");

    private NameKey() {}

    static String of(String name) {
        String composed = Normalizer.normalize(BLANKS.matcher(name.strip()).replaceAll(" "), Normalizer.Form.NFC);
        String folded = composed.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
        // Lower case turns a final capital sigma into its final form; one form is enough for a key.
        return Normalizer.normalize(folded.replace('ς', 'σ'), Normalizer.Form.NFC);
    }
}
