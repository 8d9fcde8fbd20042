package org.lapwright.app.files.garage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.files.Problem;
import org.lapwright.core.track.Gate;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceExtras;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Track;

class TrackFileTest {
    private static final String SHED = """
            { "format": "lapwright-track/1", "name": "Shed loop",
              "surface": { "grip_factor": 1.0, "magnetic": true },
              "lanes": [ { "name": "red", "offset_mm": 50, "colour": "#a00" }, { "name": "blue", "offset_mm": -50 } ],
              "power": { "supply_v": 12, "source_ohm": 0.6, "rail_ohm_per_m": 0.08, "taps_at": [0.0], "brake_ohm": 0.2 },
              "pieces": [ { "straight_mm": 1800, "made_of": "pine" },
                          { "radius_mm": 300, "angle_deg": 180, "turn": "left", "bank_deg": 0 },
                          { "straight_mm": 700, "rise_mm": 40 } ] }
            """;

    private static TrackFile shed() {
        return TrackFile.read(SHED).accepted().orElseThrow();
    }

    private static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (JsonProcessingException broken) {
            throw new AssertionError(text, broken);
        }
    }

    private static String problems(String text) {
        FileReading<TrackFile> reading = TrackFile.read(text);
        assertThat(reading.accepted()).isEmpty();
        return String.join(
                "\n", reading.problems().stream().map(Problem::sentence).toList());
    }

    private static Track with(Track track, List<Piece> pieces) {
        return new Track(track.name(), track.surface(), track.lanes(), track.power(), new PieceLayout(pieces));
    }

    @Test
    void theSpecimenIsReadNumberByNumber() {
        Track track = shed().track();
        assertThat(track.lanes()).extracting(lane -> lane.offsetMm()).containsExactly(50.0, -50.0);
        assertThat(track.power().brakeOhm()).isEqualTo(OptionalDouble.of(0.2));
        // Circle arc of 300 − 50 mm over half a turn, and two straights.
        assertThat(track.lengthM(track.lanes().get(0))).isCloseTo(1.8 + 0.25 * Math.PI + 0.7, within(1e-12));
    }

    @Test
    void whatIsNotChangedComesOutDigitByDigit() {
        TrackFile file = shed();
        assertThat(json(file.with(file.track()).text())).isEqualTo(json(SHED));
    }

    @Test
    void aPieceTakenOutLeavesTheOthersAsTheyWere() {
        TrackFile file = shed();
        List<Piece> pieces = new ArrayList<>(((PieceLayout) file.track().layout()).pieces());
        pieces.remove(1);
        pieces.add(0, new Piece.Turn(450, 90, false, 5, 0));
        JsonNode written = json(file.with(with(file.track(), pieces)).text()).get("pieces");
        assertThat(written.get(0).toString())
                .isEqualTo("{\"radius_mm\":450,\"angle_deg\":90,\"turn\":\"right\",\"bank_deg\":5}");
        assertThat(written.get(1)).isEqualTo(json(SHED).at("/pieces/0"));
        assertThat(written.get(2)).isEqualTo(json(SHED).at("/pieces/2"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"loop", "long", "hill"})
    void theReferenceTracksGoRoundUnchanged(String name) {
        String text = Reference.text(name + ".track.json");
        TrackFile file = TrackFile.read(text).accepted().orElseThrow();
        assertThat(json(file.with(file.track()).text())).isEqualTo(json(text));
        assertThat(TrackFile.read(TrackFile.of(file.track()).text())
                        .accepted()
                        .orElseThrow()
                        .track())
                .isEqualTo(file.track());
    }

    @Test
    void conditionsGoRoundAndAreOfOneKindOnly() {
        String text = SHED.replace("\"surface\": {", "\"surface\": { \"conditions\": \"damp\", ");
        assertThat(text).isNotEqualTo(SHED);
        TrackFile file = TrackFile.read(text).accepted().orElseThrow();
        assertThat(file.track().surface().conditions()).isEqualTo("damp");
        assertThat(TrackFile.read(TrackFile.of(file.track()).text())
                        .accepted()
                        .orElseThrow()
                        .track())
                .isEqualTo(file.track());
        Track swept = TrackFile.read(SHED).accepted().orElseThrow().track();
        assertThat(json(file.with(swept).text()).at("/surface/conditions").isMissingNode())
                .isTrue();
        assertThat(TrackFile.read(text.replace("\"damp\"", "18")).problems().toString())
                .contains("surface.conditions is 18; it must be a text");
        assertThat(TrackFile.read(text.replace("damp", "d".repeat(501)))
                        .problems()
                        .toString())
                .contains("at most 500 fit");
    }

    @Test
    void lanesArePaintedOrCalledByTheirColour() {
        String text = SHED.replaceFirst("\"#a00\"", "\"Green\"");
        TrackFile file = TrackFile.read(text).accepted().orElseThrow();
        assertThat(file.track().lanes().get(0).colour()).contains(Lane.Colour.GREEN);
        assertThat(TrackFile.read(TrackFile.of(file.track()).text())
                        .accepted()
                        .orElseThrow()
                        .track())
                .isEqualTo(file.track());
        assertThat(new Lane("Red", 0).colour()).contains(Lane.Colour.RED);
        assertThat(new Lane("left", 0).colour()).isEmpty();
        TrackFile odd =
                TrackFile.read(text.replace("Green", "mauve")).accepted().orElseThrow();
        assertThat(odd.track().lanes().get(0).painted()).isEmpty();
        assertThat(json(odd.with(odd.track()).text()).at("/lanes/0/colour").textValue())
                .isEqualTo("mauve");
    }

    @Test
    void aDrawnLineIsReadAndWritten() {
        String points = IntStream.range(0, 64)
                .mapToObj(i -> "[%s, %s]"
                        .formatted(1000 * Math.cos(2 * Math.PI * i / 64), 1000 * Math.sin(2 * Math.PI * i / 64)))
                .collect(Collectors.joining(", ", "[", "]"));
        String text = SHED.substring(0, SHED.indexOf("\"pieces\"")) + "\"points_mm\": " + points + "}";
        TrackFile file = TrackFile.read(text).accepted().orElseThrow();
        // A circle of 1 m radius, driven anticlockwise: the left lane is the inner one.
        assertThat(file.track().lengthM(file.track().lanes().get(0))).isCloseTo(2 * Math.PI * 0.95, within(1e-4));
        assertThat(json(file.with(file.track()).text())).isEqualTo(json(text));
        assertThat(TrackFile.read(TrackFile.of(file.track()).text())
                        .accepted()
                        .orElseThrow()
                        .track())
                .isEqualTo(file.track());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "radius_mm": 300 | "radius_mm": 50 | lane 'red': pieces[1]: radius_mm is 50; a lane offset by 50 mm to the inside needs a radius of at least 70 mm.
            "radius_mm": 300 | "radius_mm": 0 | pieces[1].radius_mm is 0 mm; it must be from 30 to 20000 mm.
            "turn": "left" | "turn": "lift" | pieces[1].turn is 'lift'; it must be left or right.
            "turn": "left", | `` | pieces[1].turn is missing
            "angle_deg": 180, | `` | pieces[1].angle_deg is missing; give a number from 0.5 to 720 °.
            "straight_mm": 700 | "strait_mm": 700 | pieces[2].straight_mm is missing, and so is radius_mm; a piece needs one of them.
            "straight_mm": 700 | "straight_mm": 700, "radius_mm": 300 | pieces[2].straight_mm stands beside radius_mm; a piece is either straight or a turn.
            "rise_mm": 40 | "rise_mm": 690 | rise_mm of a piece 700 mm long is 690 mm; it must be from -560 to 560 mm.
            "name": "blue" | "name": "red" | lanes has two called 'red'; give each its own name.
            "offset_mm": 50 | "offset_mm": "50" | lanes[0].offset_mm is "50"; it must be a number from -1000 to 1000 mm.
            "magnetic": true | "magnetic": 1 | surface.magnetic is 1; it must be true or false.
            "grip_factor": 1.0 | "grip_factor": 0 | surface.grip_factor is 0; it must be from 0.05 to 3.
            [0.0] | [2] | power.taps_at is 2; it must be from 0 to 1.
            [0.0] | [] | power.taps_at has 0 places; it needs from 1 to 100.
            [0.0] | ["a"] | power.taps_at[0] is "a"; it must be a number.
            "supply_v": 12 | "supply_v": -12 | power.supply_v is -12 V; it must be from 0.5 to 60 V.
            "supply_v": 12, | `` | power.supply_v is missing; give a number from 0.5 to 60 V.
            "pieces" | "points_mm" | points_mm[0] is an object; it must be two numbers in brackets, [x, y].
            "pieces" | "parts" | pieces is missing; give a list of pieces, or points_mm for a drawn line.
            "lanes" | "slots" | lanes has 0 entries; it needs from 1 to 16.
            """)
    void everyMistakeIsNamed(String right, String wrong, String sentence) {
        assertThat(SHED).contains(right);
        assertThat(problems(SHED.replaceFirst(java.util.regex.Pattern.quote(right), wrong)))
                .contains(sentence);
    }

    @Test
    void aFileOfNothingButMistakesListsTheFirstTwenty() {
        String bad = "{ \"straight_mm\": -1 }, ".repeat(200) + "{ \"straight_mm\": -1 }";
        String text = SHED.substring(0, SHED.indexOf("\"pieces\"")) + "\"pieces\": [" + bad + "]}";
        assertThat(TrackFile.read(text).problems()).hasSize(FileReading.MOST_PROBLEMS);
    }

    private static final String SPECIAL = SHED.replace(
                    "{ \"straight_mm\": 1800, \"made_of\": \"pine\" }",
                    "{ \"straight_mm\": 1800, \"grip_factor\": 0.7, \"magnetic\": false, \"lane_ends_mm\": [-50, 50] }")
            .replace(
                    "{ \"straight_mm\": 700, \"rise_mm\": 40 }",
                    "{ \"straight_mm\": 700, \"lane_ends_mm\": [50, -50] }")
            .replace("\"pieces\"", "\"gates\": [ { \"name\": \"hairpin\", \"at\": 0.4, \"seen\": true } ], \"pieces\"");

    @Test
    void whatIsDifferentOnAPieceIsReadAndWrittenDigitByDigit() {
        assertThat(TrackFile.read(SPECIAL).notes()).isEmpty();
        TrackFile file = TrackFile.read(SPECIAL).accepted().orElseThrow();
        PieceExtras extras =
                ((PieceLayout) file.track().layout()).pieces().get(0).extras();
        assertThat(extras).isEqualTo(new PieceExtras(OptionalDouble.of(0.7), Optional.of(false), List.of(-50.0, 50.0)));
        assertThat(file.track().gates()).containsExactly(new Gate("hairpin", 0.4));
        assertThat(json(file.with(file.track()).text())).isEqualTo(json(SPECIAL));
        Track moved = with(
                file.track(),
                ((PieceLayout) file.track().layout()).pieces().stream().toList());
        assertThat(TrackFile.read(file.with(moved).text())
                        .accepted()
                        .orElseThrow()
                        .track())
                .isEqualTo(moved);
    }

    @Test
    void whatCannotBeDifferentIsNamed() {
        assertThat(problems(SPECIAL.replace("[-50, 50]", "[-50, \"x\"]"))).contains("lane_ends_mm[1]", "a number");
        assertThat(problems(SPECIAL.replace("[-50, 50]", "[-50]"))).contains("pieces[0].lane_ends_mm has 1 entries");
        assertThat(problems(SPECIAL.replace("[50, -50]", "[-50, 50]"))).contains("lane 'red'", "even number of times");
        assertThat(problems(SPECIAL.replace("\"grip_factor\": 0.7", "\"grip_factor\": 70")))
                .contains("grip_factor", "70");
        assertThat(problems(SPECIAL.replace("\"magnetic\": true", "\"magnetic\": false")
                        .replace("0.7, \"magnetic\": false", "0.7, \"magnetic\": true")))
                .contains("pieces[0].magnetic is true on a track that is not magnetic");
        assertThat(problems(SPECIAL.replace("0.4", "1.4"))).contains("gates[0].at is 1.4");
    }
}
