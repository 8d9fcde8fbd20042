package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code fit}. */
class FitCommandTest {
    private static final String CAR = example("dunlin.car.json");
    private static final String TRACK = example("shed-loop.track.json");
    private static final double RED_S = 5.95;
    private static final double BLUE_S = 6.02;

    @TempDir
    Path folder;

    private static String example(String name) {
        return Path.of("src/main/resources/example", name).toString();
    }

    private String laps(String header, boolean withLane) throws IOException {
        StringBuilder text = new StringBuilder(header).append('\n');
        SplittableRandom chance = new SplittableRandom(3);
        for (int run = 1; run <= 10; run++) {
            boolean red = run % 2 == 1;
            for (int lap = 0; lap < 30; lap++) {
                double lapS = (red ? RED_S : BLUE_S) * Math.exp(0.012 * chance.nextGaussian());
                text.append(String.format(Locale.ROOT, "%.3f,%d", lapS, run));
                text.append(withLane ? red ? ",red" : ",blue" : "").append('\n');
            }
        }
        return Files.writeString(folder.resolve("laps.csv"), text).toString();
    }

    private static JsonNode parameter(JsonNode learned, String name) {
        for (JsonNode each : learned.path("parameters")) {
            if (each.path("name").asText().equals(name)) {
                return each;
            }
        }
        throw new AssertionError("no parameter " + name);
    }

    @Test
    void itsJsonHasTheFixedNames() throws IOException {
        Spoken spoken = Spoken.of("fit", CAR, TRACK, "--laps", laps("lap_s,run,lane", true), "--json");
        assertThat(spoken.status()).isZero();
        JsonNode learned = spoken.json();
        for (JsonNode each : learned.path("parameters")) {
            assertThat(each.path("name").asText()).isNotBlank();
            assertThat(each.path("value").isNumber()).isTrue();
            assertThat(each.path("plus_minus").asDouble()).isPositive();
        }
        double lapS = learned.path("lap_s").asDouble();
        assertThat(lapS)
                .isBetween(
                        learned.path("interval_s").get(0).asDouble(),
                        learned.path("interval_s").get(1).asDouble());
        assertThat(learned.path("pace_s").asDouble()).isGreaterThan(lapS);
        assertThat(learned.path("diagnosis").path("sound").asBoolean()).isTrue();
        assertThat(learned.path("diagnosis").path("runs").asInt()).isEqualTo(10);
    }

    /** The pace that comes out is the pace that went in; half a percent is what the model may be wrong from lane to lane. */
    @Test
    void thePaceHeldIsFoundAgain() throws IOException {
        Spoken spoken = Spoken.of("fit", CAR, TRACK, "--laps", laps("lap_s,run,lane", true), "--json");
        JsonNode red = spoken.json().path("lanes").get(0);
        assertThat(red.path("measured_s").asDouble()).isCloseTo(RED_S, within(0.03));
        assertThat(red.path("pace_s").asDouble()).isCloseTo(RED_S, within(0.06));
    }

    /** Nobody beats physics: laps at 99 % of the best lap as written mean that something is better than it was believed. */
    @Test
    void lapsFasterThanBelievedMeanMoreGrip() throws IOException {
        JsonNode grip = parameter(
                Spoken.of("fit", CAR, TRACK, "--laps", laps("lap_s,run,lane", true), "--json")
                        .json(),
                "grip");
        assertThat(grip.path("value").asDouble())
                .isGreaterThan(grip.path("before").asDouble());
        assertThat(grip.path("plus_minus").asDouble())
                .isLessThan(grip.path("before_plus_minus").asDouble());
    }

    @Test
    void peopleReadWhatTradesOffAndWhatWouldTell() throws IOException {
        Spoken spoken = Spoken.of("fit", CAR, TRACK, "--laps", laps("lap_s,run,lane", true));
        assertThat(spoken.out())
                .contains(
                        "learned from 10 runs",
                        "Driver's share of the best lap",
                        "trade off",
                        "would narrow the forecast most",
                        "Tilt board");
    }

    @Test
    void lapsThatDoNotSayTheirLaneAreTakenAsAnyAndItIsSaid() throws IOException {
        String file = laps("lap_s,run", false);
        assertThat(Spoken.of("fit", CAR, TRACK, "--laps", file).out()).contains("do not say their lane");
        Spoken told = Spoken.of("fit", CAR, TRACK, "--laps", file, "--lane", "red");
        assertThat(told.out()).doesNotContain("do not say their lane").contains("not driven");
    }

    @Test
    void aLaneThatTheTrackDoesNotHaveIsNamed() throws IOException {
        Spoken spoken = Spoken.of("fit", CAR, TRACK, "--laps", laps("lap_s,run", false), "--lane", "green");
        assertThat(spoken.status()).isEqualTo(2);
        assertThat(spoken.err()).contains("no lane 'green'", "red, blue");
    }

    @Test
    void lapsAreNeeded() {
        Spoken spoken = Spoken.of("fit", CAR, TRACK);
        assertThat(spoken.status()).isEqualTo(2);
        assertThat(spoken.err()).contains("--laps");
    }
}
