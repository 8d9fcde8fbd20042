package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same words in every country: digits, decimal points, and letters without surprises in upper and lower case. */
class LocaleLawTest {
    @TempDir
    Path folder;

    private List<String[]> commands;

    @BeforeEach
    void prepare() {
        LapFiles files = new LapFiles(folder);
        String off = files.write("off.txt", LapFiles.BEFORE + " 9.1 12.8");
        String table = files.write("table.csv", "LAP_S;TIME;SIDE\n6,2;7,2;x\n");
        commands = List.of(
                new String[] {"laps", off},
                new String[] {"laps", off, "--json"},
                new String[] {"laps", table, "--column", "TIME"},
                new String[] {"verdict", "--before", off, "--after", files.after(), "--margin", "0,25"},
                new String[] {"verdict", "--before", off, "--after", files.after(), "--json", "--unit", "MS"},
                new String[] {"verdict", "--confidence", "95"},
                new String[] {"explain", "DRIFT"},
                new String[] {"verdict", "--help"});
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG", "tr-TR", "hi-IN-u-nu-deva"})
    void theOutputIsTheSame(String locale) {
        for (String[] command : commands) {
            assertThat(in(Locale.forLanguageTag(locale), command))
                    .as(String.join(" ", command))
                    .isEqualTo(in(Locale.ROOT, command));
        }
    }

    @Test
    void theLocalesInQuestionDoWriteNumbersInAnotherWay() {
        assertThat(String.format(Locale.forLanguageTag("ar-EG"), "%d", 12)).isNotEqualTo("12");
        assertThat(String.format(Locale.GERMANY, "%.1f", 1.2)).isEqualTo("1,2");
    }

    private static Spoken in(Locale locale, String... command) {
        Locale usual = Locale.getDefault();
        Locale.setDefault(locale);
        try {
            return Spoken.of(command);
        } finally {
            Locale.setDefault(usual);
        }
    }
}
