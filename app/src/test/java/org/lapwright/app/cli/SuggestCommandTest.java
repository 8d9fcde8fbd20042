package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code suggest}. */
class SuggestCommandTest {
    private static final String CAR = example("dunlin.car.json");
    private static final String TRACK = example("shed-loop.track.json");

    @TempDir
    Path folder;

    private static String example(String name) {
        return Path.of("src/main/resources/example", name).toString();
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("shelf.json"), text).toString();
    }

    @Test
    void itsJsonHasTheFixedNames() {
        Spoken spoken = Spoken.of("suggest", CAR, TRACK, "--json");
        assertThat(spoken.status()).isZero();
        assertThat(spoken.json()).isNotEmpty().allSatisfy(SuggestCommandTest::checkOne);
    }

    private static void checkOne(JsonNode one) {
        assertThat(one.path("change").asText()).isNotBlank();
        assertThat(one.path("gain_s").asDouble()).isPositive();
        assertThat(one.path("interval_s").get(0).asDouble())
                .isLessThanOrEqualTo(one.path("interval_s").get(1).asDouble());
        assertThat(one.path("chance").asDouble()).isBetween(0.5, 1.0);
        assertThat(one.path("effort_min").asDouble()).isPositive();
        assertThat(one.has("laps_to_prove")).isTrue();
        assertThat(one.path("why").asText()).endsWith(".");
    }

    @Test
    void peopleReadWhyAndHowManyLaps() {
        Spoken spoken = Spoken.of("suggest", CAR, TRACK, "--lane", "red");
        assertThat(spoken.out()).contains("1. ", "faster (9 in 10:", "laps would prove it", "A guess of the model");
    }

    @Test
    void theClassIsKept() {
        Spoken spoken = Spoken.of("suggest", CAR, TRACK, "--most-mass", "80", "--json");
        assertThat(spoken.json()).noneMatch(one -> one.path("change").asText().contains("added"));
    }

    @Test
    void partsOnTheShelfAreTried() throws IOException {
        String shelf = file("""
                {"format": "lapwright-shelf/1", "parts": [
                  {"kind": "tyres-fitted", "name": "soft", "diameter_mm": 19.8, "grip": {"value": 1.6, "plus_minus": 0.05}}]}
                """);
        Spoken spoken = Spoken.of("suggest", CAR, TRACK, "--shelf", shelf, "--json");
        assertThat(spoken.json()).anyMatch(one -> one.path("change").asText().contains("tyres “soft” fitted"));
    }

    @Test
    void badShelvesAreNamed() throws IOException {
        assertThat(Spoken.of("suggest", CAR, TRACK, "--shelf", file("{}")).err())
                .contains("format is missing");
        assertThat(Spoken.of(
                                "suggest",
                                CAR,
                                TRACK,
                                "--shelf",
                                file("{\"format\":\"lapwright-shelf/1\",\"parts\":[{\"kind\":\"wings\"},"
                                        + "{\"kind\":\"tyres-fitted\",\"diameter_mm\":900,\"grip\":1}]}"))
                        .err())
                .contains("parts[0]: kind is \"wings\"", "tyres-fitted", "parts[1]", "900", "from 5 to 80 mm");
    }

    @Test
    void badInputIsNamed() {
        Spoken lane = Spoken.of("suggest", CAR, TRACK, "--lane", "purple");
        assertThat(lane.status()).isEqualTo(2);
        assertThat(lane.err()).contains("purple", "red");
        assertThat(Spoken.of("suggest", CAR, CAR).status()).isEqualTo(2);
        assertThat(Spoken.of("suggest", "-", "-").err()).contains("read only once");
    }

    /** Laps far faster than the numbers say mean more grip; what is tried on such cars gains otherwise. */
    @Test
    void lapsOfTheCarChangeWhatIsWorthTrying() throws IOException {
        Path laps = Files.writeString(
                folder.resolve("laps.txt"), "5.62\n5.65\n5.63\n5.66\n5.61\n5.64\n5.63\n5.62\n5.65\n5.64\n");
        Spoken with = Spoken.of("suggest", CAR, TRACK, "--lane", "red", "--laps", laps.toString(), "--json");
        Spoken without = Spoken.of("suggest", CAR, TRACK, "--lane", "red", "--json");
        assertThat(with.json()).isNotEmpty();
        assertThat(with.json().get(0).path("gain_s").asDouble())
                .isNotEqualTo(without.json().get(0).path("gain_s").asDouble());
        assertThat(Spoken.of("suggest", CAR, TRACK, "--lane", "green", "--laps", laps.toString())
                        .err())
                .contains("no lane 'green'");
    }
}
