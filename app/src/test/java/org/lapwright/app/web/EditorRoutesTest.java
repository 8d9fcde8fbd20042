package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.files.garage.TrackFile;

/** Kept tracks in the editor, and on paper. */
class EditorRoutesTest {
    private static final Pattern FIELD = Pattern.compile("<input id=\"[^\"]*\" name=\"([^\"]*)\" value=\"([^\"]*)\"");
    private static final Pattern HIDDEN =
            Pattern.compile("<input type=\"hidden\" name=\"([^\"]*)\" value=\"([^\"]*)\"");
    private static final Pattern CHOICE =
            Pattern.compile("<select id=\"[^\"]*\" name=\"([^\"]*)\">(.*?)</select>", Pattern.DOTALL);
    private static final Pattern CHOSEN = Pattern.compile("<option value=\"([^\"]*)\" selected");

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

    /** What a browser without a script would send; of the hidden fields the last of a name, which is enough here. */
    private static Map<String, String> fields(String html) {
        Map<String, String> fields = new LinkedHashMap<>();
        String form = html.substring(html.indexOf("<form id=\"draw\""));
        for (Pattern pattern : new Pattern[] {FIELD, HIDDEN}) {
            Matcher field = pattern.matcher(form);
            while (field.find()) {
                fields.putIfAbsent(
                        field.group(1), field.group(2).replace("&#34;", "\"").replace("&amp;", "&"));
            }
        }
        Matcher choice = CHOICE.matcher(form);
        while (choice.find()) {
            Matcher chosen = CHOSEN.matcher(choice.group(2));
            if (chosen.find()) {
                fields.put(choice.group(1), chosen.group(1));
            }
        }
        if (form.contains("name=\"magnetic\" value=\"yes\" checked")) {
            fields.put("magnetic", "yes");
        }
        return fields;
    }

