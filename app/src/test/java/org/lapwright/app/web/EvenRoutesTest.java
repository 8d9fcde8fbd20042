package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class EvenRoutesTest {
    private static final String ASKED = "/next/even?track=Shed+loop&first=plain&second=magnet";

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

    /** The magnet car is faster by more than a second a lap, too much for weight alone; the laps are those of the independent solver, red and blue. */
    @Test
    void theFasterCarIsHeldBack() {
        HttpResponse<String> page = visitor.get(ASKED);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("plain does 2.7", "magnet does 1.59", "Lower the supply of the lane of magnet")
                .doesNotContain("lane of plain");
    }

    @Test
    void lanesAndDriversAreHeard() {
        assertThat(visitor.get("/next/even?track=Shed+loop&first=plain&second=plain&first_lane=red&second_lane=red")
                        .body())
                .contains("They are level as they are.");
        assertThat(visitor.get(
                                "/next/even?track=Shed+loop&first=plain&second=plain&first_lane=red&second_lane=red&second_held=99")
                        .body())
                .contains("Put ", "Lower the supply", "Either of these", "value=\"99\"")
                .doesNotContain("They are level");
    }

    @Test
    void nothingIsSaidBeforeItIsAsked() {
        assertThat(visitor.get("/next/even").body()).contains("Make them level").doesNotContain("id=\"answer\"");
    }

    @Test
    void whatCannotBeIsSaid() {
        HttpResponse<String> page = visitor.get(ASKED + "&first_held=lots&second_lane=blue");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("First driver", "lots", "from 50 to 100", "value=\"blue\"");
        assertThat(visitor.get(ASKED + "&first_lane=mauve").body()).contains("mauve");
        assertThat(visitor.get("/next/even?track=nowhere&first=plain").body()).contains("There is no track");
        assertThat(visitor.get("/next/even?track=Shed+loop&first=nobody").statusCode())
                .isEqualTo(404);
    }
}
