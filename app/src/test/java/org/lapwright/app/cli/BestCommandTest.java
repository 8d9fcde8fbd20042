package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The commands {@code best} and {@code even}. */
class BestCommandTest {
    private static final String CAR = example("dunlin.car.json");
    private static final String OTHER = example("greenshank.car.json");
    private static final String TRACK = example("shed-loop.track.json");

    private static String example(String name) {
        return Path.of("src/main/resources/example", name).toString();
    }

    @Test
    void stepsAddUpToTheLap() {
        Spoken spoken = Spoken.of("best", CAR, TRACK, "--json");
        assertThat(spoken.status()).isZero();
        JsonNode found = spoken.json();
        double lapS = found.path("was_s").asDouble();
        assertThat(found.path("steps")).isNotEmpty();
        for (JsonNode step : found.path("steps")) {
            lapS -= step.path("gain_s").asDouble();
            assertThat(step.path("lap_s").asDouble()).isCloseTo(lapS, within(1e-9));
            assertThat(step.path("change").asText()).isNotBlank();
            assertThat(step.path("interval_s").get(0).asDouble())
                    .isLessThanOrEqualTo(step.path("interval_s").get(1).asDouble());
        }
        assertThat(found.path("lap_s").asDouble()).isCloseTo(lapS, within(1e-9));
        assertThat(found.path("predictions").asInt()).isGreaterThan(1000);
    }

    @Test
    void peopleReadTheSteps() {
        Spoken spoken = Spoken.of("best", CAR, TRACK, "--lane", "red", "--most-mass", "90");
        assertThat(spoken.out()).contains("as it is", "at best", "1. ", "minutes of work", "one step at a time");
    }

    @Test
    void whatIsWrongIsSaid() {
        assertThat(Spoken.of("best", CAR).status()).isEqualTo(2);
        assertThat(Spoken.of("best", CAR, TRACK, "--lane", "mauve").err()).contains("mauve");
        assertThat(Spoken.of("even", CAR, OTHER, TRACK, "--held", "0.9").err()).contains("give two");
        assertThat(Spoken.of("even", CAR, OTHER, TRACK, "--held", "0.9,7").err())
                .contains("from 0.5 to 1");
    }

    @Test
    void twoCarsAreMadeLevel() {
        Spoken spoken = Spoken.of("even", CAR, OTHER, TRACK);
        assertThat(spoken.status()).isZero();
        assertThat(spoken.out()).contains("Dunlin does", "Greenshank does", "it then does");
        JsonNode way = Spoken.of("even", CAR, OTHER, TRACK, "--json").json();
        double slower =
                Math.max(way.path("first_s").asDouble(), way.path("second_s").asDouble());
        assertThat(way.path("ways"))
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each.path("lap_s").asDouble()).isCloseTo(slower, within(0.01)));
        assertThat(Spoken.of("even", CAR, CAR, TRACK, "--lanes", "red,red").out())
                .contains("They are level");
    }
}
