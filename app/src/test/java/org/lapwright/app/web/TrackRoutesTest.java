package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.files.garage.TrackFile;

class TrackRoutesTest {
    private static final String HOSTILE = "<img src=x onerror=alert(1)>";

    private Stage stage;
    private Visitor visitor;

    @BeforeEach
    void open() {
        stage = new Stage().withReferenceFiles();
        visitor = new Visitor(stage);
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private static Map<String, String> oval() {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("name", "Attic");
        fields.put("lane-name-1", "1");
        fields.put("lane-offset-1", "50");
        fields.put("lane-name-2", "2");
        fields.put("lane-offset-2", "-50");
        fields.put("supply", "12");
        fields.put("source", "0,5");
        fields.put("rail", "0.1");
        fields.put("brake", "");
        for (int i = 1; i <= 4; i++) {
            fields.put("kind-" + i, i % 2 == 1 ? "straight" : "left");
            fields.put("length-" + i, "1500");
            fields.put("radius-" + i, "400");
            fields.put("angle-" + i, "180");
        }
        return fields;
    }

    private HttpResponse<String> press(Map<String, String> fields, String wish) {
        Map<String, String> sent = new LinkedHashMap<>(fields);
        sent.put("do", wish);
        return visitor.post("/track/draw", sent);
    }

    @Test
    void allTracksAreListed() {
        String page = visitor.get("/track").body();
        assertThat(page).contains("Hill", "Long hall", "2 lanes, ", " m on lane ", "/track/draw", "/track/file");
    }

    @Test
    void withoutTracksThereIsOneButton() {
        try (Stage empty = new Stage()) {
            String page = new Visitor(empty).get("/track").body();
            assertThat(page).contains("Here your tracks will stand", "Draw a track");
            assertThat(page.split("class=\"button", -1)).hasSize(2);
        }
    }

    @Test
    void aTrackShowsItsLapItsLimitsAndItsLanes() {
        String page = visitor.get("/track?track=Hill&car=plain").body();
        assertThat(page)
                .contains("plain could do ", " s on lane inner.", "Lane inner", "Lane outer", "Time goes: ", "top ")
                .contains("class=\"lane speed-1\"", "m/s</text>", "id=\"place\"", "data-v=\"")
                .doesNotContain("style=\"", "NaN", "<script>");
        assertThat(visitor.get("/track?track=Hill&car=plain&show=limits&lane=outer")
                        .body())
                .contains("on lane outer.", "class=\"lane limit-slide\"", "slide: the rear tyres are at their grip");
    }

    @Test
    void anotherCarShowsWhereTimeIsLost() {
        assertThat(visitor.get("/track?track=Hill&car=plain&against=tall").body())
                .contains("Where the time goes, plain against tall", "Section by section", "Time lost so far")
                .containsPattern("class=\"loss\">[+−]\\d\\.\\d{3} s");
        assertThat(visitor.get("/track?track=Hill&car=plain&against=plain").body())
                .doesNotContain("Where the time goes");
    }

    @Test
    void withoutACarTheLaneStandsAlone() {
        try (Stage empty = new Stage()) {
            empty.ownGarage().keepTrack("Hill", Reference.text("hill.track.json"));
            String page = new Visitor(empty).get("/track?track=Hill").body();
            assertThat(page)
                    .contains("No car has its numbers written down yet", "class=\"lane plain\"", "Lane outer")
                    .doesNotContain("could do", "id=\"place\"");
        }
    }

    @Test
    void aCarThatGetsNowhereSaysWhy() {
        stage.ownGarage()
                .keepCar(
                        "Weak",
                        Reference.text("plain.car.json")
                                .replace("\"stall_torque_gcm\": 190", "\"stall_torque_gcm\": 1")
                                .replace("\"rolling_resistance\": 0.02", "\"rolling_resistance\": 0.3"));
        String page = visitor.get("/track?track=Hill&car=Weak&against=plain").body();
        assertThat(page).contains("No lap: ", "class=\"lane plain\"").doesNotContain("could do", "∞", "NaN");
        String other = visitor.get("/track?track=Hill&car=plain&against=Weak").body();
        assertThat(other).contains("Weak, no lap: ", "plain could do").doesNotContain("Section by section");
    }

    @Test
    void anOpenLayoutIsSaid() {
        stage.ownGarage()
                .keepTrack(
                        "Open",
                        Reference.text("loop.track.json")
                                .replaceFirst("\"straight_mm\": [\\d.]+", "\"straight_mm\": 777"));
        assertThat(visitor.get("/track?track=Open&car=plain").body()).contains("The layout does not close");
    }

    @Test
    void whatIsNotThereIsNamed() {
        assertThat(visitor.get("/track?track=Nowhere").statusCode()).isEqualTo(404);
        assertThat(visitor.get("/track?track=Hill&lane=gold&car=Gone&against=Lost&show=%22%3E")
                        .body())
                .contains("The track has no lane 'gold'; this is lane inner.", "There is no car 'Gone' in the garage")
                .contains("There is no car 'Lost'");
    }

    @Test
    void aDamagedFileIsAProblemNotAFault() {
        stage.ownGarage().keepTrack("Torn", "{ \"format\": \"lapwright-track/1\", ");
        stage.ownGarage().keepCar("Torn", "{}");
        HttpResponse<String> page = visitor.get("/track?track=Torn");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("The file of Torn cannot be used as it is.");
        assertThat(visitor.get("/track").body()).contains("its file cannot be used as it is");
        assertThat(visitor.get("/track?track=Hill&car=Torn").body())
                .contains("The file of Torn: ", "class=\"lane plain\"");
    }

    @Test
    void howSureIsAskedForByItself() {
        assertThat(visitor.get("/track/how-sure?track=Hill&lane=inner&car=Dunlin")
                        .body())
                .containsPattern("9 in 10 between \\d\\.\\d{2,3} and \\d\\.\\d{2,3} s");
        assertThat(visitor.get("/track/how-sure?track=Hill&lane=inner&car=plain")
                        .body())
                .contains("How sure it is cannot be said");
        assertThat(visitor.get("/track/how-sure?track=Hill").statusCode()).isEqualTo(200);
    }

    @Test
    void theFileComesBackWordForWord() {
        HttpResponse<String> file = visitor.get("/track/download?track=Long%20hall");
        assertThat(file.body()).isEqualTo(Reference.text("long.track.json"));
        assertThat(file.headers().firstValue("Content-Disposition"))
                .hasValue("attachment; filename=\"long-hall.track.json\"");
        stage.ownGarage().keepTrack("../\";é", Reference.text("long.track.json"));
        assertThat(visitor.get("/track/download?track=..%2F%22%3B%C3%A9")
                        .headers()
                        .firstValue("Content-Disposition"))
                .hasValue("attachment; filename=\"track.track.json\"");
    }

    @Test
    void anOvalIsDrawnAndKept() {
        assertThat(visitor.get("/track/draw").body()).contains("It closes (gap 0.0 mm and 0.0°)", "lane 1: 5.199 m");
        HttpResponse<String> kept = press(oval(), "keep");
        assertThat(kept.statusCode()).isEqualTo(303);
        assertThat(kept.headers().firstValue("Location")).hasValue("/track?track=Attic&saved");
        assertThat(visitor.get("/track?track=Attic&saved").body()).contains("Saved.", "Attic");
        String text = stage.ownGarage().track("Attic").orElseThrow().text();
        assertThat(TrackFile.read(text).accepted().orElseThrow().track().power().sourceOhm())
                .isEqualTo(0.5);
    }

    @Test
    void nothingTypedIsLostOnAnError() {
        Map<String, String> fields = oval();
        fields.put("name", HOSTILE);
        fields.put("length-1", "one\" and a half");
        fields.put("brake", "0,15");
        HttpResponse<String> page = press(fields, "keep");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body())
                .contains("Piece 1, length: 'one\" and a half' is not a number")
                .contains("value=\"one&#34; and a half\"", "value=\"0,15\"", "value=\"&lt;img src=x")
                .doesNotContain("<img src");
        assertThat(stage.ownGarage().tracks()).hasSize(3);
    }

