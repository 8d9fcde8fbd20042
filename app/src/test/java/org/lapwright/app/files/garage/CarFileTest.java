package org.lapwright.app.files.garage;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.files.Problem;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.units.Reading;

class CarFileTest {
    private static final String DUNLIN = """
            { "format": "lapwright-car/1", "name": "Dunlin",
              "chassis": { "guide_to_rear_axle_mm": 98, "wheelbase_mm": 82, "rear_track_mm": 50, "front_track_mm": 50,
                           "front_wheels": "touching" },
              "mass": { "total_g": { "value": 78, "plus_minus": 0.5 }, "cg_ahead_of_rear_axle_mm": 36, "cg_height_mm": 13,
                        "yaw_inertia_g_mm2": 62000 },
              "ballast": [ { "name": "left pod", "mass_g": 5, "x_mm": 20, "y_mm": 12, "z_mm": 4, "stuck_with": "putty" } ],
              "guide": { "blade_depth_mm": 6.50, "slot_friction": 0.15, "braid_drag_g": 1.0, "min_guide_load_g": 2 },
              "rear_tyre": { "diameter_mm": 20.0, "grip": 1.05, "compound": "soft" },
              "gears": { "pinion_teeth": 11, "axle_teeth": 28, "efficiency": 0.88 },
              "motor": { "test_voltage_v": 12, "no_load_rpm": 20500, "no_load_current_a": 0.12, "stall_torque_gcm": 190,
                         "rotor_inertia_g_mm2": 150 },
              "magnet": { "downforce_g": 60, "x_mm": 15 },
              "drag": { "rolling_resistance": 0.02, "drag_area_cm2": 8 },
              "pickup_ohm": 0.0,
              "notes": { "bought": 2024 } }
            """;

    private static CarFile dunlin() {
        return CarFile.read(DUNLIN).accepted().orElseThrow();
    }

