package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The rules of a class, from the page on which they are written to the places where they count. */
class ClassRoutesTest {
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

    private HttpResponse<String> keep(String name, String was, Map<String, String> rules) {
        Map<String, String> fields = new HashMap<>(
                Map.of("class-1", "there", "was-1", was, "name-1", name, "magnet-1", "yes", "do", "keep"));
        fields.putAll(rules);
        return visitor.post("/bench/classes", fields);
    }

    private HttpResponse<String> choose(String car, String name) {
        return visitor.post("/bench/class", Map.of("name", car, "class", name));
    }

    private void heavyClass() {
        assertThat(keep("Heavy ones", "", Map.of("least_mass_g-1", "300", "rear_tyres-1", "soft\r\n\r\nhard\r\n"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(choose("plain", "Heavy ones").statusCode()).isEqualTo(303);
    }

    @Test
    void rulesAreKeptAndAClassKeepsItsCarsUnderAnotherName() {
        heavyClass();
        assertThat(visitor.get("/bench/classes?saved").body())
                .contains("Saved.", "value=\"Heavy ones\"", "value=\"300\"", "soft\nhard", "Run in it: plain.");
        assertThat(keep("Heavier", "Heavy ones", Map.of("least_mass_g-1", "310"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(visitor.get("/bench/classes").body()).contains("value=\"Heavier\"", "Run in it: plain.");
        assertThat(visitor.get("/bench/car?name=plain").body())
                .contains("Not allowed in class Heavier: it weighs ", "the class asks for at least 310 g");
    }

    @Test
    void whatCannotBeUnderstoodIsSaidBesideItsFieldAndNothingIsLost() {
        HttpResponse<String> answer =
                keep("", "", Map.of("least_mass_g-1", "heavy", "most_tyre_mm-1", "900", "motor-1", "the <fast> one"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains(
                        "Not saved yet.",
                        "Class 1, least weight: 'heavy' is not a number",
                        "Class 1, greatest rear tyre is 900; it must be from 5 to 80 mm.",
                        "value=\"heavy\"",
                        "the &lt;fast&gt; one");
        assertThat(keep("A", "", Map.of("least_mass_g-1", "90", "most_mass_g-1", "80"))
                        .body())
                .contains("the least weight is 90 g and the greatest weight is 80 g; no car can keep both");
        assertThat(visitor.get("/bench/classes").body()).contains("There are no classes yet.");
        assertThat(choose("plain", "none such").statusCode()).isEqualTo(422);
    }

    @Test
    void aClassIsAddedAndTakenAway() {
        Map<String, String> fields = new HashMap<>(
                Map.of("class-1", "there", "name-1", "A", "least_mass_g-1", "77", "magnet-1", "yes", "do", "add"));
        assertThat(visitor.post("/bench/classes", fields).body())
                .contains("value=\"77\"", "name=\"class-2\"")
                .doesNotContain("name=\"class-3\"");
        fields.put("do", "drop-1");
        assertThat(visitor.post("/bench/classes", fields).body()).doesNotContain("name=\"class-1\"");
    }

    @Test
    void aSetUpThatBreaksARuleIsFlaggedBeforeItIsLogged() {
        heavyClass();
        String form = visitor.get("/bench/change?name=plain&kind=ballast-added").body();
        assertThat(form).contains("Not allowed in class Heavy ones: it weighs ");
        assertThat(form).contains("Class Heavy ones allows as rear tyres only: soft, hard.");
        choose("plain", "");
        assertThat(visitor.get("/bench/change?name=plain&kind=ballast-added").body())
                .doesNotContain("Heavy ones");
    }

    @Test
    void aSetUpThatBreaksARuleIsFlaggedBeforeTheRunAndCanBeDrivenAllTheSame() {
        heavyClass();
        Map<String, String> run = new HashMap<>(Map.of(
                "car",
                "plain",
                "track",
                "Shed loop",
                "lane_number",
                "1",
                "plan",
                "ABBA x 5",
                "warm_up",
                "0",
                "key",
                "k1"));
        HttpResponse<String> told = visitor.post("/run", run);
        assertThat(told.statusCode()).isEqualTo(422);
        assertThat(told.body()).contains("Not allowed in class Heavy ones", "It can be driven all the same");
        run.put("told", "plain");
        assertThat(visitor.post("/run", run).statusCode()).isEqualTo(303);
    }

    /** The magnet car weighs what it weighs: within a class that it just keeps, nothing heavier is advised. */
    @Test
    void adviceKeepsTheRules() {
        keep("No more", "", Map.of("most_mass_g-1", "1"));
        choose("plain", "No more");
        assertThat(visitor.get("/next?car=plain&track=Shed+loop").body())
                .contains("Only what class No more allows is offered.", "Not allowed in class No more: it weighs ")
                .doesNotContain("<li class=\"card\">");
        Map<String, String> best = new HashMap<>(Map.of("car", "plain", "track", "Shed loop", "least_mass", "50"));
        assertThat(visitor.post("/next/best", best).body())
                .contains("The least weight is 50 g and the greatest weight is 1 g; no car can keep both");
    }
}
