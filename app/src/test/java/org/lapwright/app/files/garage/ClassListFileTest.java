package org.lapwright.app.files.garage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.Problem;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.car.rules.ClassNumber;
import org.lapwright.core.car.rules.RaceClass;
import org.lapwright.core.car.rules.RaceClasses;

class ClassListFileTest {
    private static String sentences(String text) {
        return ClassListFile.read(text).problems().stream()
                .map(Problem::sentence)
                .toList()
                .toString();
    }

    @Test
    void aListGoesRoundUnchanged() {
        ClassLimits tight = new ClassLimits(
                Map.of(ClassNumber.LEAST_MASS, 74.5, ClassNumber.MOST_BLADE, 7.0),
                false,
                Map.of(PartPlace.REAR_TYRES, List.of("soft", "n 22"), PartPlace.GEARS, List.of("9:28")));
        RaceClasses classes = new RaceClasses(List.of(
                new RaceClass("Thursday", tight, List.of("Plover 29", "Heron")),
                new RaceClass("Anything", ClassLimits.NONE, List.of())));
        ClassListFile file = new ClassListFile(classes);
        assertThat(ClassListFile.read(file.text()).accepted()).contains(file);
        assertThat(file.text())
                .contains("\"least_mass_g\" : 74.5", "\"magnet\" : false", "\"rear_tyres\" : [", "\"cars\" : [");
        ClassListFile none = new ClassListFile(RaceClasses.NONE);
        assertThat(ClassListFile.read(none.text()).accepted()).contains(none);
    }

    @Test
    void allThatIsWrongIsSaidAtOnce() {
        assertThat(
                        sentences(
                                "{\"format\":\"lapwright-classes/1\",\"classes\":[{\"least_mass_g\":0},"
                                        + "{\"name\":\"A\",\"magnet\":\"no\",\"cars\":[7]},{\"name\":\"B\",\"most_tyre_mm\":\"big\"}]}"))
                .contains(
                        "classes[0].name is missing",
                        "classes[0].least_mass_g is 0",
                        "classes[1].magnet is \"no\"",
                        "classes[1].cars has 7",
                        "classes[2].most_tyre_mm is \"big\"");
        assertThat(sentences("{\"format\":\"lapwright-classes/1\",\"classes\":[{\"name\":\"A\"},{\"name\":\"a\"}]}"))
                .contains("two classes are called A");
        assertThat(sentences("{\"format\":\"lapwright-pieces/1\"}")).contains("this is a pieces file");
    }
}
