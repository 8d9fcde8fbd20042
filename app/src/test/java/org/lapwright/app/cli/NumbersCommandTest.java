package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.files.garage.Reference;

class NumbersCommandTest {
    @TempDir
    Path folder;

    private String file(String name) {
        return new LapFiles(folder).write(name, Reference.text(name));
    }

    /** Worked by hand: 78 g balanced 36 mm of 98 mm ahead, 13 mm up, tracks of 50 mm, 11:28 teeth on 20 mm tyres. */
    @Test
    void theFixedFieldsAreThoseOfTheHandCalculation() {
        Spoken spoken = Spoken.of("numbers", file("plain.car.json"), "--json");
        JsonNode numbers = spoken.json();
        assertThat(numbers.get("total_g").asDouble()).isEqualTo(78);
        assertThat(numbers.get("guide_load_g").asDouble()).isCloseTo(78 * 36 / 98.0, within(1e-9));
        assertThat(numbers.get("rear_load_g").asDouble()).isCloseTo(78 * 62 / 98.0, within(1e-9));
        assertThat(numbers.get("tip_g").asDouble()).isCloseTo(25 / 13.0, within(1e-9));
        assertThat(numbers.get("ratio").asDouble()).isCloseTo(28 / 11.0, within(1e-12));
        assertThat(numbers.get("mm_per_motor_turn").asDouble()).isCloseTo(Math.PI * 20 * 11 / 28, within(1e-9));
        // At the test voltage the motor's free speed is its no-load speed.
        assertThat(numbers.get("free_speed_m_s").asDouble())
                .isCloseTo(20_500 / 60.0 * Math.PI * 0.020 * 11 / 28, within(1e-9));
        assertThat(numbers.get("yields_first").asText()).isEqualTo("slide");
        assertThat(numbers.fieldNames())
                .toIterable()
                .startsWith(
                        "total_g",
                        "cg_ahead_of_rear_axle_mm",
                        "cg_left_mm",
                        "cg_height_mm",
                        "guide_load_g",
                        "rear_load_g",
                        "ratio",
                        "mm_per_motor_turn",
                        "free_speed_m_s",
                        "tip_g",
                        "slide_g",
                        "yields_first",
                        "motor_constant_v_s",
                        "motor_ohm");
    }

    @Test
    void onATrackTheMagnetCounts() {
        JsonNode bench = Spoken.of("numbers", file("magnet.car.json"), "--json").json();
        JsonNode track = Spoken.of("numbers", file("magnet.car.json"), "--track", file("loop.track.json"), "--json")
                .json();
        assertThat(bench.get("guide_load_g").asDouble()
                        + bench.get("rear_load_g").asDouble())
                .isCloseTo(78, within(1e-9));
        assertThat(track.get("guide_load_g").asDouble()
                        + track.get("rear_load_g").asDouble())
                .isCloseTo(78 + 140, within(1e-9));
        assertThat(track.get("tip_g").asDouble())
                .isGreaterThan(bench.get("tip_g").asDouble());
        assertThat(track.get("tip_without_magnet_g")).isEqualTo(bench.get("tip_g"));
    }

    @Test
    void peopleGetTheMeaningAndOnAskingTheWorking() {
        Spoken plain = Spoken.of("numbers", file("plain.car.json"));
        assertThat(plain.out())
                .startsWith("plain\nSlides before it tips (1.01 g against 1.92 g): good, it warns before it goes.")
                .contains("load on the guide", "28.7 g")
                .doesNotContain("= m x / L");
        assertThat(Spoken.of("numbers", file("plain.car.json"), "--working").out())
                .contains("= m x / L", "L: guide to rear axle 98 mm");
        assertThat(Spoken.of("numbers", file("tall.car.json")).out()).contains("Tips before it slides");
    }

    @Test
    void mistakesAreTold() {
        Spoken none = Spoken.of("numbers");
        assertThat(none.status()).isEqualTo(2);
        assertThat(none.err()).contains("numbers needs CAR. A car file");
        Spoken twice = Spoken.of("numbers", "-", "--track", "-");
        assertThat(twice.err()).contains("Standard input can be read only once");
        assertThat(Spoken.of("numbers", "nowhere.json").err())
                .isEqualTo("lapwright: nowhere.json: there is no such file." + System.lineSeparator());
    }
}
