package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.core.track.Power;

/** Measuring the rails, over the wire. */
class RailRoutesTest {
    private final Stage stage = new Stage().withReferenceFiles();
    private final Visitor visitor = new Visitor(stage);

    @AfterEach
    void close() {
        stage.close();
    }

    private static Map<String, String> round(String open, String near, String nearA, String far, String farA) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("track", "Hill");
        fields.put("far-at", "50");
        fields.put("open-1", open);
        fields.put("near-1", near);
        fields.put("near-a-1", nearA);
        fields.put("far-1", far);
        fields.put("far-a-1", farA);
        return fields;
    }

    private Power power() {
        return TrackFile.read(stage.ownGarage().track("Hill").orElseThrow().text())
                .accepted()
                .orElseThrow()
                .track()
                .power();
    }

    @Test
    void theResultIsShownAndThenPutIntoTheTrack() {
        Map<String, String> fields = round("12,05", "11.40", "1.00", "11.05", "0.98");
        HttpResponse<String> shown = visitor.post("/track/rails", fields);
        assertThat(shown.statusCode()).isEqualTo(200);
        assertThat(shown.body())
                .contains("A metre of lap has", "supply, controller and leads 0.65 ±", "Put it into the track");
        double before = power().sourceOhm();
        fields.put("do", "keep");
        assertThat(visitor.post("/track/rails", fields).statusCode()).isEqualTo(303);
        assertThat(power().sourceOhm()).isCloseTo(0.65, within(1e-4)).isNotEqualTo(before);
    }

    @Test
    void whatIsWrongIsNamedAndNothingIsLost() {
        HttpResponse<String> wrong = visitor.post("/track/rails", round("12", "13", "1", "x", "1"));
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("Round 1, far away: 'x' is not a number", "value=\"13\"");
        assertThat(visitor.post("/track/rails", round("12", "13", "1", "11", "1"))
                        .body())
                .contains("under load it must be less");
        assertThat(visitor.post("/track/rails", round("", "", "", "", "")).body())
                .contains("no reading is complete");
    }

    @Test
    void aTrackThatIsNotThereIsSaid() {
        assertThat(visitor.get("/track/rails?track=nowhere").statusCode()).isEqualTo(404);
        assertThat(visitor.get("/track/rails?track=Hill").body()).contains("Never bridge the rails", "Work it out");
    }
}
