package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class KitRoutesTest {
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

    private static Map<String, String> twoKinds() {
        return new HashMap<>(Map.of(
                "kind-1", "straight",
                "length-1", "349,5",
                "owned-1", "1",
                "name-1", "the <long> one",
                "kind-2", "turn",
                "radius-2", "320",
                "angle-2", "30",
                "bank-2", "-10",
                "owned-2", ""));
    }

    private HttpResponse<String> press(Map<String, String> fields, String wish) {
        fields.put("do", wish);
        return visitor.post("/track/pieces", fields);
    }

    @Test
    void theListThatIsKeptIsWhatTheEditorOffers() {
        assertThat(visitor.get("/track/draw").body()).contains("Add a left turn, radius 250 mm, 90°");
        assertThat(press(twoKinds(), "keep").statusCode()).isEqualTo(303);
        assertThat(visitor.get("/track/pieces?saved").body())
                .contains("Saved.", "value=\"349.5\"", "the &lt;long> one", "value=\"-10\"");
        String editor = visitor.get("/track/draw").body();
        assertThat(editor)
                .contains("Add a straight of 349.5 mm, the &lt;long> one", "R 320 mm, banked -10°")
                .doesNotContain("Add a left turn, radius 250 mm, 90°");
        String added = visitor.post(
                        "/track/draw",
                        Map.of(
                                "name",
                                "New",
                                "supply",
                                "12",
                                "lane-name-1",
                                "1",
                                "lane-offset-1",
                                "0",
                                "do",
                                "add-right-320-30-~10"))
                .body();
        assertThat(added).contains("Piece 1 added, a right turn", "name=\"bank-1\" value=\"-10\"");
    }

    @Test
    void tooFewPiecesAreSaid() {
        press(twoKinds(), "keep");
        Map<String, String> track = new HashMap<>(
                Map.of("name", "New", "supply", "12", "lane-name-1", "1", "lane-offset-1", "0", "do", "look"));
        track.putAll(Map.of("source", "0.5", "rail", "0.1", "brake", "0.2"));
        track.putAll(Map.of("kind-1", "straight", "length-1", "349.5", "kind-2", "straight", "length-2", "349.5"));
        assertThat(visitor.post("/track/draw", track).body()).contains("takes 2 of straight, 349.5 mm; you have 1");
        track.put("do", "keep");
        assertThat(visitor.post("/track/draw", track).statusCode()).isEqualTo(303);
        assertThat(visitor.get("/track/box").body()).contains("1, 1 short");
    }

    @Test
    void whatIsPressedKeepsWhatWasTyped() {
        assertThat(press(twoKinds(), "add-turn").body()).contains("3 · Turn", "value=\"349,5\"");
        assertThat(press(twoKinds(), "drop-1").body()).contains("1 · Turn").doesNotContain("349,5");
        assertThat(press(twoKinds(), "up-2").body()).contains("1 · Turn", "2 · Straight");
        assertThat(press(twoKinds(), "up-1").body()).contains("1 · Straight", "2 · Turn");
        assertThat(press(twoKinds(), "usual").body()).contains("value=\"350\"").doesNotContain("349,5");
        assertThat(press(twoKinds(), "drop-77").body()).contains("349,5");
        String offered = press(twoKinds(), "look").body();
        assertThat(offered).contains("In your tracks, not on the list", "value=\"take-1\"");
        assertThat(press(twoKinds(), "take-1").body()).contains("3 · ");
        assertThat(visitor.get("/track/pieces").body()).contains("11 · Turn").doesNotContain("349");
    }

    /** A kind that cannot be understood yet must not make those after it strangers to the list. */
    @Test
    void aFaultInOneKindLeavesTheOthersKnown() {
        String offered = press(twoKinds(), "take-1").body();
        Matcher first = Pattern.compile("aria-label=\"Add ([^\"]*)\"")
                .matcher(press(twoKinds(), "look").body());
        assertThat(first.find()).isTrue();
        assertThat(offered).doesNotContain("aria-label=\"Add " + first.group(1) + "\"");
        Map<String, String> wrong = twoKinds();
        wrong.put("length-1", "long");
        Matcher fields = Pattern.compile("name=\"((?:kind|length|radius|angle|bank)-3)\" value=\"([^\"]*)\"")
                .matcher(offered);
        while (fields.find()) {
            wrong.put(fields.group(1), fields.group(2));
        }
        assertThat(press(wrong, "look").body()).doesNotContain("aria-label=\"Add " + first.group(1) + "\"");
    }

    @Test
    void whatIsWrongIsSaidAndNothingIsLost() {
        Map<String, String> wrong = twoKinds();
        wrong.put("length-1", "long");
        wrong.put("owned-2", "2.5");
        wrong.put("angle-2", "");
        HttpResponse<String> page = press(wrong, "keep");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body())
                .contains("Not saved yet.", "Kind 1, length", "Kind 2, angle is empty", "it must be a whole number")
                .contains("value=\"long\"", "value=\"-10\"");
        Map<String, String> twice = twoKinds();
        twice.putAll(Map.of("kind-3", "turn", "radius-3", "320", "angle-3", "30", "bank-3", "-10"));
        assertThat(press(twice, "keep").body()).contains("is there twice, as number 2 and number 3");
        stage.garage().failWith("The disk is full.");
        HttpResponse<String> full = press(twoKinds(), "keep");
        assertThat(full.statusCode()).isEqualTo(503);
        assertThat(full.body()).contains("Not saved. The disk is full.", "349,5");
    }
}
