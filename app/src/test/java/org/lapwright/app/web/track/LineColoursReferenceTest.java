package org.lapwright.app.web.track;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contrast of the lines of a lap against the card they are drawn on. Source: WCAG 2.2, 1.4.11 (parts of graphics 3:1), with
 * relative luminance and contrast ratio as defined there.
 */
class LineColoursReferenceTest {
    private static final Pattern COLOUR = Pattern.compile("--((?:speed|limit)-[a-z0-9]+): #([0-9a-f]{6});");

    private static String css() throws IOException {
        try (InputStream in = LineColoursReferenceTest.class.getResourceAsStream("/web/lapwright.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The definition's own ends: black on white is 21:1. */
    @ParameterizedTest
    @CsvSource({"000000,ffffff,21.0", "777777,ffffff,4.48", "ffffff,ffffff,1.0"})
    void theFormulaGivesThePublishedRatios(String one, String other, double ratio) {
        assertThat(contrast(one, other)).isCloseTo(ratio, org.assertj.core.api.Assertions.within(0.01));
    }

    /** Light comes first in the sheet, dark second. */
    @ParameterizedTest
    @CsvSource({"0,ffffff", "1,1b2023"})
    void everyLineStandsOutFromItsCard(int theme, String card) throws IOException {
        String css = css();
        assertThat(css).contains("--card: #" + card + ";");
        List<String> found = new ArrayList<>();
        Matcher colour = COLOUR.matcher(css);
        while (colour.find()) {
            found.add(colour.group(2));
        }
        assertThat(found).hasSize(20);
        for (String line : found.subList(10 * theme, 10 * theme + 10)) {
            assertThat(contrast(line, card)).as(line + " on " + card).isGreaterThanOrEqualTo(3);
        }
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String hex) {
        return 0.2126 * channel(hex, 0) + 0.7152 * channel(hex, 2) + 0.0722 * channel(hex, 4);
    }

    private static double channel(String hex, int at) {
        double share = Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
