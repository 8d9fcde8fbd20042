package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.app.files.garage.Reference;

/**
 * The command from file to JSON on the laps of an independent solver for the same model, itself checked against the
 * interior-point optimiser IPOPT 3.11.9; see {@code reference/lap/README.md}.
 */
class PredictCommandReferenceTest {
    @TempDir
    Path folder;

    private String file(String name) {
        return new LapFiles(folder).write(name, Reference.text(name));
    }

    @ParameterizedTest
    @CsvSource({"plain,loop", "magnet,loop", "soft,long", "tall,hill"})
    void lapsAndSpeedsAreThoseOfTheIndependentSolver(String car, String track) throws IOException {
        Spoken spoken = Spoken.of("predict", file(car + ".car.json"), file(track + ".track.json"), "--json", "--trace");
        assertThat(spoken.status()).as(spoken.err()).isZero();
        JsonNode expected = new ObjectMapper().readTree(Reference.text(car + "-" + track + ".expected.json"));
        assertThat(spoken.json().get("lanes")).hasSameSizeAs(expected.get("lanes"));
        for (int i = 0; i < expected.get("lanes").size(); i++) {
            JsonNode lane = spoken.json().get("lanes").get(i);
            JsonNode wanted = expected.get("lanes").get(i);
            assertThat(lane.get("lane")).isEqualTo(wanted.get("lane"));
            near(lane, wanted, "length_m", 0.001);
            near(lane, wanted, "lap_s", 0.3);
            near(lane, wanted, "top_speed_m_s", 0.5);
            near(lane, wanted, "slowest_m_s", 0.5);
            checkShares(lane);
            checkTrace(lane);
        }
    }

    private static void near(JsonNode lane, JsonNode wanted, String field, double percent) {
        assertThat(lane.get(field).asDouble())
                .as(field)
                .isCloseTo(wanted.get(field).asDouble(), withinPercentage(percent));
    }

    private static void checkShares(JsonNode lane) {
        double sum = 0;
        for (JsonNode share : lane.get("limits")) {
            sum += share.asDouble();
        }
        assertThat(sum).isCloseTo(1, withinPercentage(1e-7));
    }

    /** The time along the trace adds up to the lap, and its ends are the ends of the lap. */
    private static void checkTrace(JsonNode lane) {
        JsonNode trace = lane.get("trace");
        double seconds = 0;
        for (int i = 1; i < trace.size(); i++) {
            double way = trace.get(i).get("s_m").asDouble()
                    - trace.get(i - 1).get("s_m").asDouble();
            double speeds = trace.get(i).get("v_m_s").asDouble()
                    + trace.get(i - 1).get("v_m_s").asDouble();
            seconds += 2 * way / speeds;
        }
        assertThat(seconds).isCloseTo(lane.get("lap_s").asDouble(), withinPercentage(1e-6));
        assertThat(trace.get(trace.size() - 1).get("s_m").asDouble())
                .isCloseTo(lane.get("length_m").asDouble(), withinPercentage(1e-9));
    }

    @Test
    void oneLaneAloneAndTheWordsForPeople() {
        Spoken one = Spoken.of("predict", file("plain.car.json"), file("loop.track.json"), "--lane", "blue", "--json");
        assertThat(one.json().get("lanes")).hasSize(1);
        assertThat(one.json().at("/lanes/0/lane").asText()).isEqualTo("blue");
        assertThat(one.json().at("/lanes/0/interval_s").isNull())
                .as("no number is in doubt")
                .isTrue();
        assertThat(one.json().at("/lanes/0").has("trace")).isFalse();
        Spoken people = Spoken.of("predict", file("magnet.car.json"), file("loop.track.json"));
        assertThat(people.out())
                .contains("red", "1.530 s", "slide 72 %, power 28 %")
                .contains("No number of the car has a ± yet");
    }

    @Test
    void aDoubtGivesAnInterval() {
        String doubtful = new LapFiles(folder)
                .write(
                        "doubtful.json",
                        Reference.text("plain.car.json")
                                .replaceFirst(
                                        "\"grip\": ([0-9.]+)", "\"grip\": {\"value\": $1, \"plus_minus\": 0.05}"));
        JsonNode lane = Spoken.of("predict", doubtful, file("loop.track.json"), "--json")
                .json()
                .at("/lanes/0");
        double lap = lane.get("lap_s").asDouble();
        assertThat(lane.at("/interval_s/0").asDouble()).isBetween(0.9 * lap, lap);
        assertThat(lane.at("/interval_s/1").asDouble()).isBetween(lap, 1.1 * lap);
        assertThat(lane.at("/doubts/0/number").asText()).isEqualTo("rear_tyre.grip");
        assertThat(lane.at("/doubts/0/seconds").asDouble()).isNegative();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --lane green | the track has no lane 'green'; it has red, blue.
            --trace | --trace goes with --json; add it.
            """)
    void whatCannotBeDoneIsSaid(String words, String sentence) {
        Spoken spoken = Spoken.of(
                ("predict " + file("plain.car.json") + " " + file("loop.track.json") + " " + words).split(" "));
        assertThat(spoken.status()).isEqualTo(2);
        assertThat(spoken.out()).isEmpty();
        assertThat(spoken.err()).isEqualTo("lapwright: " + sentence + System.lineSeparator());
    }

    @Test
    void aWrongFileIsToldWithEveryMistake() {
        Spoken spoken = Spoken.of(
                "predict",
                new LapFiles(folder)
                        .write(
                                "wrong.json",
                                Reference.text("plain.car.json")
                                        .replaceFirst("\"wheelbase_mm\": 82", "\"wheelbase_mm\": 8200")
                                        .replaceFirst("\"no_load_rpm\": [0-9.]+", "\"no_load_rpm\": \"fast\"")),
                file("loop.track.json"));
        assertThat(spoken.status()).isEqualTo(2);
        assertThat(spoken.err())
                .contains("wrong.json: chassis.wheelbase_mm is 8200 mm; it must be from 15 to 300 mm.")
                .contains("motor.no_load_rpm is \"fast\"; it must be a number");
        assertThat(Spoken.of("predict", file("loop.track.json"), file("plain.car.json"))
                        .err())
                .contains("this is a track file (lapwright-track/1). A car file (lapwright-car/1) is wanted here.");
        assertThat(Spoken.of("predict", folder.toString(), "nowhere.json").err())
                .contains("is a folder; it should be a file with a car.");
    }

    /** A car that cannot pull itself uphill has no lap: exit status 1, and the reason. */
    @Test
    void aCarThatCannotGetRoundIsToldWhere() {
        String weak = new LapFiles(folder)
                .write(
                        "weak.json",
                        Reference.text("plain.car.json")
                                .replaceFirst("\"stall_torque_gcm\": [0-9.]+", "\"stall_torque_gcm\": 0.2"));
        Spoken spoken = Spoken.of("predict", weak, file("hill.track.json"), "--json");
        assertThat(spoken.status()).isEqualTo(1);
        JsonNode lane = spoken.json().at("/lanes/0");
        assertThat(lane.get("lap_s").isNull()).isTrue();
        assertThat(lane.at("/stuck_at/limit").asText()).isEqualTo("power");
        assertThat(lane.at("/caveats/0").asText()).startsWith("no lap: ").contains("the motor cannot pull the car on");
    }
}
