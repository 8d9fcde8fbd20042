package org.lapwright.app.files.garage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.units.Reading;

class CarRemarksTest {
    private static final CarFile PLAIN =
            CarFile.read(Reference.text("plain.car.json")).accepted().orElseThrow();
    private static final CarRemarks REMARKS =
            new CarRemarks(OptionalInt.of(24), Set.of("rear_tyre.grip", "mass.cg_height_mm"));

    @Test
    void remarksGoIntoTheFileAndComeBack() {
        CarFile again = CarFile.read(PLAIN.with(REMARKS).text()).accepted().orElseThrow();
        assertThat(PLAIN.remarks()).isEqualTo(new CarRemarks(OptionalInt.of(32), Set.of()));
        assertThat(again.remarks()).isEqualTo(REMARKS);
        assertThat(CarFile.read(again.text()).notes()).isEmpty();
        assertThat(again.with(CarRemarks.NONE).text()).doesNotContain("not_measured", "scale\"");
    }

    @Test
    void aNumberThatIsChangedIsNoUsualValueAnyMore() {
        CarFile file = PLAIN.with(REMARKS);
        assertThat(file.with(file.setUp().with("rear_tyre.grip", new Reading(1.1, 0.05)))
                        .remarks()
                        .notMeasured())
                .containsExactly("mass.cg_height_mm");
        assertThat(file.with(file.setUp()).remarks()).isEqualTo(REMARKS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3", "\"rear_tyre.grip\"", "[3]", "[{}]", "{}"})
    void whatIsNoListOfPlacesIsTold(String wrong) {
        String text = Reference.text("plain.car.json").replace("\"scale\": 32", "\"not_measured\": " + wrong);
        assertThat(CarFile.read(text).problems().get(0).sentence()).startsWith("not_measured ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"1/32\"", "0", "-32", "32.5", "1e40", "null"})
    void aScaleThatIsNoneIsNotBelieved(String odd) {
        String text = Reference.text("plain.car.json").replace("\"scale\": 32", "\"scale\": " + odd);
        assertThat(CarFile.read(text).accepted().orElseThrow().remarks().scale())
                .isEmpty();
    }
}
