package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lapwright.app.web.Visitor.boxes;
import static org.lapwright.app.web.Visitor.carried;
import static org.lapwright.app.web.Visitor.laps;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.GarageStore.ExampleState;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.Side;

/** Keeping a comparison, and everything that can go wrong with it. */
class KeepTest {
    private Stage stage;
    private Visitor visitor;

    @BeforeEach
    void open() {
        stage = new Stage();
        visitor = new Visitor(stage);
    }

    @AfterEach
    void close() {
        stage.close();
    }

    @Test
    void savedIsSaidOnceTheStoreHasIt() {
        HttpResponse<String> answer = visitor.post("/", judged("Redshank", "Shed loop"));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location")).hasValue("/kept/1?saved");
        KeptComparison kept = stage.garage().comparison(1).orElseThrow().kept();
        assertThat(kept.car()).isEqualTo("Redshank");
        assertThat(kept.stays()).isEqualTo(Side.AFTER);
        assertThat(kept.session().laps()).isEqualTo(40);
        assertThat(kept.settings().plan().orElseThrow().text()).isEqualTo("AB x 20");
        assertThat(kept.example()).isFalse();
        String page = visitor.get("/kept/1?saved").body();
        assertThat(page).contains("Saved. It stands on the", "/ladder?track=Shed+loop", "a lap faster");
        assertThat(visitor.get("/ladder?track=Shed+loop").body()).contains("Redshank", "20 laps");
    }

    @Test
    void pressingTwiceSavesOnce() {
        Map<String, String> fields = judged("Redshank", "Shed loop");
        visitor.post("/", fields);
        HttpResponse<String> again = visitor.post("/", fields);
        assertThat(again.headers().firstValue("Location")).hasValue("/kept/1?saved");
        assertThat(stage.garage().size()).isEqualTo(1);
        fields.put("car", "Knot");
        assertThat(visitor.post("/", fields).headers().firstValue("Location"))
                .as("a corrected form is another thing to save")
                .hasValue("/kept/2?saved");
    }

    @Test
    void whatIsKeptIsWhatWasJudged() {
        Map<String, String> fields = judged("Redshank", "Shed loop");
        fields.put("laps-2", laps(6.9, 20, 5));
        HttpResponse<String> answer = visitor.post("/", fields);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("Nothing is saved yet: the laps are not those of the verdict you saw.", "a lap slower");
        assertThat(stage.garage().size()).isZero();
        Map<String, String> again = new LinkedHashMap<>(fields);
        again.putAll(carried(answer.body()));
        assertThat(visitor.post("/", again).statusCode()).isEqualTo(303);
    }

    @Test
    void withoutAVerdictNothingIsKept() {
        Map<String, String> fields = boxes(laps(6.5, 20, 1), laps(6.3, 20, 2));
        fields.putAll(Map.of("do", "keep", "car", "Redshank", "track", "Shed loop"));
        HttpResponse<String> answer = visitor.post("/", fields);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Nothing is saved yet: there is no verdict to keep.");
        assertThat(stage.garage().size()).isZero();
    }

