package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that nobody made for this program: each ends in a sentence that helps. */
class BadFilesTest {
    private static final String WANTED =
            "It should hold lap times in seconds, one a line, or a table with a column lap_s.";

    @TempDir
    Path folder;

    private LapFiles files;

    @BeforeEach
    void prepare() {
        files = new LapFiles(folder);
    }

    private static void assertRefused(Spoken spoken, String sentence) {
        assertThat(spoken.status()).as(spoken.err()).isEqualTo(2);
        assertThat(spoken.out()).isEmpty();
        assertThat(spoken.err()).contains(sentence).doesNotContain("\tat ");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    `` | no laps in it
                    lap_s/ | no laps in it
                    when,who/x,y | Line 1: 'when,who' is not a time.
                    lap_s,lap_s/6.2,3.1 | Two columns are called lap_s; none of the laps was taken. Give each column a name of its own.
                    lap_s,run,run/6.2,1,2 | Two columns are called run
                    NaN/-6.2/Infinity | Line 2: '-6.2' is negative.
                    6.2e0 | Line 1: '6.2e0' is not a time. Write seconds such as 6.214
                    """)
    void noLapsIsAnError(String text, String sentence) {
        Spoken spoken = Spoken.of("laps", files.write("bad.txt", text.replace('/', '\n')));
        assertRefused(spoken, sentence);
        assertThat(spoken.err()).containsPattern("no laps in it|Two columns");
    }

    @Test
    void whatIsNoFileIsSaid() {
        assertRefused(Spoken.of("laps", folder.resolve("none.txt").toString()), "none.txt: there is no such file.");
        assertRefused(Spoken.of("laps", folder.toString()), "is a folder; it should be a file with lap times.");
        assertRefused(Spoken.of("laps", ""), "A file name is empty");
        assertRefused(Spoken.of("laps", "a\0b"), "cannot be a file name");
        assertRefused(Spoken.of("laps", files.write("empty.txt", "")), WANTED);
    }

    @Test
    void aClosedFileSaysSo() throws IOException {
        Path file = Path.of(files.before());
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        assumeFalse(Files.isReadable(file), "this user may read everything");
        assertRefused(Spoken.of("laps", file.toString()), "cannot be read: you are not allowed to open it.");
    }

    @Test
    void aPictureIsOneSentence() throws IOException {
        Path file = folder.resolve("picture.png");
        Files.write(file, new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, 3, 0, 0, 7});
        Spoken spoken = Spoken.of("laps", file.toString());
        assertRefused(spoken, "picture.png: This is not text. Paste or open a list of lap times");
        assertThat(spoken.err().lines()).hasSize(1);
    }

    @Test
    void goodLapsBesideBadOnesAreUsedAndBothAreSaid() {
        Spoken spoken = Spoken.of("laps", files.write("mixed.txt", "6.2\nx\n6,3\n-6\n6.4"), "--json");
        assertThat(spoken.status()).isZero();
        assertThat(spoken.json().get("laps")).hasSize(3);
        assertThat(spoken.err())
                .contains("Line 2: 'x' is not a time.")
                .contains("Line 4: '-6' is negative.")
                .contains("the other 3 laps are used.");
        Spoken many = Spoken.of("laps", files.write("many.txt", "x1y\n".repeat(5000) + "6.2"), "--json");
        assertThat(many.err()).contains("and 4900 more problems like these.");
        assertThat(many.err().lines()).hasSize(102);
    }

    @Test
    void latinLettersAndLapNumbersTwiceDoNoHarm() throws IOException {
        Path latin = folder.resolve("latin.csv");
        Files.write(latin, "lap;lap_s;fahrer\n1;6,2;Jürgen\n1;6,3;Øre\n2;6,4;\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(Spoken.of("laps", latin.toString(), "--json").json().get("laps"))
                .extracting(lap -> lap.get("lap").asInt())
                .containsExactly(1, 1, 2);
    }

    @Test
    void aLongRowOfCommasIsAskedAboutLikeAShortOne() {
        assertRefused(
                Spoken.of("laps", files.write("row.txt", "6,214,6,301" + ",6,299".repeat(50_000))), "--comma=decimal");
    }

    @Test
    void aHundredThousandLapsAreDescribed() {
        StringBuilder laps = new StringBuilder();
        for (int i = 0; i < 100_000; i++) {
            laps.append(String.format(Locale.ROOT, "%.3f%n", 6.3 + 0.001 * (i * 7919 % 101)));
        }
        Spoken spoken = Spoken.of("laps", files.write("long.txt", laps.toString()));
        assertThat(spoken.status()).isZero();
        assertThat(spoken.out()).contains("middle of the 100,000 laps that count");
    }
}
