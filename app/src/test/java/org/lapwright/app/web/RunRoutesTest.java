package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A drive over the wire: begun, timed by a gate that posts its passes, judged on the way, kept. */
class RunRoutesTest {
    private Stage stage;
    private Visitor visitor;
    private long sequence;
    private double at = 100;

    @BeforeEach
    void open() {
        stage = new Stage().withBench();
        visitor = new Visitor(stage);
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private HttpResponse<String> begin(String plan) {
        Map<String, String> form = new HashMap<>(Map.of("car", "plain", "track", "Shed loop", "change", "shim in"));
        form.putAll(Map.of("plan", plan, "warm_up", "1", "lane_number", "2", "key", "begin"));
        return visitor.post("/run", form);
    }

    private HttpResponse<String> press(String button) {
        String page = visitor.get("/run").body();
        return visitor.post(
                "/run/press",
                Map.of("drive", Visitor.field(page, "drive"), "key", Visitor.field(page, "key"), "do", button));
    }

    private HttpResponse<String> send(String passes) {
        return visitor.postJson("/api/passes", "{\"passes\":[" + passes + "]}");
    }

    private String pass() {
        return "{\"source\":\"gate\",\"boot\":\"b\",\"sequence\":%d,\"lane\":2,\"time_ns\":%d}"
                .formatted(sequence++, Math.round(at * 1e9));
    }

    /** A run with one lap to warm up, then laps about this pace. */
    private void drive(int laps, double pace, Random random) {
        at += 30;
        send(pass());
        for (int i = 0; i <= laps; i++) {
            at += pace + 0.02 * random.nextGaussian();
            assertThat(send(pass()).statusCode()).isEqualTo(200);
        }
    }

    @Test
    void aWholeSessionRunsToItsVerdict() {
        assertThat(visitor.get("/run").body()).contains("Begin", "ABBA x 10");
        assertThat(begin("ABBA x 10").statusCode()).isEqualTo(303);
        assertThat(visitor.get("/run").body())
                .contains("Run 1 of 4, without the change: the first pass starts the clock.");
        Random random = new Random(5);
        drive(10, 6.3, random);
        assertThat(visitor.get("/run").body()).contains("Put the change on, then start the next run.", "pace 6.");
        press("next-run");
        drive(4, 6.1, random);
        String soFar = visitor.get("/run").body();
        assertThat(soFar).contains("Run 2 of 4, with the change", "6 left", "headline");
        drive(6, 6.1, random);
        press("next-run");
        drive(10, 6.1, random);
        assertThat(visitor.get("/run").body()).contains("Take the change off");
        press("next-run");
        drive(10, 6.3, random);
        String end = visitor.get("/run").body();
        assertThat(end).contains("All runs are driven.", "s a lap faster", "Stop and keep it");
        HttpResponse<String> kept = press("kept");
        assertThat(kept.statusCode()).isEqualTo(303);
        String page =
                visitor.get(kept.headers().firstValue("Location").orElseThrow()).body();
        assertThat(page).contains("plain", "shim in", "s a lap faster");
        assertThat(visitor.get("/run").body()).as("ready for another").contains("Begin");
    }

    @Test
    void laterPassesThanTheRunWantsAreKeptAndCountForNothing() {
        begin("AB x 3");
        drive(5, 6, new Random(1));
        assertThat(visitor.get("/run").body()).contains("3 of 3", "Start next run");
        assertThat(stage.garage().open().orElseThrow().events()).hasSize(7);
    }

    @Test
    void comingOffMarksTheLapUnderWay() {
        begin("AB x 10");
        drive(2, 6, new Random(1));
        press("came-off");
        at += 9;
        send(pass());
        assertThat(visitor.get("/run").body()).contains("came off or stopped");
    }

    /** The lap that the pause cuts in two is none, nor is anything that passes meanwhile; the run goes on with its next lap. */
    @Test
    void aPauseLosesTheLapUnderWayAndNoOther() {
        begin("AB x 10");
        drive(3, 6, new Random(1));
        press("paused");
        String paused = visitor.get("/run").body();
        assertThat(paused).contains("Paused.", "Go on", "3 of 10").doesNotContain(">Came off<");
        at += 30;
        send(pass());
        at += 6;
        send(pass());
        assertThat(visitor.get("/run").body()).contains("3 of 10");
        press("goes-on");
        assertThat(visitor.get("/run").body()).contains("3 of 10", ">Pause<", "the first pass starts the clock");
        at += 50;
        send(pass());
        assertThat(visitor.get("/run").body()).contains("3 of 10");
        at += 6.1;
        send(pass());
        assertThat(visitor.get("/run").body()).contains("4 of 10", "6.100");
    }

    /** The sender counts what it sends: where the count jumps, the lap may be two in one, and counts for nothing. */
    @Test
    void aLapInWhichPassesWereLostDoesNotCount() {
        begin("AB x 10");
        drive(3, 6, new Random(1));
        sequence++;
        at += 6;
        send(pass());
        assertThat(visitor.get("/run").body()).contains("gate missed a pass");
    }

    @Test
    void whoDrivesAndInWhichConditionsIsShownAndKept() {
        visitor.post(
                "/run",
                Map.of(
                        "car",
                        "plain",
                        "track",
                        "Shed loop",
                        "lane_number",
                        "2",
                        "plan",
                        "AB x 3",
                        "warm_up",
                        "1",
                        "driver",
                        "Sandpiper",
                        "conditions",
                        "swept, 18 \u00b0C",
                        "key",
                        "conditions"));
        assertThat(visitor.get("/run").body()).contains("Sandpiper \u00b7 swept, 18 \u00b0C");
        drive(3, 6.2, new Random(1));
        press("next-run");
        drive(3, 6.1, new Random(2));
        HttpResponse<String> kept = press("kept");
        String page =
                visitor.get(kept.headers().firstValue("Location").orElseThrow()).body();
        assertThat(page).contains("Conditions", "swept, 18 \u00b0C", "Sandpiper");
    }

    @Test
    void badPassesAreNamedAndTakeNothing() {
        assertThat(send(pass()).body()).contains("no drive is on");
        begin("AB x 10");
        assertThat(visitor.postJson("/api/passes", "{}").body()).contains("passes has 0 entries");
        assertThat(send("{\"source\":\"g\",\"boot\":\"b\",\"sequence\":1}").body())
                .contains("passes[0]: time_ns is missing");
        assertThat(send(pass() + ",{\"source\":\"g\",\"boot\":\"b\",\"sequence\":-1,\"time_ns\":5}")
                        .statusCode())
                .isEqualTo(422);
        assertThat(send("{\"source\":\"g\",\"boot\":\"b\",\"sequence\":1,\"time_ns\":5,\"clock\":\"sundial\"}")
                        .body())
                .contains("sundial");
        assertThat(visitor.postJson("/api/passes", "not json").statusCode()).isEqualTo(422);
        assertThat(stage.garage().open().orElseThrow().events()).isEmpty();
    }

    @Test
    void aBadPlanIsNamedAndTheFormStays() {
        HttpResponse<String> answer = begin("AAAA");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("is not a run plan", "value=\"AAAA\"", "value=\"shim in\"");
        assertThat(stage.garage().open()).isEmpty();
    }

    @Test
    void aDriveCanBeDroppedAndIsNotKept() {
        begin("AB x 3");
        drive(3, 6, new Random(1));
        assertThat(press("kept").body()).contains("need laps before this can be kept");
        assertThat(press("dropped").statusCode()).isEqualTo(303);
        assertThat(stage.garage().open()).isEmpty();
        assertThat(stage.garage().size()).isZero();
    }
}