    @Test
    void aMissingNameIsAskedForAndNothingIsLost() {
        HttpResponse<String> answer = visitor.post("/", judged("", "Shed loop"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains(
                        "Not saved yet: name of the car is empty; it needs at least one character.",
                        "value=\"Shed loop\"",
                        "</textarea>",
                        "class=\"headline\"");
    }

    @Test
    void aTooLongNameIsExplained() {
        assertThat(visitor.post("/", judged("R".repeat(81), "Shed loop")).body())
                .contains("name of the car has 81 characters; at most 80 fit");
    }

    @Test
    void aFullDiskLosesNothing() {
        stage.garage()
                .failWith("The disk is full. What was saved before is safe. Make room, then press “Keep it” again.");
        Map<String, String> fields = judged("Redshank", "Shed loop");
        HttpResponse<String> answer = visitor.post("/", fields);
        assertThat(answer.statusCode()).isEqualTo(503);
        assertThat(answer.body())
                .contains("Not saved. The disk is full.", "value=\"Redshank\"", "class=\"headline\"")
                .contains(laps(6.5, 20, 1).strip());
        stage.garage().failWith("");
        assertThat(visitor.post("/", fields).statusCode()).isEqualTo(303);
    }

    @Test
    void aSlowerChangeSuggestsTheSetUpBefore() {
        Map<String, String> fields = judged("Redshank", "Shed loop", 6.3, 6.5);
        visitor.post("/", fields);
        assertThat(stage.garage().comparison(1).orElseThrow().kept().stays()).isEqualTo(Side.BEFORE);
        fields.put("stays", "after");
        visitor.post("/", fields);
        assertThat(stage.garage().comparison(2).orElseThrow().kept().stays()).isEqualTo(Side.AFTER);
    }

    @Test
    void removedComesBack() {
        visitor.post("/", judged("Redshank", "Shed loop"));
        assertThat(visitor.post("/kept/1/remove", Map.of()).statusCode()).isEqualTo(303);
        assertThat(visitor.get("/kept").body())
                .contains("Compare some laps", "Removed from the lists: 1", "Bring back Redshank on Shed loop")
                .containsOnlyOnce("href=\"/kept/1\"")
                .contains("action=\"/kept/1/bring-back\"");
        assertThat(visitor.get("/ladder").body()).doesNotContain("Redshank");
        assertThat(visitor.get("/kept/1").body())
                .contains("Removed from the lists and the ladder. Nothing is deleted.", "Bring it back");
        assertThat(visitor.post("/kept/1/bring-back", Map.of()).statusCode()).isEqualTo(303);
        assertThat(visitor.get("/kept").body()).contains("Redshank").doesNotContain("Removed from the lists");
    }

    /** What is learned from a comparison kept goes into the next, and never into itself or an earlier one. */
    @Test
    void aKeptVerdictStandsWhateverIsLearnedLater() {
        Map<String, String> fields = judged("Redshank", "Shed loop");
        visitor.post("/", fields);
        NoisePrior first =
                stage.garage().comparison(1).orElseThrow().kept().settings().prior();
        assertThat(first).isEqualTo(NoisePrior.DEFAULT);
        String page = visitor.get("/kept/1").body();
        assertThat(page).contains("usual belief about a driver's noise; nothing learned yet");

        fields.put("laps-2", fields.get("laps-2") + laps(6.3, 10, 3));
        fields.put("do", "look");
        assertThat(visitor.post("/", fields).body())
                .as("driving on with the belief of the first look")
                .contains("nothing learned yet");
        visitor.post("/", judged("Knot", "Shed loop"));
        assertThat(stage.garage()
                        .comparison(2)
                        .orElseThrow()
                        .kept()
                        .settings()
                        .prior()
                        .sessions())
                .isEqualTo(1);
        assertThat(visitor.get("/kept/2").body()).contains("learned from 1 earlier session kept here");
        assertThat(visitor.get("/kept/1").body()).isEqualTo(page);
    }

    @Test
    void theExampleGarageGoesAndComesBackInOneClick() {
        stage.withExampleGarage();
        assertThat(visitor.get("/ladder").body())
                .contains("This is an example garage, invented.", "Dunlin", "Remove it");
        HttpResponse<String> answer = visitor.post("/example/remove", Map.of("back", "/ladder"));
        assertThat(answer.headers().firstValue("Location")).hasValue("/ladder");
        assertThat(stage.garage().exampleState()).isEqualTo(ExampleState.REMOVED);
        assertThat(visitor.get("/ladder").body())
                .doesNotContain("Dunlin")
                .contains("Bring the example garage back", "Compare some laps");
        assertThat(visitor.get("/kept").body())
                .as("the example comes back as a whole")
                .doesNotContain("Removed from the lists", "Dunlin");
        visitor.post("/example/bring-back", Map.of("back", "http://evil.example"));
        assertThat(visitor.get("/kept").body()).contains("Dunlin");
    }

    @Test
    void theRacersOwnLadderIsNoExample() {
        stage.withExampleGarage();
        visitor.post("/", judged("Redshank", "Shed loop"));
        assertThat(visitor.get("/ladder").body())
                .contains("Redshank")
                .doesNotContain("Dunlin", "class=\"tag\"", "This is an example garage");
        visitor.post("/kept/9/remove", Map.of());
        assertThat(visitor.get("/ladder").body())
                .contains("Dunlin", "class=\"tag\"", "This is an example garage")
                .doesNotContain("Redshank");
    }

    @Test
    void theWayBackLeadsNowhereElse() {
        assertThat(visitor.post("/example/remove", Map.of("back", "http://evil.example/"))
                        .headers()
                        .firstValue("Location"))
                .hasValue("/kept");
    }

    private Map<String, String> judged(String car, String track) {
        return judged(car, track, 6.5, 6.3);
    }

    private Map<String, String> judged(String car, String track, double before, double after) {
        Map<String, String> fields = boxes(laps(before, 20, 1), laps(after, 20, 2));
        fields.put("do", "look");
        Map<String, String> kept = new LinkedHashMap<>(fields);
        kept.putAll(carried(visitor.post("/", fields).body()));
        kept.putAll(Map.of("do", "keep", "car", car, "track", track, "change", "0.3 mm shim under the guide"));
        return kept;
    }
}
