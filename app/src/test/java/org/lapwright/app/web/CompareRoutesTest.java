package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lapwright.app.web.Visitor.boxes;
import static org.lapwright.app.web.Visitor.carried;
import static org.lapwright.app.web.Visitor.laps;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The front page without a script: every button is a plain form post. */
class CompareRoutesTest {
    private static Stage stage;
    private static Visitor visitor;

    @BeforeAll
    static void open() {
        stage = new Stage();
        visitor = new Visitor(stage);
    }

    @AfterAll
    static void close() {
        stage.close();
    }

    @Test
    void twoEmptyBoxesToBeginWith() {
        String page = visitor.get("/").body();
        assertThat(page)
                .contains("name=\"laps-1\"", "name=\"laps-2\"", "Did it help?")
                .doesNotContain("laps-3");
        assertThat(page).doesNotContain("class=\"headline\"");
    }

    @Test
    void thePreviewSaysWhatWasReadAndWhatWasNot() {
        String page = press("check", boxes("6,214\n6,198\n7,3o1\n6,205", "")).body();
        assertThat(page)
                .contains(
                        "3 laps · pace 6.206 s",
                        "Read as: 3 laps, decimal comma",
                        "Line 3: '7,3o1' is not a time. Did you mean 7.301?</li>",
                        "The other 3 laps are ready.");
        assertThat(page).as("what was typed stays").contains("7,3o1\n6,205</textarea>");
    }

    @Test
    void oddLapsAreMarkedWithTheirReason() {
        String page = press("check", boxes("6.2 6.2 6.2 12.4 6.2 6.2 8.1", "")).body();
        assertThat(page).contains("Lap 4, 12.400 s: gate missed a pass.", "2.00 times the pace");
        assertThat(page).contains("Lap 7, 8.100 s: came off or stopped.");
    }

    @Test
    void aVerdictFixesThePlanAtTheFirstLook() {
        String page = press("look", boxes(laps(6.5, 22, 1), laps(6.3, 22, 2))).body();
        assertThat(page).contains("Plan fixed at your first look: A B × 22. Look as often as you like.");
        assertThat(page)
                .containsPattern("After is 0\\.\\d+ s a lap faster, somewhere between 0\\.\\d+ and 0\\.\\d+\\.");
        assertThat(carried(page))
                .containsEntry("fixed-plan", "AB x 22")
                .containsEntry("fixed-stated", "no")
                .containsEntry("fixed-sure", "95")
                .containsEntry("fixed-margin", "0.3");
    }

    @Test
    void thePlanStaysWhenMoreLapsCome() {
        Map<String, String> later = carried(
                press("look", boxes(laps(6.5, 10, 1), laps(6.45, 10, 2))).body());
        later.putAll(boxes(laps(6.5, 30, 1), laps(6.45, 30, 2)));
        later.put("plan", "ABBA x 50");
        later.put("margin", "9");
        later.put("sure", "90");
        later.put("hand", "yes");
        String page = press("look", later).body();
        assertThat(page).contains("Plan fixed at your first look: A B × 10.");
        assertThat(page)
                .as("neither plan, margin nor certainty can be fished for after a look")
                .contains("Margin 0.3 %, wrong at most once in 20, timed by a gate.");
    }

    @Test
    void aStatedPlanIsTheOneFixed() {
        Map<String, String> fields = boxes(laps(6.5, 10, 1), laps(6.45, 10, 2));
        fields.put("plan", "abba x 10");
        assertThat(press("look", fields).body()).contains("Your plan is fixed: A B B A × 10.");
    }

    @Test
    void nothingIsFixedWhileThereIsNothingToSee() {
        String page = press("look", boxes(laps(6.5, 10, 1), "6.4 6.4")).body();
        assertThat(page).contains("Too few laps to compare yet", "So far 10 before, 2 after.");
        assertThat(carried(page)).doesNotContainKey("fixed-plan");
    }

