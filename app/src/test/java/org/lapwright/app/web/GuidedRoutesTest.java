package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.measure.GuidedMeasurement;

/** Measuring one thing at a time, over the wire. */
class GuidedRoutesTest {
    private final Stage stage = new Stage().withReferenceFiles();
    private final Visitor visitor = new Visitor(stage);

    @AfterEach
    void close() {
        stage.close();
    }

    private SetUp car() {
        return CarFile.read(stage.ownGarage().car("Dunlin").orElseThrow().text())
                .accepted()
                .orElseThrow()
                .setUp();
    }

    private static Map<String, String> form(String what, String... codesAndValues) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("name", "Dunlin");
        fields.put("what", what);
        for (int i = 0; i < codesAndValues.length; i += 2) {
            fields.put(codesAndValues[i], codesAndValues[i + 1]);
        }
        return fields;
    }

    @Test
    void readingsAreTakenTogetherShownAndPutIntoTheCar() {
        Map<String, String> fields = form("tilt-board", "angle-1", "49,5", "angle-2", "50.5", "angle-3", "50");
        HttpResponse<String> shown = visitor.post("/bench/guided", fields);
        assertThat(shown.statusCode()).isEqualTo(200);
        assertThat(shown.body()).contains("Grip of the rear tyres", "1.1918 ±", "Put it into the car");
        assertThat(car().rearTyre().grip().value()).isEqualTo(1.12);
        fields.put("do", "keep");
        assertThat(visitor.post("/bench/guided", fields).statusCode()).isEqualTo(303);
        assertThat(car().rearTyre().grip().value()).isCloseTo(1.1918, within(1e-3));
        assertThat(car().rearTyre().grip().plusMinus()).isBetween(0.01, 0.03);
    }

    @Test
    void whatIsWrongIsNamedAndStaysInTheForm() {
        HttpResponse<String> wrong =
                visitor.post("/bench/guided", form("tyre", "diameter-1", "19.9", "diameter-2", "900"));
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("is 900; it must be from 5 to 80 mm", "value=\"19.9\"");
        assertThat(visitor.post("/bench/guided", form("two-scales", "guide-1", "30"))
                        .body())
                .contains("Scale under the rear axle, g is empty; give at least one reading.");
        assertThat(visitor.post("/bench/guided", form("nothing")).statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @EnumSource(GuidedMeasurement.class)
    void everyMeasurementHasItsPage(GuidedMeasurement what) {
        String page =
                visitor.get("/bench/guided?name=Dunlin&what=" + what.code()).body();
        assertThat(page).contains(what.title(), "Work it out", "<ol>");
    }

    @Test
    void shimsAreProposedOnceTheGapIsKnown() {
        assertThat(visitor.get("/bench/guided?name=Dunlin").body()).contains("The front gap was not measured yet");
        assertThat(visitor.get("/bench/guided?name=Dunlin&shims=thick").body()).contains("is not a number");
    }
}
