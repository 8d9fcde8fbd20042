package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LapsCommandTest {
    @TempDir
    Path folder;

    private LapFiles files;

    @BeforeEach
    void prepare() {
        files = new LapFiles(folder);
    }

    @Test
    void theFieldsAreThoseThatStayFixed() {
        JsonNode json = Spoken.of("laps", files.before(), "--json").json();
        assertThat(json.fieldNames())
                .toIterable()
                .containsExactly("laps", "pace_s", "spread_s", "best_s", "drift_s_per_lap");
        assertThat(json.get("laps")).hasSize(12);
        assertThat(json.get("laps").get(11).toString()).isEqualTo("{\"lap\":12,\"lap_s\":6.38,\"kind\":\"clean\"}");
        assertThat(json.get("best_s").asDouble()).isEqualTo(6.36);
    }

    @Test
    void aSingleLapHasAPaceAndNoSpread() {
        JsonNode json =
                Spoken.of("laps", files.write("one.txt", "6.2"), "--json").json();
        assertThat(json.get("pace_s").asDouble()).isEqualTo(6.2);
        assertThat(json.get("spread_s").isNull()).isTrue();
        assertThat(json.get("drift_s_per_lap").isNull()).isTrue();
    }

    @Test
    void peopleReadWhatWasLeftOutAndWhy() {
        Spoken spoken = Spoken.of("laps", files.write("off.txt", LapFiles.BEFORE + " 9.1 12.8"));
        assertThat(spoken.status()).isZero();
        assertThat(spoken.err()).isEmpty();
        assertThat(spoken.out())
                .startsWith("Read as 14 laps, decimal point.\n")
                .contains("\nLeft out: 1 off, 1 off-or-missed.\n")
                .contains("\n  lap 13        9.100  off            42 % over the pace of 6.400 s around it")
                .doesNotContainPattern("(?m) $");
        assertThat(Spoken.of("laps", files.before()).out()).endsWith("\nEvery lap counts.\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    6,214,6,301 | --comma=decimal | 6.214 6.301
                    6,214,6,301 | --comma=Separates | 6.0 214.0 6.0 301.0
                    6214 6301 | --unit=ms | 6.214 6.301
                    1214 1301 | --unit=s | 1214.0 1301.0
                    zone;total/3,1;6,214/3,2;6,301 | --column=Total | 6.214 6.301
                    """)
    void anAnswerIsTakenOnTheCommandLine(String text, String answer, String laps) {
        String file = files.write("asked.txt", text.replace('/', '\n'));
        StringBuilder read = new StringBuilder();
        Spoken.of("laps", file, answer, "--json")
                .json()
                .get("laps")
                .forEach(lap -> read.append(' ').append(lap.get("lap_s").asDouble()));
        assertThat(read.substring(1)).isEqualTo(laps);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    6,214,6,301 | Say which: --comma=decimal (Decimal mark: the first lap is 6.214 s) or --comma=separates
                    6214 6301 | Say which: --unit=ms (Milliseconds: the first lap is 6.214 s) or --unit=s
                    zone;total/3,1;6,214/3,2;6,301 | Say which: --column=zone (zone) or --column=total (total)
                    """)
    void whatOnlyTheRacerKnowsIsAsked(String text, String question) {
        Spoken spoken = Spoken.of("laps", files.write("asked.txt", text.replace('/', '\n')));
        assertThat(spoken.status()).isEqualTo(2);
        assertThat(spoken.out()).isEmpty();
        assertThat(spoken.err()).contains("asked.txt: ").contains(question);
    }

    @Test
    void aColumnThatIsNotThereIsAskedAgain() {
        String table = files.write("table.csv", "lap,lap_s\n1,6.2\n2,6.3\n");
        assertThat(Spoken.of("laps", table, "--column", "time").err())
                .contains("There is no column time. Which column holds the lap times?")
                .contains("--column=lap_s");
    }

    @Test
    void runsOfTwoSidesInOneStintAreSaid() {
        String table = files.sessions(
                "both.csv",
                LapFiles.rows("may", 1, "before", LapFiles.BEFORE),
                LapFiles.rows("may", 2, "after", LapFiles.AFTER));
        Spoken spoken = Spoken.of("laps", table, "--json");
        assertThat(spoken.err())
                .contains("all 2 runs are described as one stint")
                .contains("verdict --session");
        assertThat(spoken.json().get("laps")).hasSize(24);
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16"})
    void aSingleDashReadsWhatIsPipedIn(String charset) {
        Spoken spoken = piped("6,214\r\n6,301\r\n6,299".getBytes(Charset.forName(charset)), "laps", "-", "--json");
        assertThat(spoken.json().get("laps").get(2).get("lap_s").asDouble()).isEqualTo(6.299);
        assertThat(piped("".getBytes(StandardCharsets.UTF_8), "laps", "-").err())
                .startsWith("lapwright: standard input: no laps in it.");
    }

    @Test
    void oneSideOfAVerdictMayBePipedIn() {
        byte[] after = LapFiles.AFTER.getBytes(StandardCharsets.UTF_8);
        Spoken spoken = piped(after, "verdict", "--before", files.before(), "--after", "-", "--json");
        assertThat(spoken.json().get("verdict").asText()).isEqualTo("faster");
    }

    private static Spoken piped(byte[] bytes, String... words) {
        InputStream usual = System.in;
        System.setIn(new ByteArrayInputStream(bytes));
        try {
            return Spoken.of(words);
        } finally {
            System.setIn(usual);
        }
    }
}