    @Test
    void emptyBoxesGetASentenceNotAVerdict() {
        assertThat(press("look", boxes("", " \n ")).body())
                .contains("There are no laps yet. Paste some into both boxes")
                .doesNotContain("class=\"headline\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ABBA", "A x 10", "ABBA x 1", "ABBA x 999999", "x", "AAAA x 10"})
    void aWrongPlanIsExplainedAndNothingIsLost(String plan) {
        Map<String, String> fields = boxes(laps(6.5, 10, 1), laps(6.4, 10, 2));
        fields.put("plan", plan);
        String page = press("look", fields).body();
        assertThat(page).contains("<p class=\"notice\">Plan: ", "value=\"" + plan + "\"");
        assertThat(page).doesNotContain("class=\"headline\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "11", "NaN", "three", "1e9"})
    void aWrongMarginIsExplained(String margin) {
        Map<String, String> fields = boxes(laps(6.5, 10, 1), laps(6.4, 10, 2));
        fields.put("margin", margin);
        assertThat(press("look", fields).body())
                .contains("Margin: '" + margin + "' is not a percentage from 0 to 10, such as 0.3.");
    }

    @Test
    void aDecimalCommaInTheMarginIsFine() {
        Map<String, String> fields = boxes(laps(6.5, 10, 1), laps(6.4, 10, 2));
        fields.put("margin", "0,5 %");
        assertThat(carried(press("look", fields).body())).containsEntry("fixed-margin", "0.5");
    }

    @Test
    void anotherRunGetsASwitchAndTheOrderEvensOutDrift() {
        Map<String, String> fields = boxes("6.5 6.6", "6.4");
        String page = press("add", fields).body();
        assertThat(page).contains("Run 3", "name=\"side-3\" value=\"after\" checked", "6.5 6.6</textarea>");
        fields.put("side-3", "after");
        fields.put("laps-3", "6.41");
        page = press("add", fields).body();
        assertThat(page).contains("Run 4", "name=\"side-4\" value=\"before\" checked");
        page = press("drop-1", fields).body();
        assertThat(page).doesNotContain("Run 3", "6.5 6.6").contains("6.41</textarea>");
    }

    @Test
    void fortyRunsAreEnough() {
        Map<String, String> fields = new LinkedHashMap<>();
        for (int i = 1; i <= 45; i++) {
            fields.put("side-" + i, "after");
            fields.put("laps-" + i, "6." + i);
        }
        String page = press("add", fields).body();
        assertThat(page).contains("Run 40").doesNotContain("Run 41", "Add another run");
    }

    @Test
    void tooManyLapsAreNotJudged() {
        String page =
                press("look", boxes("6.5 ".repeat(1500), "6.4 ".repeat(1501))).body();
        assertThat(page).contains("That is 3001 laps in 2 runs. One comparison takes up to 2000 laps in 40 runs");
        assertThat(page).doesNotContain("class=\"headline\"", "<use class=\"dot");
    }

    @Test
    void sidesNamedInTheTextOutrankTheBox() {
        String text = "run,side,lap_s\n" + rows("1,before,", laps(6.5, 8, 1)) + rows("2,after,", laps(6.3, 8, 2));
        String page = press("look", boxes(text, "")).body();
        assertThat(page).contains("Run 1, before: 8 laps", "Run 2, after: 8 laps", "class=\"headline\"");
    }

    @Test
    void aQuestionIsAskedBeforeAnythingIsBelieved() {
        Map<String, String> fields = boxes("6,214,6,198,6,301,6,245,6,207,6,266", laps(6.1, 6, 2));
        String page = press("look", fields).body();
        assertThat(page)
                .contains(
                        "There is a question about what was pasted.",
                        "is the comma a decimal mark or does it stand between laps?")
                .doesNotContain("class=\"headline\"");
        fields.put("answer-1-comma", "decimal");
        page = press("look", fields).body();
        assertThat(page).contains("class=\"headline\"");
        assertThat(carried(page)).as("the answer is carried on").containsEntry("answer-1-comma", "decimal");
        assertThat(press("reask-1", fields).body())
                .contains("is the comma a decimal mark or does it stand between laps?");
    }

    @Test
    void theRacersWordIsTakenShownAndTakenBack() {
        Map<String, String> fields = boxes(laps(6.5, 10, 1) + "8.123", laps(6.3, 10, 2));
        String page = press("word-1.11", fields).body();
        assertThat(page).contains("name=\"say-run\" value=\"1\"", "name=\"say-lap\" value=\"11\"");
        fields.putAll(carried(page));
        fields.put("say-run", "1");
        fields.put("say-lap", "11");
        fields.put("say-kind", "clean");
        fields.put("say-reason", "braked for <b>Tom</b>");
        page = press("say", fields).body();
        assertThat(page)
                .contains("Run 1, lap 11 is clean, you say: “braked for &lt;b&gt;Tom&lt;/b&gt;”", "8.123 s")
                .doesNotContain("<b>Tom");
        Map<String, String> spoken = boxes(laps(6.5, 10, 1) + "8.123", laps(6.3, 10, 2));
        spoken.put("word", "1|11|8123|clean|braked");
        assertThat(press("unsay-1", spoken).body()).doesNotContain("you say: “braked");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"1;99;clean;why", "9;1;clean;why", "x;1;clean;why", "1;;clean;why", "1;1;fast;why", "1;1;clean; "
            })
    void aWordThatFitsNoLapIsExplained(String typed) {
        String[] parts = typed.split(";", -1);
        Map<String, String> fields = boxes(laps(6.5, 10, 1), laps(6.3, 10, 2));
        fields.put("say-run", parts[0]);
        fields.put("say-lap", parts[1]);
        fields.put("say-kind", parts[2]);
        fields.put("say-reason", parts[3]);
        HttpResponse<String> answer = press("say", fields);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("id=\"say-problem\"", "class=\"headline\"");
    }

    @Test
    void aWordIsDroppedWhenItsLapIsGone() {
        Map<String, String> fields = boxes(laps(6.5, 10, 1), laps(6.3, 10, 2));
        fields.put("word", "1|3|9999|clean|why");
        assertThat(press("look", fields).body())
                .contains("Your word on run 1, lap 3 (9.999 s) was dropped: that lap is not there any more.");
    }

    @Test
    void theExampleSaysThatItIsOne() {
        String page = visitor.get("/?example").body();
        assertThat(page).contains("These laps are an example, invented.", "22 laps · pace");
    }

    private static String rows(String start, String laps) {
        return laps.lines().map(lap -> start + lap + "\n").collect(Collectors.joining());
    }

    private static HttpResponse<String> press(String button, Map<String, String> fields) {
        Map<String, String> sent = new LinkedHashMap<>(fields);
        sent.put("do", button);
        return visitor.post("/", sent);
    }
}