    @Test
    void piecesComeGoAndMove() {
        assertThat(press(oval(), "add-right").body()).contains("name=\"kind-5\"", "It does not close: ");
        assertThat(press(oval(), "drop-2").body()).doesNotContain("name=\"kind-4\"");
        assertThat(press(oval(), "up-2").body()).contains("Piece 2 moved up.", "Undo: Piece 2 moved up");
        assertThat(press(oval(), "down-4").statusCode()).isEqualTo(200);
        assertThat(press(oval(), "drop-x").body()).contains("name=\"kind-4\"");
    }

    @Test
    void aTrackOfTheSameNameIsNotOverwrittenUnasked() {
        press(oval(), "keep");
        String before = stage.ownGarage().track("Attic").orElseThrow().text();
        Map<String, String> other = oval();
        other.put("length-1", "1600");
        other.put("length-3", "1600");
        HttpResponse<String> asked = press(other, "keep");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains("There is a track 'Attic' already.", "name=\"replace\"");
        assertThat(stage.ownGarage().track("Attic").orElseThrow().text()).isEqualTo(before);
        other.put("replace", "yes");
        assertThat(press(other, "keep").statusCode()).isEqualTo(303);
        assertThat(stage.ownGarage().track("Attic").orElseThrow().text()).isNotEqualTo(before);
    }

