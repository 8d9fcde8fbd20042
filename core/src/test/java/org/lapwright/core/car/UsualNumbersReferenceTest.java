package org.lapwright.core.car;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

/** Usual numbers beside published ones; the sources are in {@code reference/physics/README.md}. */
class UsualNumbersReferenceTest {
    private static final UsualNumbers CAR =
            UsualNumbers.of(ModelScale.ONE_32, new UsualNumbers.Measured(78, 98, 50, 20, 12, 20_500));

    private static String text(String name) {
        try (InputStream in = UsualNumbersReferenceTest.class.getResourceAsStream("/reference/physics/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Reading usual(UsualNumbers numbers, NumberKey key) {
        return numbers.find(key).orElseThrow();
    }

    /** How many standard deviations a published number lies from the usual one. */
    private static double away(Reading usual, double published) {
        return Math.abs(published - usual.value()) / usual.plusMinus();
    }

    private static List<String> rows(String file, String beginning) {
        List<String> rows =
                text(file).lines().filter(row -> row.startsWith(beginning)).toList();
        assertThat(rows).as(beginning).isNotEmpty();
        return rows;
    }

    /**
     * Rubber on hard ground, kinetic: textbook tables, and the tyres of identified model cars (A. Liniger et al., Optim. Control
     * Appl. Meth. 36(5) 2015, 1:43; the f1tenth simulator's defaults, 1:10).
     */
    @ParameterizedTest
    @CsvSource({"rubber on concrete", "rubber on tarmac", "1:43 RC racer", "1:10 RC car"})
    void gripIsThatOfRubber(String pair) {
        for (String row : rows("friction_values.csv", pair)) {
            double published = Double.parseDouble(row.split(",")[2]);
            assertThat(away(usual(CAR, RearTyre.GRIP), published)).as(row).isLessThanOrEqualTo(1 + 1e-9);
        }
    }

    /** A blade in a slot is mostly plastic on painted wood or on plastic; the textbook has plastic on wood. */
    @Test
    void slotFrictionAllowsForPlasticOnWood() {
        double published = Double.parseDouble(
                rows("friction_values.csv", "plastic on wood").get(0).split(",")[2]);
        assertThat(away(usual(CAR, Guide.SLOT_FRICTION), published)).isLessThanOrEqualTo(2 + 1e-9);
    }

    /** Toy cans of sizes 130 and 260: data sheets, and MIT course 2.007, Motor Information (2008). */
    @ParameterizedTest
    @CsvSource({"M01", "M02", "M04", "M05"})
    void stallTorqueIsThatOfSmallCans(String id) {
        String[] motor = rows("motors.csv", id).get(0).split(",");
        double volts = Double.parseDouble(motor[4]);
        double rpm = Double.parseDouble(motor[5]);
        double gcm = Double.parseDouble(motor[11]) / 1000 / 9.80665e-5;
        UsualNumbers numbers =
                UsualNumbers.of(ModelScale.ONE_32, new UsualNumbers.Measured(78, 98, 50, 20, volts, rpm));
        assertThat(away(usual(numbers, Motor.STALL_TORQUE), gcm)).isLessThanOrEqualTo(2);
    }

    /** Current running free over current held still, of every motor in the table that has both. */
    @ParameterizedTest
    @CsvSource({"M01", "M02", "M04", "M06", "M11", "M13"})
    void noLoadCurrentIsAUsualShareOfTheStallCurrent(String id) {
        String[] motor =
                rows("motors.csv", id).get(0).replaceAll("\"[^\"]*\"", "text").split(",");
        double stall = Double.parseDouble(motor[12]);
        assertThat(away(UsualNumbers.noLoadCurrentA(stall), Double.parseDouble(motor[6])))
                .isLessThanOrEqualTo(2);
    }

    /** One gear stage 85 %: MIT course 2.007, Motor Information (2008). */
    @Test
    void gearsLoseWhatOneStageLoses() {
        Matcher stage = Pattern.compile("one gear stage (\\d+) %").matcher(text("motors.csv"));
        assertThat(stage.find()).isTrue();
        assertThat(usual(CAR, Gears.EFFICIENCY).value()).isEqualTo(Integer.parseInt(stage.group(1)) / 100.0);
    }

    /**
     * Yaw inertia of the identified 1:43 car over m times its length squared. A slot car's body is between 1.15 and 1.5 times
     * as long as guide to rear axle (common practice, no source), and both ends lie within two standard deviations.
     */
    @Test
    void yawInertiaIsThatOfAnIdentifiedCar() {
        String cars = text("small_scale_cars.json");
        double share = find(cars, "Iz") / (find(cars, "m") * find(cars, "length") * find(cars, "length"));
        double unit = 78 * 98 * 98;
        for (double longer : List.of(1.15, 1.5)) {
            assertThat(away(usual(CAR, WeighedCar.YAW_INERTIA), share * longer * longer * unit))
                    .as("%s", longer)
                    .isLessThanOrEqualTo(2);
        }
    }

    private static double find(String json, String key) {
        Matcher number = Pattern.compile("\"" + key + "\": ([0-9.e+-]+)").matcher(json);
        assertThat(number.find()).as(key).isTrue();
        return Double.parseDouble(number.group(1));
    }
}
