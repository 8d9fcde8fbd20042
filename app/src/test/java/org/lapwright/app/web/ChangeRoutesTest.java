package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.core.car.change.ChangeKind;

/** Logging changes, undoing them, going back and comparing, over the wire. */
class ChangeRoutesTest {
    private Stage stage;
    private Visitor visitor;

    @BeforeEach
    void open() {
        stage = new Stage().withBench();
        visitor = new Visitor(stage);
    }

    @AfterEach
    void close() {
        stage.close();
    }

    /** The form of a kind as the page offers it, with the button that logs it. */
    private Map<String, String> form(String car, String kind) {
        String page = visitor.get("/bench/change?name=" + car + "&kind=" + kind).body();
        Map<String, String> form = new HashMap<>(Map.of("name", car, "kind", kind, "do", "log"));
        form.put("present", Visitor.field(page, "present"));
        form.put("key", Visitor.field(page, "key"));
        return form;
    }

    private HttpResponse<String> trued(String diameter) {
        Map<String, String> form = form("plain", "tyres-trued");
        form.put("diameter_mm", diameter);
        return visitor.post("/bench/change", form);
    }

    private StoredHistory history() {
        return stage.garage().history("plain").orElseThrow();
    }

    @Test
    void everyKindHasAFormThatShowsWhatItBrings() {
        String kinds = visitor.get("/bench/change?name=magnet").body();
        for (ChangeKind kind : ChangeKind.values()) {
            assertThat(kinds).contains("kind=" + kind.code());
            HttpResponse<String> form = visitor.get("/bench/change?name=magnet&kind=" + kind.code());
            assertThat(form.statusCode()).as(kind.code()).isEqualTo(200);
            assertThat(form.body()).contains("Log it");
        }
        assertThat(visitor.get("/bench/change?name=nobody").statusCode()).isEqualTo(404);
    }

    @Test
    void aChangeIsForeseenThenLoggedThenUndone() {
        String page = visitor.get("/bench/change?name=plain&kind=tyres-trued").body();
        assertThat(page).contains("Way per motor turn", "Tips at", "eye protection", "runs rounder");
        assertThat(trued("19,5").statusCode()).isEqualTo(303);
        assertThat(history().presentStep().words()).isEqualTo("tyres trued from 20 to 19.5 mm");
        String car = visitor.get("/bench/car?name=plain&logged").body();
        assertThat(car).contains("Logged.", "tyres trued from 20 to 19.5 mm", "Undo it", "19.5");
        Map<String, String> undo =
                Map.of("name", "plain", "present", Visitor.field(car, "present"), "key", Visitor.field(car, "key"));
        assertThat(visitor.post("/bench/undo", undo).statusCode()).isEqualTo(303);
        assertThat(history().presentStep().kind()).isEqualTo("first");
        assertThat(visitor.post("/bench/undo", undo).statusCode())
                .as("sent twice")
                .isEqualTo(303);
        assertThat(history().steps()).hasSize(2);
        assertThat(visitor.get("/bench/change?name=plain&kind=tyres-trued").body())
                .as("said once")
                .doesNotContain("eye protection");
    }

    @Test
    void aBranchOffAnOlderSetUpKeepsBoth() {
        trued("19.5");
        long trued = history().present();
        String page = visitor.get("/bench/history?name=plain").body();
        long first = history().steps().get(0).id();
        Map<String, String> back = Map.of(
                "name",
                "plain",
                "present",
                Long.toString(trued),
                "key",
                Visitor.field(page, "key"),
                "to",
                Long.toString(first));
        assertThat(visitor.post("/bench/back", back).statusCode()).isEqualTo(303);
        Map<String, String> form = form("plain", "gears-fitted");
        form.putAll(Map.of("pinion_teeth", "10", "axle_teeth", "28"));
        assertThat(visitor.post("/bench/change", form).statusCode()).isEqualTo(303);
        assertThat(history().presentStep().parent()).hasValue(first);
        String compared = visitor.get("/bench/compare?name=plain&a=" + trued + "&b="
                        + history().present())
                .body();
        assertThat(compared).contains("19.5", "Only what is otherwise", "10").doesNotContain("Wheelbase");
        assertThat(visitor.get("/bench/history?name=plain").body())
                .contains("gears 10/28", "on the car", "Back to this");
    }

    @Test
    void whoeverComesSecondIsToldAndNothingIsOverwritten() {
        Map<String, String> first = form("plain", "oiled");
        Map<String, String> second = form("plain", "noted");
        second.put("what", "new lamp");
        assertThat(visitor.post("/bench/change", first).statusCode()).isEqualTo(303);
        HttpResponse<String> conflict = visitor.post("/bench/change", second);
        assertThat(conflict.statusCode()).isEqualTo(409);
        assertThat(conflict.body()).contains("Another set-up is on “plain” by now: oiled", "new lamp");
        assertThat(history().steps()).hasSize(2);
        second.put("present", Visitor.field(conflict.body(), "present"));
        assertThat(visitor.post("/bench/change", second).statusCode()).isEqualTo(303);
        assertThat(history().steps()).hasSize(3);
    }

    @Test
    void badInputIsNamedAndLosesNothing() {
        HttpResponse<String> word = trued("1o");
        assertThat(word.statusCode()).isEqualTo(422);
        assertThat(word.body()).contains("'1o' is not a number", "value=\"1o\"");
        assertThat(trued("").body()).contains("empty; give a number from 5 to 80 mm");
        HttpResponse<String> larger = trued("21");
        assertThat(larger.statusCode()).isEqualTo(422);
        assertThat(larger.body()).contains("truing makes them smaller");
        Map<String, String> none = form("plain", "magnet-removed");
        assertThat(visitor.post("/bench/change", none).body()).contains("No magnet is noted on the car");
        Map<String, String> unknown = form("plain", "oiled");
        unknown.put("kind", "measured");
        assertThat(visitor.post("/bench/change", unknown).statusCode()).isEqualTo(404);
        assertThat(stage.garage().history("plain")).isEmpty();
    }

    @Test
    void aFailingDiskIsToldAndTheFormStays() {
        Map<String, String> form = form("plain", "oiled");
        form.put("where", "front axle");
        stage.garage().failWith("The disk is full. Nothing was changed.");
        HttpResponse<String> answer = visitor.post("/bench/change", form);
        assertThat(answer.statusCode()).isEqualTo(503);
        assertThat(answer.body()).contains("Not logged. The disk is full.", "front axle");
    }

    @Test
    void measuringAgainIsAStepToo() {
        trued("19.5");
        String text = stage.ownGarage().car("plain").orElseThrow().text().replace("19.5", "19.4");
        stage.ownGarage().keepCar("plain", text);
        assertThat(history().presentStep().words()).isEqualTo("measured anew");
        assertThat(visitor.get("/bench/history?name=plain").body()).contains("measured anew");
    }

    @Test
    void beforeAndAfterKnowsWhatWasChanged() {
        String page = visitor.get("/?car=plain&change=oiled").body();
        assertThat(page).contains("About <strong>plain</strong>: oiled", "name=\"change\" value=\"oiled\"");
    }
}
