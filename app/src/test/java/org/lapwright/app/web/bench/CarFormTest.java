package org.lapwright.app.web.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.core.car.Balance;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.MotorStrength;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.units.Reading;

/** What is typed becomes a car, and comes back as it was typed. */
class CarFormTest {
    /** Kitchen scale, ruler, label. */
    static Map<String, String> fourMinutes() {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("name", "Knot");
        typed.put("scale", "32");
        typed.put("mass.total_g", "73,1");
        typed.put("chassis.guide_to_rear_axle_mm", "98");
        typed.put("chassis.rear_track_mm", "50.5");
        typed.put("rear_tyre.diameter_mm", "20");
        typed.put("gears.pinion_teeth", "11");
        typed.put("gears.axle_teeth", "28");
        typed.put("motor.no_load_rpm", "20500");
        typed.put("motor.test_voltage_v", "12");
        return typed;
    }

    private static CarForm form(Map<String, String> typed) {
        Map<String, List<String>> values = new HashMap<>();
        typed.forEach((name, value) -> values.put(name, List.of(value)));
        return CarForm.from(new Fields(values));
    }

    private static CarReading read(Map<String, String> typed) {
        return CarFormReader.read(form(typed), Optional.empty());
    }

    private static Map<String, String> with(String... more) {
        Map<String, String> typed = fourMinutes();
        for (int i = 0; i < more.length; i += 2) {
            typed.put(more[i], more[i + 1]);
        }
        return typed;
    }