    private HttpResponse<String> press(Map<String, String> fields, String wish) {
        Map<String, String> sent = new LinkedHashMap<>(fields);
        sent.put("do", wish);
        return visitor.post("/track/draw", sent);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Hill", "Shed loop"})
    void aFileComesOutAsItWentInWhereNothingChanged(String name) {
        stage.withBench();
        String text = stage.ownGarage().track(name).orElseThrow().text();
        Map<String, String> fields = fields(
                visitor.get("/track/draw?track=" + name.replace(" ", "+")).body());
        assertThat(press(fields, "keep").statusCode()).isEqualTo(303);
        assertThat(stage.ownGarage().track(name).orElseThrow().text()).isEqualTo(text);
    }

    @Test
    void whatTheFormDoesNotKnowStaysInTheFile() {
        String text = Reference.text("hill.track.json").replace("\"Hill\"", "\"Dale\", \"made_of\": \"pine\"");
        stage.ownGarage().keepTrack("Dale", text);
        Map<String, String> fields =
                fields(visitor.get("/track/draw?track=Dale").body());
        fields.put("supply", "13,5");
        fields.put("lane-name-1", "red");
        assertThat(press(fields, "keep").statusCode()).isEqualTo(303);
        String after = stage.ownGarage().track("Dale").orElseThrow().text();
        assertThat(after).contains("\"made_of\" : \"pine\"", "13.5", "\"red\"");
        TrackFile file = TrackFile.read(after).accepted().orElseThrow();
        assertThat(file.track().layout())
                .isEqualTo(TrackFile.read(text).accepted().orElseThrow().track().layout());
    }

    @Test
    void anotherNameMakesAnotherTrack() {
        String before = stage.ownGarage().track("Hill").orElseThrow().text();
        Map<String, String> fields =
                fields(visitor.get("/track/draw?track=Hill").body());
        fields.put("name", "Knoll");
        assertThat(press(fields, "keep").headers().firstValue("Location")).hasValue("/track?track=Knoll&saved");
        assertThat(stage.ownGarage().track("Hill").orElseThrow().text()).isEqualTo(before);
        fields.put("name", "Long hall");
        HttpResponse<String> taken = press(fields, "keep");
        assertThat(taken.statusCode()).isEqualTo(422);
        assertThat(taken.body()).contains("There is a track 'Long hall' already.", "id=\"fault-name\"");
    }

    @Test
    void theExampleOpensAsACopy() {
        try (Stage examples = new Stage().withExampleGarage()) {
            Visitor guest = new Visitor(examples);
            String body = guest.get("/track/draw?track=Shed+loop").body();
            assertThat(body).contains("value=\"Shed loop, my copy\"", "Change Shed loop");
            Map<String, String> fields = fields(body);
            fields.put("do", "keep");
            assertThat(guest.post("/track/draw", fields).headers().firstValue("Location"))
                    .hasValue("/track?track=Shed+loop%2C+my+copy&saved");
            assertThat(examples.ownGarage().track("Shed loop").orElseThrow().example())
                    .isTrue();
        }
    }

    @Test
    void whatCannotBeEditedSaysWhy() {
        assertThat(visitor.get("/track/draw?track=Nowhere").statusCode()).isEqualTo(404);
        assertThat(visitor.get("/track/draw?track=").statusCode()).isEqualTo(404);
        stage.ownGarage().keepTrack("Torn", "{");
        assertThat(visitor.get("/track/draw?track=Torn").statusCode()).isEqualTo(422);
        stage.ownGarage()
                .keepTrack(
                        "Line",
                        Reference.text("hill.track.json")
                                .replace("\"Hill\"", "\"Line\"")
                                .replaceFirst(
                                        "(?s)\"pieces\".*?\\]",
                                        "\"points_mm\": [[0,0],[1000,0],[2000,500],[1000,1000],[0,1000],[-500,500]]"));
        HttpResponse<String> line = visitor.get("/track/draw?track=Line");
        assertThat(line.statusCode()).isEqualTo(200);
        assertThat(line.body()).contains("The drawn line", "6 points", "Drive it the other way");
        assertThat(line.body()).doesNotContain("Add a piece");
        assertThat(visitor.get("/track?track=Line").body()).contains("/track/draw?track=Line");
        assertThat(visitor.get("/track/print?track=Line").body()).contains("Scale <strong>1:");
        assertThat(visitor.get("/track/lanes.svg?track=Line").body()).contains("<path class=\"lane\"");
    }

    @Test
    void aPressIsUndoneByThePageThatRemembersIt() {
        Map<String, String> fields = fields(visitor.get("/track/draw").body());
        fields.put("name", "Attic \"7\"");
        fields.put("length-1", "half\" typed");
        String removed = press(fields, "drop-2").body();
        assertThat(removed).contains("Undo: Piece 2 removed").doesNotContain("name=\"kind-4\"");
        String back = press(fields(removed), "undo").body();
        assertThat(back)
                .contains("Undone: Piece 2 removed.", "Again: Piece 2 removed", "name=\"kind-4\"")
                .contains("value=\"half&#34; typed\"", "value=\"Attic &#34;7&#34;\"");
        assertThat(press(fields(back), "redo").body()).doesNotContain("name=\"kind-4\"");
    }

    @Test
    void aFaultStandsAtItsField() {
        Map<String, String> fields = fields(visitor.get("/track/draw").body());
        fields.put("radius-2", "wide");
        fields.put("lane-offset-2", "far");
        assertThat(press(fields, "look").body())
                .contains("<a href=\"#radius-2\">Piece 2, radius: &#39;wide&#39; is not a number".replace("&#39;", "'"))
                .contains("id=\"fault-lane-offset-2\"", "value=\"wide\"", "value=\"far\"")
                .containsPattern("id=\"radius-2\"[^>]*aria-invalid=\"true\" aria-describedby=\"fault-radius-2\"");
    }

    @Test
    void theTapeShowsItsFactorFirst() {
        Map<String, String> fields = fields(visitor.get("/track/draw").body());
        fields.put("tape", "5750.4");
        String shown = press(fields, "look").body();
        assertThat(shown).contains("Lane 1: 5750.4 mm by tape, 5199.1 mm as drawn.", "Scale it by 1.1000");
        assertThat(press(fields, "scale").body()).contains("They agree.", "Undo: Straights and radii scaled by 1.1000");
    }

    @Test
    void theLanesAreADrawingInMillimetres() {
        HttpResponse<String> svg = visitor.get("/track/lanes.svg?track=Hill");
        assertThat(svg.headers().firstValue("Content-Type")).hasValue("image/svg+xml; charset=utf-8");
        assertThat(svg.body())
                .startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\"")
                .containsPattern("width=\"([\\d.]+)mm\" height=\"([\\d.]+)mm\" viewBox=\"-?[\\d.]+ -?[\\d.]+ \\1 \\2\"")
                .contains("<title>inner</title>", "<title>outer</title>");
        assertThat(visitor.get("/track/lanes.svg?track=Nowhere").statusCode()).isEqualTo(404);
    }

    @Test
    void thePrintedPageSaysItsScale() {
        assertThat(visitor.get("/track/print?track=Hill").body())
                .containsPattern("Scale <strong>1:\\d+</strong>")
                .containsPattern("width=\"[\\d.]+mm\" height=\"[\\d.]+mm\"")
                .doesNotContain("style=\"", "NaN");
        assertThat(visitor.get("/track/print").statusCode()).isEqualTo(404);
    }

    /** With a car in the garage every edit says at once what it could do, lane by lane. */
    @Test
    void theSpeedIsSeenAtOnce() {
        Stage own = new Stage().withReferenceFiles();
        try (own) {
            String page = new Visitor(own).get("/track/draw").body();
            assertThat(page).contains("on lane 1 could do", "on lane 2 could do", "Driven by", "speed-1");
        }
    }
}
