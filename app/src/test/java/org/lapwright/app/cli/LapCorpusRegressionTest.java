package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lists of laps as people keep them, all invented, with the JSON that they have to give.
 *
 * <p>The fourteen laps are the same in every shape: 7.412 from standstill, 9.870 with an off, 12.861 with a missed gate.
 * Their pace and drift were worked out apart from this program, as medians over all pairs; the rest of the JSON was
 * written by it and looked over.
 */
class LapCorpusRegressionTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "scrap.txt",
                "message.txt",
                "one-row.txt",
                "quoted.txt",
                "minutes.txt",
                "backwards.txt",
                "spreadsheet.csv",
                "other-columns.csv"
            })
    void theSameFourteenLapsInAnyShape(String file) throws IOException, URISyntaxException {
        Spoken spoken = Spoken.of("laps", path(file).toString(), "--json");
        assertThat(spoken.err()).isEmpty();
        assertAlike(spoken.json(), expected("fourteen-laps.json"), file);
        assertThat(spoken.json().get("pace_s").asDouble()).isCloseTo(6.4205, within(1e-12));
        assertThat(spoken.json().get("drift_s_per_lap").asDouble()).isCloseTo(-0.0003, within(1e-12));
    }

    @Test
    void aSessionGivesItsVerdict() throws IOException, URISyntaxException {
        Spoken spoken = Spoken.of("verdict", "--session", path("session.csv").toString(), "--json");
        assertAlike(spoken.json(), expected("session.json"), "session.csv");
    }

    @Test
    void twoSessionsGiveAListOfVerdicts() throws IOException, URISyntaxException {
        Spoken spoken =
                Spoken.of("verdict", "--session", path("two-sessions.csv").toString(), "--plan", "ABBA x 8", "--json");
        assertAlike(spoken.json(), expected("two-sessions.json"), "two-sessions.csv");
    }

    private static Path path(String name) throws URISyntaxException {
        return Path.of(Objects.requireNonNull(LapCorpusRegressionTest.class.getResource("/laps/" + name))
                .toURI());
    }

    private static JsonNode expected(String name) throws IOException, URISyntaxException {
        return JSON.readTree(path(name).toFile());
    }

    /** The same names in the same order, the same texts, the same numbers up to the last digits. */
    private static void assertAlike(JsonNode found, JsonNode expected, String where) {
        assertThat(found.getNodeType()).as(where).isEqualTo(expected.getNodeType());
        assertThat(found.size()).as(where).isEqualTo(expected.size());
        if (expected.isObject()) {
            assertThat(found.fieldNames())
                    .toIterable()
                    .as(where)
                    .containsExactlyElementsOf(() -> expected.fieldNames());
            expected.fieldNames()
                    .forEachRemaining(name -> assertAlike(found.get(name), expected.get(name), where + "/" + name));
        } else if (expected.isArray()) {
            for (int i = 0; i < expected.size(); i++) {
                assertAlike(found.get(i), expected.get(i), where + "/" + i);
            }
        } else if (expected.isNumber()) {
            double number = expected.asDouble();
            assertThat(found.asDouble()).as(where).isCloseTo(number, within(1e-9 * Math.max(1, Math.abs(number))));
        } else {
            assertThat(found).as(where).isEqualTo(expected);
        }
    }
}