    @Test
    void aTrackNeedsAName() {
        Map<String, String> fields = oval();
        fields.put("name", " ");
        assertThat(press(fields, "keep").body()).contains("Name is empty; the track needs one to be kept.");
    }

    @Test
    void aStoreThatFailsLosesNothing() {
        stage.garage().failWith("The disk is full.");
        HttpResponse<String> page = press(oval(), "keep");
        assertThat(page.statusCode()).isEqualTo(503);
        assertThat(page.body()).contains("Not saved. The disk is full.", "value=\"Attic\"", "value=\"0,5\"");
        HttpResponse<String> file = visitor.post(
                "/track/file", Map.of("text", Reference.text("hill.track.json").replace("Hill", "Dale")));
        assertThat(file.statusCode()).isEqualTo(503);
        assertThat(file.body()).contains("Not saved. The disk is full.", "\"Dale\"");
    }

    @Test
    void aPastedFileIsKeptWordForWord() {
        String text = Reference.text("hill.track.json").replace("\"Hill\"", "\"Dale\", \"made_of\": \"pine\"");
        HttpResponse<String> kept = visitor.post("/track/file", Map.of("text", text));
        assertThat(kept.headers().firstValue("Location")).hasValue("/track?track=Dale&saved");
        assertThat(stage.ownGarage().track("Dale").orElseThrow().text()).isEqualTo(text);
        assertThat(visitor.post("/track/file", Map.of("text", text)).statusCode())
                .isEqualTo(303);
        HttpResponse<String> other = visitor.post("/track/file", Map.of("text", text.replace("pine", "oak")));
        assertThat(other.body()).contains("There is a track 'Dale' already.", "\"oak\"");
    }

    @Test
    void anUploadedFileIsRead() {
        String text = Reference.text("hill.track.json").replace("\"Hill\"", "\"Dale\"");
        assertThat(visitor.upload("/track/file", "file", "dale.json", text).statusCode())
                .isEqualTo(303);
        assertThat(stage.ownGarage().track("Dale").orElseThrow().text()).isEqualTo(text);
    }

    /** Without a declared length, so that only the reader of the form can stop it. */
    @Test
    void anEndlessUploadIsRefused() {
        HttpResponse<String> page = visitor.uploadInChunks("/track/file", "file", "big.json", " ".repeat(10_100_000));
        assertThat(page.statusCode()).isEqualTo(413);
        assertThat(page.body()).contains("Nothing was saved.").doesNotContain("went wrong");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "not json",
                "{}",
                "[]",
                "{\"format\":\"lapwright-track/2\"}",
                "{\"format\":\"lapwright-car/1\"}",
                "{\"format\":\"lapwright-track/1\",\"name\":\"X\",\"pieces\":[{\"straight_mm\":-1},{\"radius_mm\":1}]}"
            })
    void aFileThatIsNoTrackIsExplained(String text) {
        HttpResponse<String> page = visitor.post("/track/file", Map.of("text", text));
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("Nothing is saved yet. What stands in the way:", "<li>");
        assertThat(stage.ownGarage().tracks()).hasSize(3);
    }

    @Test
    void everyProblemOfAFileIsListed() {
        String text = Reference.text("hill.track.json")
                .replace("\"supply_v\": 12", "\"supply_v\": 999")
                .replace("\"offset_mm\": 40", "\"offset_mm\": \"wide\"");
        assertThat(visitor.post("/track/file", Map.of("text", text)).body()).contains("supply_v", "offset_mm");
    }

    @Test
    void aTypeThatIsNotAFormIsRefused() {
        assertThat(visitor.postJson("/track/draw", "{}").statusCode()).isEqualTo(415);
        assertThat(visitor.postJson("/track/file", "{}").statusCode()).isEqualTo(415);
    }

    @Test
    void aLongTrackDoesNotHang() {
        stage.ownGarage()
                .keepTrack(
                        "Endless",
                        Reference.text("loop.track.json")
                                .replaceFirst("\"straight_mm\": [\\d.]+", "\"straight_mm\": 50000"));
        HttpResponse<String> page = visitor.get("/track?track=Endless&car=plain&against=Dunlin");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body().length()).isLessThan(200_000);
        assertThat(visitor.get("/track/how-sure?track=Endless&car=Dunlin").body())
                .contains("9 in 10 between");
    }

    /** The pieces of each layout are counted; left and right turns are the same piece. */
    @Test
    void layoutsStandSideBySideWithTheirPiecesCounted() {
        try (Stage own = new Stage().withReferenceFiles()) {
            String page = new Visitor(own).get("/track/box").body();
            assertThat(page).contains("Layouts side by side", "Out of the box", "Hill", "for any one", "Straight, ");
        }
        try (Stage empty = new Stage()) {
            assertThat(new Visitor(empty).get("/track/box").body()).contains("side by side, with the pieces");
        }
    }
}