    private static SetUp car(String... more) {
        CarReading reading = read(with(more));
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.notices()).isEmpty();
        CarFile file = reading.file().orElseThrow();
        return CarFile.read(file.text()).accepted().orElseThrow().setUp();
    }

    @Test
    void eightNumbersMakeACarAndTheRestIsMarkedAsUsual() {
        CarFile file = read(fourMinutes()).file().orElseThrow();
        CarFile again = CarFile.read(file.text()).accepted().orElseThrow();
        assertThat(again.setUp()).isEqualTo(file.setUp());
        assertThat(again.setUp().mass().totalG()).isEqualTo(new Reading(73.1, 0.5));
        assertThat(again.setUp().motor().noLoadRpm()).isEqualTo(new Reading(20_500, 2050));
        assertThat(again.setUp().rearTyre().grip()).isEqualTo(new Reading(1, 0.2));
        assertThat(again.remarks().scale()).hasValue(32);
        assertThat(again.remarks().notMeasured())
                .contains("rear_tyre.grip", "mass.cg_height_mm", "motor.stall_torque_gcm", "chassis.front_wheels")
                .doesNotContain("mass.total_g", "motor.no_load_rpm")
                .hasSize(19);
        assertThat(again.setUp().magnet()).isEmpty();
    }

    @Test
    void whatWasTypedComesBackInTheForm() {
        CarFile file = read(with("rear_tyre.grip", "1,1", "rear_tyre.grip.plus_minus", "0,03"))
                .file()
                .orElseThrow();
        CarForm again = CarForm.of(file);
        assertThat(again.numbers())
                .contains(
                        entry("rear_tyre.grip", new Typed("1.1", "0.03")),
                        entry("mass.total_g", new Typed("73.1", "0.5")),
                        entry("gears.pinion_teeth", new Typed("11", "0")))
                .doesNotContainKey("mass.cg_height_mm");
        assertThat(CarFormReader.read(again, Optional.of(file))
                        .file()
                        .orElseThrow()
                        .text())
                .isEqualTo(file.text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain", "magnet", "soft", "tall"})
    void aCarOnFileGoesThroughTheFormUnchanged(String name) {
        CarFile file =
                CarFile.read(Reference.text(name + ".car.json")).accepted().orElseThrow();
        CarReading reading = CarFormReader.read(CarForm.of(file), Optional.of(file));
        assertThat(reading.problems()).isEmpty();
        SetUp again = reading.file().orElseThrow().setUp();
        assertThat(again.chassis()).isEqualTo(file.setUp().chassis());
        assertThat(again.motor()).isEqualTo(file.setUp().motor());
        assertThat(again.ballast()).isEqualTo(file.setUp().ballast());
        assertThat(again.magnet()).isEqualTo(file.setUp().magnet());
        assertThat(again.mass().totalG()).isEqualTo(file.setUp().mass().totalG());
    }

    @Test
    void unknownKeysOfTheFileStay() {
        String text =
                Reference.text("plain.car.json").replace("\"grip\": 1.05", "\"grip\": 1.05, \"compound\": \"soft\"");
        assertThat(text).contains("compound");
        CarFile file = CarFile.read(text).accepted().orElseThrow();
        CarForm form = CarForm.of(file);
        assertThat(CarFormReader.read(form, Optional.of(file))
                        .file()
                        .orElseThrow()
                        .text())
                .contains("\"compound\" : \"soft\"");
    }

    @Test
    void twoScalesStandInForTheBalancePoint() {
        SetUp car = car("mass.scales.guide_g", "27", "mass.scales.rear_axle_g", "46");
        assertThat(car.mass().balance()).isEqualTo(new Balance.OnTwoScales(new Reading(27, 0.5), new Reading(46, 0.5)));
    }

    @Test
    void aStallCurrentStandsInForTheTorqueAndBringsItsNoLoadCurrent() {
        SetUp car = car("motor.stall_current_a", "0.5");
        assertThat(car.motor().strength()).isEqualTo(new MotorStrength.StallCurrent(new Reading(0.5, 0.025)));
        assertThat(car.motor().noLoadCurrentA().value()).isEqualTo(0.035);
    }

    @Test
    void ballastRowsAreAddedChangedAndEmptied() {
        SetUp car = car(
                "ballast-0.name",
                "",
                "ballast-0.mass_g",
                "",
                "ballast-1.name",
                "left pod",
                "ballast-1.mass_g",
                "5",
                "ballast-1.x_mm",
                "30",
                "ballast-1.y_mm",
                "−4,5",
                "ballast-1.z_mm",
                "4");
        assertThat(car.ballast()).hasSize(1);
        assertThat(car.ballast().get(0).yMm().value()).isEqualTo(-4.5);
        CarForm form = CarForm.of(CarFile.of(car));
        assertThat(form.ballast()).hasSize(3);
    }

    @Test
    void frontWheelsAreTakenAsSaid() {
        assertThat(car("chassis.front_wheels", "clear").chassis().frontWheels()).isEqualTo(FrontWheels.CLEAR);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            mass.total_g | 7,3o1 | '7,3o1' is not a number; give one from 5 to 2000 g.
            mass.total_g | 1.234,5 | '1.234,5' is not a number; give one from 5 to 2000 g.
            mass.total_g | NaN | 'NaN' is not a number
            mass.total_g | 1e3 | '1e3' is not a number
            mass.total_g | `` | This number is needed; give one from 5 to 2000 g.
            mass.total_g | -3 | '-3' is out of range; it must be from 5 to 2000 g.
            chassis.rear_track_mm | 5000 | '5000' is out of range; it must be from 10 to 200 mm.
            gears.pinion_teeth | 11.5 | Teeth are counted; give a whole number from 4 to 100.
            rear_tyre.grip.plus_minus | 0.1 | There is a ± but no number; give a number from 0.05 to 5, or empty both.
            mass.scales.guide_g | 27 | Give what the other scale shows as well, or empty both.
            magnet.downforce_g | 40 | A magnet needs its pull and its place; give both, or empty both.
            ballast-0.mass_g | 4 | Give a number from -200 to 400 mm, or empty the whole row to take the piece out.
            mass.cg_ahead_of_rear_axle_mm | 120 | The centre of gravity is 120.0 mm ahead of the rear axle
            mass.cg_left_mm | 40 | The centre of gravity is 40.00 mm left of the centre line, outside the wheels
            name | `` | The name is empty
            chassis.front_wheels | floating | “Front wheels” is 'floating'
            """)
    void everyMistakeIsNamedAtItsFieldWithWhatWouldBeRight(String field, String value, String sentence) {
        Map<String, String> typed = with("ballast-0.name", "");
        typed.put(field, value);
        CarReading reading = read(typed);
        String said = String.join("\n", reading.problems().values()) + String.join("\n", reading.notices());
        assertThat(said).contains(sentence);
        assertThat(reading.file()).isEmpty();
    }

    @Test
    void allMistakesAreNamedAtOnce() {
        CarReading reading = read(with("mass.total_g", "x", "rear_tyre.grip", "y", "magnet.x_mm", "z"));
        assertThat(reading.problems()).containsOnlyKeys("mass.total_g", "rear_tyre.grip", "magnet.x_mm");
    }

    @Test
    void aDoubtMayBeZeroButNotNegative() {
        assertThat(car("mass.total_g.plus_minus", "0").mass().totalG().isUncertain())
                .isFalse();
        assertThat(read(with("mass.total_g.plus_minus", "-1")).problems().get("mass.total_g"))
                .contains("± '-1' is not a doubt");
    }

    @Test
    void twoScalesThatDisagreeAreToldInTheFormsWords() {
        CarReading reading = read(with("mass.scales.guide_g", "10", "mass.scales.rear_axle_g", "10"));
        assertThat(reading.problems().get("mass.total_g"))
                .contains("The two scales add up to 20.00 g but “Weight of the car” is 73.10 g; weigh all three again");
    }
}