    private static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (JsonProcessingException broken) {
            throw new AssertionError(text, broken);
        }
    }

    private static String problems(String text) {
        FileReading<CarFile> reading = CarFile.read(text);
        assertThat(reading.accepted()).isEmpty();
        return String.join(
                "\n", reading.problems().stream().map(Problem::sentence).toList());
    }

    @Test
    void theSpecimenIsReadNumberByNumber() {
        SetUp car = dunlin().setUp();
        assertThat(car.name()).isEqualTo("Dunlin");
        assertThat(car.mass().totalG()).isEqualTo(new Reading(78, 0.5));
        assertThat(car.ballast())
                .containsExactly(new Ballast(
                        "left pod", Reading.exact(5), Reading.exact(20), Reading.exact(12), Reading.exact(4)));
        assertThat(car.magnet().orElseThrow().downforceG()).isEqualTo(Reading.exact(60));
        assertThat(CarFile.read(DUNLIN).notes()).containsExactly("notes is not used; it is kept as it is");
    }

    @Test
    void whatIsNotChangedComesOutDigitByDigit() {
        CarFile file = dunlin();
        String same = file.with(file.setUp()).text();
        assertThat(json(same)).isEqualTo(json(DUNLIN));
        assertThat(same).contains("6.50").contains("\"stuck_with\" : \"putty\"").contains("\"bought\" : 2024");
        assertThat(CarFile.read(same).accepted().orElseThrow().setUp()).isEqualTo(file.setUp());
    }

    @Test
    void aChangeTouchesOnlyItsKeys() {
        CarFile file = dunlin();
        SetUp changed = file.setUp()
                .with("rear_tyre.diameter_mm", new Reading(19.6, 0.1))
                .withMagnet(Optional.empty());
        JsonNode written = json(file.with(changed).text());
        assertThat(written.at("/rear_tyre").toString())
                .isEqualTo("{\"diameter_mm\":{\"value\":19.6,\"plus_minus\":0.1},\"grip\":1.05,\"compound\":\"soft\"}");
        assertThat(written.has("magnet")).isFalse();
        assertThat(written.at("/guide")).isEqualTo(json(DUNLIN).at("/guide"));
        assertThat(CarFile.read(file.with(changed).text())
                        .accepted()
                        .orElseThrow()
                        .setUp())
                .isEqualTo(changed);
    }

    @Test
    void ballastKeepsWhatItsOwnEntrySays() {
        CarFile file = dunlin();
        Ballast other = new Ballast("nose", Reading.exact(3), Reading.exact(90), Reading.exact(0), Reading.exact(3));
        SetUp changed =
                file.setUp().withBallast(List.of(other, file.setUp().ballast().get(0)));
        JsonNode entries = json(file.with(changed).text()).get("ballast");
        assertThat(entries.get(0).get("name").asText()).isEqualTo("nose");
        assertThat(entries.get(1).get("stuck_with").asText()).isEqualTo("putty");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain", "magnet", "soft", "tall"})
    void theReferenceCarsGoRoundUnchanged(String name) {
        String text = Reference.text(name + ".car.json");
        CarFile file = CarFile.read(text).accepted().orElseThrow();
        assertThat(json(file.with(file.setUp()).text())).isEqualTo(json(text));
        assertThat(CarFile.read(CarFile.of(file.setUp()).text())
                        .accepted()
                        .orElseThrow()
                        .setUp())
                .isEqualTo(file.setUp());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "guide_to_rear_axle_mm": 98 | "guide_to_rear_axle_mm": 9.8 | chassis.guide_to_rear_axle_mm is 9.8 mm; it must be from 20 to 300 mm.
            "guide_to_rear_axle_mm": 98 | "guide_to_rear_axle_mm": "98" | chassis.guide_to_rear_axle_mm is "98"; it must be a number, or {"value": …, "plus_minus": …} from 20 to 300 mm.
            "guide_to_rear_axle_mm": 98 | "guide_to_rear_axle_mm": 1e999 | chassis.guide_to_rear_axle_mm is
            "guide_to_rear_axle_mm": 98 | "guide_to_rear_axle_mm": 30 | the centre of gravity is
            "guide_to_rear_axle_mm": 98, | `` | chassis.guide_to_rear_axle_mm is missing; give a number from 20 to 300 mm.
            "touching" | "floating" | chassis.front_wheels is 'floating'; it must be 'touching' or 'clear'.
            "plus_minus": 0.5 | "plus_minus": -0.5 | mass.total_g.plus_minus is -0.5; it must be one standard deviation, 0 or more, of a number from 5 to 2000 g.
            "cg_ahead_of_rear_axle_mm": 36 | "cg_ahead_of_rear_axle_mm": -3 | mass.cg_ahead_of_rear_axle_mm is -3 mm; it must be from 0 to 300 mm.
            "cg_ahead_of_rear_axle_mm": 36 | "cg_ahead_of_rear_axle_mm": 120 | the centre of gravity is
            "cg_ahead_of_rear_axle_mm": 36 | "scales": {"guide_g": 20, "rear_axle_g": 20} | mass.scales add up to 40
            "mass_g": 5 | "mass_g": null | ballast[0].mass_g is null; it must be a number
            "stall_torque_gcm": 190 | "stall_torque_gcm": 0 | motor.stall_torque_gcm is 0 gf·cm; it must be from 0.1 to 20000 gf·cm.
            "stall_torque_gcm": 190, | `` | motor.stall_torque_gcm is missing; give it, or stall_current_a instead.
            "stall_torque_gcm": 190 | "stall_current_a": 0.1 | motor.stall_current_a is 0.1 A; it must be above motor.no_load_current_a (0.12 A)
            "pinion_teeth": 11 | "pinion_teeth": 11.5 | gears.pinion_teeth is 11.5; teeth are counted, give a whole number.
            "name": "Dunlin" | "name": "" | name is empty
            "name": "Dunlin", | `` | name is missing; give a text such as "Dunlin".
            "magnet": { "downforce_g": 60, "x_mm": 15 } | "magnet": 60 | magnet is 60; it must be an object in braces.
            "chassis": { | "chassis": { "wheelbase_mm": 80, | Duplicate field
            "lapwright-car/1" | "lapwright-car/2" | format is "lapwright-car/2", which this version of Lapwright does not know. It reads "lapwright-car/1"; a newer file needs a newer Lapwright.
            "lapwright-car/1" | "lapwright-track/1" | this is a track file (lapwright-track/1). A car file (lapwright-car/1) is wanted here.
            "format": "lapwright-car/1", | `` | format is missing. Give "format": "lapwright-car/1" as the first key.
            """)
    void everyMistakeIsNamed(String right, String wrong, String sentence) {
        assertThat(DUNLIN).contains(right);
        assertThat(problems(DUNLIN.replace(right, wrong))).contains(sentence);
    }

    @Test
    void allMistakesAreNamedAtOnce() {
        String text = DUNLIN.replace("\"wheelbase_mm\": 82", "\"wheelbase_mm\": 8200")
                .replace("\"grip\": 1.05", "\"grip\": -1")
                .replace("\"rpm\"", "\"rpm\"")
                .replace("\"no_load_rpm\": 20500", "\"no_load_rpm\": true");
        assertThat(problems(text).lines()).hasSize(3);
    }

    @Test
    void aSlipInAnOptionalKeyIsTold() {
        FileReading<CarFile> reading = CarFile.read(DUNLIN.replace("yaw_inertia_g_mm2", "yaw_inertai_g_mm2"));
        assertThat(reading.accepted()).isPresent();
        assertThat(reading.notes()).contains("mass.yaw_inertai_g_mm2 is not used; it is kept as it is");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "  ",
                "[]",
                "7",
                "null",
                "{",
                "{}",
                "{\"a\":1}{\"b\":2}",
                "\u0000",
                "lap_s\n6.2",
                "{\"format\":1}"
            })
    void whatIsNoCarFileIsRefusedInASentence(String text) {
        assertThat(problems(text)).isNotBlank().doesNotContain("Exception").doesNotContain("com.fasterxml");
    }

    @Test
    void aSyntaxErrorHasItsLine() {
        assertThat(problems(DUNLIN.replace("\"wheelbase_mm\": 82,", "\"wheelbase_mm\": 82")))
                .startsWith("Line 2: column")
                .contains("this is not JSON");
    }
}
