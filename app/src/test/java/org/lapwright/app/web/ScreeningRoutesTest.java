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

/** A screening from the plan to what stands out, as somebody at the track enters it. */
class ScreeningRoutesTest {
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

    private HttpResponse<String> begin(String tweaks, String runs) {
        return visitor.post(
                "/run/screening",
                Map.of(
                        "car",
                        "plain",
                        "track",
                        "Shed loop",
                        "tweaks",
                        tweaks,
                        "runs",
                        runs,
                        "laps_per_run",
                        "5",
                        "do",
                        "begin"));
    }

    private HttpResponse<String> run(int driven, String laps) {
        return visitor.post("/run/screening", Map.of("driven", String.valueOf(driven), "laps", laps, "do", "run"));
    }

    private String page() {
        return visitor.get("/run/screening").body();
    }

    /** What the page says is on in the run to be driven now. */
    private String now() {
        Matcher found = Pattern.compile("class=\"now\"[^>]*><strong>Run \\d+</strong> ([^<]*)")
                .matcher(page());
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    @Test
    void theTweakThatMattersStandsOut() {
        assertThat(page()).contains("Draw the plan");
        assertThat(begin("lead over the guide\r\nloose body\r\nother tyres\r\noil", "8")
                        .statusCode())
                .isEqualTo(303);
        double[] noise = {0.004, -0.006, 0.002, -0.003, 0.005, -0.002, 0.001, -0.001};
        for (int i = 0; i < 8; i++) {
            double pace = 6.3 + noise[i] - (now().contains("loose body") || now().contains("all on") ? 0.25 : 0);
            String laps =
                    "%.3f\n%.3f\n%.3f\n%.3f\n%.3f".formatted(pace - 0.02, pace, pace + 0.02, pace - 0.01, pace + 0.01);
            assertThat(run(i, laps).statusCode()).isEqualTo(303);
        }
        String end = page();
        assertThat(end)
                .containsPattern("loose body: 0\\.2[45]\\d s a lap faster\\. Stands out of the noise\\.")
                .containsPattern(
                        "oil: 0\\.00\\d s a lap (faster|slower), which this screening cannot tell from the noise\\.")
                .contains("Each tweak is apart from any two others together.", "class=\"spare\"")
                .doesNotContain("Keep run");
    }

    @Test
    void aRunIsTakenBackAndEnteredOnce() {
        begin("a\nb\nc", "12");
        run(0, "6.1\n6.2\n6.15");
        assertThat(page()).contains("pace 6.15", "Laps of run 2");
        assertThat(run(0, "6.1\n6.2\n6.15").statusCode()).as("sent twice").isEqualTo(409);
        visitor.post("/run/screening", Map.of("driven", "1", "do", "undo"));
        assertThat(page()).contains("Laps of run 1").doesNotContain("pace 6.15");
    }

    @Test
    void whatIsWrongIsSaidAndNothingIsLost() {
        assertThat(begin("a\nb", "8").body())
                .contains("There are 2 tweaks; a screening takes from 3 to 7.", "value=\"plain\"", ">a\nb</textarea>");
        Map<String, String> nameless = new HashMap<>(
                Map.of("car", "", "track", "t", "tweaks", "a\nb\nc", "runs", "8", "laps_per_run", "5", "do", "begin"));
        assertThat(visitor.post("/run/screening", nameless).statusCode()).isEqualTo(422);
        begin("a\nb\nc", "8");
        assertThat(run(0, "6.1\nsix\n6.2").body()).contains("&#39;six&#39;".replace("&#39;", "'"), "6.1\nsix\n6.2");
        assertThat(run(0, "6.1\n6.2").body()).contains("A run of 2 laps has no pace");
        assertThat(run(0, "").statusCode()).isEqualTo(422);
        assertThat(visitor.post("/run/screening", Map.of("do", "dance")).statusCode())
                .isEqualTo(422);
        assertThat(page()).contains("Laps of run 1");
    }

    @Test
    void anotherCanBeBegun() {
        begin("a\nb\nc", "8");
        assertThat(visitor.get("/run/screening?another").body()).contains("Draw the plan");
        begin("d\ne\nf", "8");
        assertThat(page()).contains("on: ").doesNotContain("a, b");
    }

    private long sequence;
    private double at = 100;

    /** A run from a gate: the pass that starts the clock, then laps. */
    private void drive(int laps, double pace) {
        StringBuilder passes = new StringBuilder();
        at += 30;
        for (int i = 0; i <= laps; i++) {
            passes.append(passes.isEmpty() ? "" : ",")
                    .append("{\"source\":\"g\",\"boot\":\"b\",\"sequence\":%d,\"lane\":2,\"time_ns\":%d}"
                            .formatted(sequence++, Math.round(at * 1e9)));
            at += pace + 0.001 * i;
        }
        assertThat(visitor.postJson("/api/passes", "{\"passes\":[" + passes + "]}")
                        .statusCode())
                .isEqualTo(200);
    }

    private String time(int driven) {
        return visitor.post(
                        "/run/screening",
                        Map.of(
                                "do",
                                "time",
                                "driven",
                                "" + driven,
                                "lane_number",
                                "2",
                                "warm_up",
                                "0",
                                "key",
                                "t" + driven))
                .body();
    }

    private HttpResponse<String> press(String path, String button) {
        String page = visitor.get("/run").body();
        return visitor.post(
                path, Map.of("drive", Visitor.field(page, "drive"), "key", Visitor.field(page, "key"), "do", button));
    }

    @Test
    void theRunsComeFromAGateInTwoSittings() {
        begin("a\nb\nc", "8");
        time(0);
        assertThat(visitor.get("/run").body()).contains("Run 1 of 8, ", "the first pass starts the clock");
        drive(5, 6.2);
        assertThat(visitor.get("/run").body())
                .contains("Run done. Make the car ready for run 2, ")
                .doesNotContain("Stop and keep it");
        press("/run/press", "next-run");
        drive(5, 6.3);
        press("/run/press", "next-run");
        drive(2, 6.3);
        assertThat(press("/run/screening", "take").statusCode()).isEqualTo(303);
        assertThat(page()).contains("pace 6.202 s", "pace 6.302 s", "Keep run 3");
        assertThat(visitor.get("/run").body()).contains("Begin");
        time(2);
        for (int run = 3; run <= 8; run++) {
            assertThat(visitor.get("/run").body()).contains("Run " + run + " of 8");
            drive(5, 6.2 + 0.01 * run);
            if (run < 8) {
                press("/run/press", "next-run");
            }
        }
        assertThat(visitor.get("/run").body()).contains("All runs are driven.", "Take the runs into the plan");
        press("/run/screening", "take");
        assertThat(page()).contains("What stands out");
        assertThat(visitor.get("/kept").body()).doesNotContain("Several tweaks");
    }

    @Test
    void aRunThatIsLeftAloneIsTimedToo() {
        begin("a\nb\nc", "8");
        for (int run = 0; run < 7; run++) {
            run(run, "6.2\n6.21\n6.22\n6.2\n6.23");
        }
        time(7);
        drive(5, 6.4);
        assertThat(visitor.get("/run").body()).contains("All runs are driven.");
        press("/run/screening", "take");
        assertThat(page()).contains("What stands out", "pace 6.402 s");
    }

    @Test
    void whatDoesNotFitTogetherIsRefusedAndLosesNothing() {
        begin("a\nb\nc", "8");
        time(0);
        drive(5, 6.2);
        run(0, "6.2\n6.21\n6.22\n6.2\n6.23");
        assertThat(visitor.get("/run").body()).contains("The plan of these runs has changed meanwhile.");
        assertThat(press("/run/screening", "take").statusCode()).isEqualTo(409);
        assertThat(time(1)).contains("A drive is on; end it under Run first.");
        press("/run/press", "dropped");
        assertThat(visitor.post("/run/screening", Map.of("do", "take", "drive", "1", "key", "k"))
                        .statusCode())
                .isEqualTo(404);
        assertThat(visitor.post(
                                "/run/screening",
                                Map.of("do", "time", "driven", "1", "lane_number", "x", "warm_up", "0"))
                        .body())
                .contains("give a whole number");
    }
}
