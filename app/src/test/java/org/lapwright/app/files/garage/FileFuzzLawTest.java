package org.lapwright.app.files.garage;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.lapwright.app.usecase.physics.PredictLap;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.LapOutcome;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.track.Track;

/** Files spoiled at random: a car or track that makes sense, or problems in sentences; never anything else. */
class FileFuzzLawTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> CARS = List.of("plain", "magnet", "soft", "tall");
    private static final List<String> TRACKS = List.of("loop", "long", "hill");
    private static final List<String> VALUES = List.of(
            "0",
            "-1",
            "1e-300",
            "1e300",
            "-1e999",
            "1e999999999",
            "0.000001",
            "123456789",
            "null",
            "true",
            "\"\"",
            "\"left\"",
            "\"\\u0000\"",
            "[]",
            "{}",
            "[[1,2]]",
            "{\"value\":3}",
            "{\"value\":3,\"plus_minus\":-1}",
            "{\"value\":50,\"plus_minus\":1e999}",
            "\"fast\"",
            "1e-999999999",
            "99999999999999999999999999999999999999");

    private static String textOf(String kind, Random random) {
        List<String> names = kind.equals("car") ? CARS : TRACKS;
        return Reference.text(names.get(random.nextInt(names.size())) + "." + kind + ".json");
    }

    private static void objects(JsonNode node, List<JsonNode> found) {
        if (node.isContainerNode() && !node.isEmpty()) {
            found.add(node);
            node.forEach(child -> objects(child, found));
        }
    }

    /** Replaces, removes or doubles a few values anywhere in the tree. */
    private static String spoiled(String text, Random random) throws JsonProcessingException {
        JsonNode tree = JSON.readTree(text);
        for (int k = random.nextInt(3); k >= 0; k--) {
            List<JsonNode> places = new ArrayList<>();
            objects(tree, places);
            JsonNode place = places.get(random.nextInt(places.size()));
            JsonNode value = JSON.readTree(VALUES.get(random.nextInt(VALUES.size())));
            if (place instanceof ArrayNode list) {
                list.set(random.nextInt(list.size()), value);
            } else if (place instanceof ObjectNode object) {
                List<String> keys = new ArrayList<>();
                object.fieldNames().forEachRemaining(keys::add);
                String key = keys.get(random.nextInt(keys.size()));
                if (random.nextInt(4) == 0) {
                    object.remove(key);
                } else if (object.get(key).isNumber() && random.nextBoolean()) {
                    object.put(key, object.get(key).doubleValue() * Math.exp(3 * random.nextGaussian()));
                } else {
                    object.set(key, value);
                }
            }
        }
        return tree.toString();
    }

    /** Changes a few characters. */
    private static String smudged(String text, Random random) {
        StringBuilder smudged = new StringBuilder(text);
        for (int k = random.nextInt(4); k >= 0 && smudged.length() > 1; k--) {
            int at = random.nextInt(smudged.length());
            switch (random.nextInt(3)) {
                case 0 -> smudged.deleteCharAt(at);
                case 1 -> smudged.insert(at, (char) random.nextInt(0x2000));
                default -> smudged.setLength(Math.max(1, at));
            }
        }
        return smudged.toString();
    }

    private static <T> void accept(FileReading<T> reading) {
        if (reading.accepted().isEmpty()) {
            assertThat(reading.problems())
                    .isNotEmpty()
                    .allSatisfy(problem -> assertThat(problem.sentence())
                            .isNotBlank()
                            .doesNotContain("NaN", "Exception", "java.")
                            .hasSizeLessThan(600));
        }
    }

    @Property(tries = 2000)
    void aSpoiledFileIsReadOrRefusedInSentences(@ForAll long seed) throws JsonProcessingException {
        Random random = new Random(seed);
        FileReading<CarFile> car = CarFile.read(spoiled(textOf("car", random), random));
        FileReading<TrackFile> track = TrackFile.read(spoiled(textOf("track", random), random));
        accept(car);
        accept(track);
        car.accepted().ifPresent(file -> {
            assertThat(CarFile.read(file.with(file.setUp()).text())
                            .accepted()
                            .orElseThrow()
                            .setUp())
                    .isEqualTo(file.setUp());
            SetUpNumbers numbers = SetUpNumbers.onBench(file.setUp());
            assertThat(numbers.toString()).doesNotContain("NaN");
        });
        track.accepted()
                .ifPresent(file -> assertThat(
                                TrackFile.read(file.with(file.track()).text())
                                        .accepted()
                                        .orElseThrow()
                                        .track())
                        .isEqualTo(file.track()));
    }

    @Property(tries = 2000)
    void smudgedTextIsReadOrRefusedInSentences(@ForAll long seed) {
        Random random = new Random(seed);
        accept(CarFile.read(smudged(textOf("car", random), random)));
        accept(TrackFile.read(smudged(textOf("track", random), random)));
    }

    @Property(tries = 300)
    void whatIsReadIsDrivenOrToldWhyNot(@ForAll long seed) throws JsonProcessingException {
        Random random = new Random(seed);
        var car = CarFile.read(spoiled(textOf("car", random), random)).accepted();
        var track = TrackFile.read(spoiled(textOf("track", random), random)).accepted();
        if (car.isPresent() && track.isPresent()) {
            drive(car.get().setUp(), track.get().track());
        }
    }

    private static void drive(SetUp car, Track track) {
        if (track.lengthM(track.lanes().get(0)) > 50) {
            return;
        }
        LapOutcome outcome;
        try {
            outcome = new PredictLap().predict(car, track, track.lanes().get(0)).outcome();
        } catch (IllegalArgumentException refused) {
            assertThat(refused.getMessage()).isNotBlank().doesNotContain("NaN");
            return;
        }
        if (outcome instanceof PredictedLap lap) {
            assertThat(lap.lapS()).isFinite().isPositive();
            assertThat(lap.slowestMps()).isFinite().isNotNegative();
        } else {
            assertThat(outcome.lapS()).isInfinite();
        }
    }
}
