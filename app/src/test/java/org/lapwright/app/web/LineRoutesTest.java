package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.core.track.LanePath;
import org.lapwright.core.track.Track;

class LineRoutesTest {
    private static final String STADIUM = "<path d=\"M0 0H2000A400 400 0 0 1 2000 800H0A400 400 0 0 1 0 0z\"/>";
    private static final double LAP_M = 4 + 0.8 * Math.PI;

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

    private static String inMillimetres(String content) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"3000mm\" height=\"1000mm\" viewBox=\"0 0 3000 1000\">"
                + content + "</svg>";
    }

    private static Map<String, String> fields(String drawing) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("text", drawing);
        fields.put("join", "1");
        fields.put("measure", "length");
        fields.put("known", "");
        fields.put("turning", "left");
        fields.put("start", "1000");
        fields.put("corner", "");
        fields.put("name", "Routed");
        fields.put("lanes", "2");
        fields.put("spacing", "90");
        fields.put("supply", "12");
        fields.put("source", "0,5");
        fields.put("rail", "0.1");
        fields.put("brake", "");
        return fields;
    }

    private HttpResponse<String> press(Map<String, String> fields, String wish) {
        Map<String, String> sent = new LinkedHashMap<>(fields);
        sent.put("do", wish);
        return visitor.post("/track/line", sent);
    }

    private Track kept(String name) {
        return TrackFile.read(stage.ownGarage().track(name).orElseThrow().text())
                .accepted()
                .orElseThrow()
                .track();
    }

    @Test
    void aDrawingIsLookedAtAndKept() {
        HttpResponse<String> look = press(fields(inMillimetres(STADIUM)), "look");
        assertThat(look.statusCode()).isEqualTo(200);
        assertThat(look.body())
                .contains(
                        "The drawing says how large it is: 3000mm wide",
                        "The line is 6.513 m long, 2.800 m from side to side")
                .contains("stays within 0.", "lane 1: ", "class=\"lanemap\"", "&lt;svg")
                .doesNotContain("NaN", "What stands in the way");
        HttpResponse<String> done = press(fields(inMillimetres(STADIUM)), "keep");
        assertThat(done.statusCode()).isEqualTo(303);
        assertThat(done.headers().firstValue("Location").orElse("")).isEqualTo("/track?track=Routed&saved");
        Track track = kept("Routed");
        assertThat(track.layout().lengthM(LanePath.CENTRE)).isCloseTo(LAP_M, within(0.001));
        // Left round: lane 1 is the inner one, shorter by 2 π times its offset.
        assertThat(track.lengthM(track.requireLane("1"))).isCloseTo(LAP_M - 2 * Math.PI * 0.045, within(0.001));
        assertThat(visitor.get("/track?track=Routed").body()).contains("Lane 2");
    }

    @Test
    void aFileIsTakenBeforeWhatIsPasted() {
        HttpResponse<String> page = visitor.upload("/track/line", "file", "loop.svg", inMillimetres(STADIUM));
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("The line is 6.513 m long", "&lt;path d=");
    }

    @ParameterizedTest
    @CsvSource({"length,13026.548,2", "width,1400,0.5"})
    void aKnownLengthRescales(String measure, String known, double factor) {
        Map<String, String> fields = fields("<svg>" + STADIUM + "</svg>");
        fields.put("measure", measure);
        fields.put("known", known);
        fields.put("lanes", "1");
        assertThat(press(fields, "keep").statusCode()).isEqualTo(303);
        assertThat(kept("Routed").layout().lengthM(LanePath.CENTRE)).isCloseTo(factor * LAP_M, within(0.002));
    }

    @Test
    void aGuessedSizeIsNotKept() {
        Map<String, String> fields = fields("<svg>" + STADIUM + "</svg>");
        HttpResponse<String> page = press(fields, "keep");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body())
                .contains("has only been guessed", "does not say how large it is", "<option value=\"1\"");
        fields.put("unit", "1");
        assertThat(press(fields, "keep").statusCode()).isEqualTo(303);
        assertThat(kept("Routed").layout().lengthM(LanePath.CENTRE)).isCloseTo(LAP_M, within(0.001));
    }

    @Test
    void oneOfSeveralLoopsIsChosen() {
        String two = inMillimetres("<circle cx=\"500\" cy=\"500\" r=\"400\"/>" + STADIUM);
        Map<String, String> fields = fields(two);
        assertThat(press(fields, "look").body())
                .contains(
                        "Which closed line",
                        "name=\"loop\" value=\"2\" checked",
                        "2.513 m long, 800.0 mm × 800.0 mm",
                        "The line is 6.513 m")
                .contains("name=\"loop\" value=\"1\">");
        fields.put("loop", "1");
        fields.put("turning", "right");
        assertThat(press(fields, "look").body()).contains("name=\"loop\" value=\"1\" checked", "The line is 2.513 m");
    }

    @Test
    void sharpCornersAreRoundedWhenAsked() {
        Map<String, String> fields = fields(inMillimetres("<rect width=\"2500\" height=\"900\"/>"));
        fields.put("start", "100");
        assertThat(press(fields, "look").body())
                .contains("4 sharp corners", "give a radius to round them with")
                .doesNotContain("class=\"lanemap\"");
        fields.put("corner", "250");
        assertThat(press(fields, "look").body())
                .contains("corners rounded: 4, with a radius of 250.0 mm", "class=\"lanemap\"")
                .doesNotContain("What stands in the way");
    }

    @Test
    void gapsAreTold() {
        Map<String, String> fields = fields(inMillimetres("<polyline points=\"0,0 2000,0 2000,800 0,800 0,5\"/>"));
        assertThat(press(fields, "look").body())
                .contains("There is no closed line", "A line 5595 mm long stays open", "5.0 mm apart");
        fields.put("join", "6");
        fields.put("corner", "200");
        assertThat(press(fields, "look").body())
                .contains("Gaps closed: 1, the widest 5.00 mm")
                .doesNotContain("no closed line");
    }

    @Test
    void nothingTypedIsLostOnAnError() {
        Map<String, String> fields = fields("<svg><path d=\"M0 0\"/>");
        fields.put("name", "\"><b>Attic</b>");
        fields.put("lanes", "many");
        fields.put("known", "7777");
        fields.put("corner", "33");
        HttpResponse<String> page = press(fields, "keep");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body())
                .contains(
                        "not well-formed XML",
                        "value=\"&#34;>&lt;b>Attic",
                        "value=\"many\"",
                        "value=\"7777\"",
                        "value=\"33\"")
                .contains("&lt;svg&gt;&lt;path d=", "name=\"brake\" value=\"\"")
                .doesNotContain("\"><b>", "<svg><path d=\"M0 0\"");
    }

    @Test
    void whatIsTypedWrongIsNamed() {
        Map<String, String> fields = fields(inMillimetres(STADIUM));
        fields.putAll(Map.of("lanes", "2.5", "join", "x", "supply", "900"));
        assertThat(press(fields, "look").body()).contains("Ends that meet: 'x' is not a number");
        fields.put("join", "1");
        assertThat(press(fields, "look").body()).contains("Lanes is 2.5; it must be a whole number", "Supply is 900");
        assertThat(press(Map.of("text", ""), "keep").body()).contains("There is no drawing yet", "Name is empty");
    }

    @Test
    void anotherTrackIsNotOverwrittenUnasked() {
        Map<String, String> fields = fields(inMillimetres(STADIUM));
        assertThat(press(fields, "keep").statusCode()).isEqualTo(303);
        fields.put("supply", "14");
        HttpResponse<String> page = press(fields, "keep");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("There is a track 'Routed' already", "name=\"replace\"");
        fields.put("replace", "yes");
        assertThat(press(fields, "keep").statusCode()).isEqualTo(303);
        assertThat(kept("Routed").power().supplyV()).isEqualTo(14);
    }

    @Test
    void tooMuchAndOtherThingsAreRefused() {
        assertThat(visitor.uploadInChunks("/track/line", "file", "big.svg", " ".repeat(10_100_000))
                        .statusCode())
                .isEqualTo(413);
        assertThat(visitor.upload("/track/line", "file", "big.svg", "<svg>" + " ".repeat(5_100_000))
                        .body())
                .contains("more than 5 million characters");
        assertThat(visitor.postJson("/track/line", "{}").statusCode()).isEqualTo(415);
        assertThat(visitor.upload("/track/line", "file", "x.png", "\u0089PNG\r\n")
                        .body())
                .contains("neither an SVG nor a DXF");
    }
}
