package org.lapwright.app.usecase.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

class NumbersInWordsTest {
    private static final List<String> FIXED = List.of(
            "total_g",
            "cg_ahead_of_rear_axle_mm",
            "cg_left_mm",
            "cg_height_mm",
            "guide_load_g",
            "rear_load_g",
            "ratio",
            "mm_per_motor_turn",
            "free_speed_m_s",
            "slide_g",
            "tip_g",
            "motor_constant_v_s",
            "motor_ohm");

    private final WorkOutNumbers workOut = new WorkOutNumbers();

    private static SetUp car(String name) {
        return CarFile.read(Reference.text(name + ".car.json"))
                .accepted()
                .orElseThrow()
                .setUp();
    }

    private static Track loop() {
        return TrackFile.read(Reference.text("loop.track.json"))
                .accepted()
                .orElseThrow()
                .track();
    }

    private static ExplainedNumber explained(NumbersInWords numbers, String key) {
        return numbers.all().stream()
                .filter(number -> number.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain", "magnet", "soft", "tall"})
    void everyNumberOpensToItsMeaningFormulaAndInputs(String name) {
        for (NumbersInWords numbers : List.of(workOut.onBench(car(name)), workOut.on(car(name), loop()))) {
            assertThat(numbers.all())
                    .allSatisfy(number -> {
                        assertThat(number.meaning()).endsWith(".");
                        assertThat(number.formula()).isNotBlank();
                        assertThat(number.inputs())
                                .isNotEmpty()
                                .allSatisfy(input -> assertThat(input.shown()).doesNotContain("NaN"));
                        assertThat(number.value()).isPresent();
                    })
                    .extracting(ExplainedNumber::key)
                    .containsExactlyElementsOf(FIXED);
        }
    }

    /** Rules of propagation for products and quotients, JCGM 100:2008 5.1.6, worked by hand. */
    @Test
    void doubtsAreThoseOfTheHandCalculation() {
        SetUp doubtful = car("plain")
                .with("mass.total_g", new Reading(78, 0.5))
                .with("rear_tyre.diameter_mm", new Reading(20, 0.2))
                .with("mass.cg_height_mm", new Reading(13, 0.13));
        NumbersInWords numbers = workOut.onBench(doubtful);
        assertThat(explained(numbers, "guide_load_g").plusMinus()).isCloseTo(0.5 * 36 / 98, within(1e-9));
        assertThat(explained(numbers, "mm_per_motor_turn").plusMinus())
                .isCloseTo(0.01 * Math.PI * 20 * 11 / 28, within(1e-9));
        assertThat(explained(numbers, "tip_g").plusMinus()).isCloseTo(0.01 * 25 / 13, within(1e-4));
        assertThat(explained(numbers, "ratio").plusMinus()).isZero();
        assertThat(explained(numbers, "total_g").shown()).isEqualTo("78.0 ± 0.5 g");
        assertThat(explained(numbers, "ratio").shown()).isEqualTo("2.545");
    }

    @Test
    void aMagnetCarIsToldWhatTheMagnetDoes() {
        NumbersInWords onRails = workOut.on(car("magnet"), loop());
        assertThat(onRails.yieldsFirst()).startsWith("Slides before it tips");
        assertThat(explained(onRails, "tip_g").meaning()).contains("Without the magnet 1.92 g");
        assertThat(workOut.onBench(car("tall")).yieldsFirst()).startsWith("Tips before it slides");
    }
}
