package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A ladder of a track with two lanes. */
class LadderLanesTest {
    private final Stage stage = new Stage();
    private Visitor visitor;

    @BeforeEach
    void keep() {
        stage.keepOn("red", "Dunlin", 6.9, 1);
        stage.keepOn("blue", "Dunlin", 7.1, 2);
        stage.keepOn("blue", "Knot", 7.0, 3);
        visitor = new Visitor(stage);
    }

    @AfterEach
    void close() {
        stage.close();
    }

    @Test
    void lanesAreCorrectedForAndSaid() {
        String page = visitor.get("/ladder?track=Shed+loop").body();
        assertThat(page).containsPattern("red: −0\\.\\d{3} s a lap against the average lane");
        assertThat(page.indexOf(">Knot")).isLessThan(page.indexOf(">Dunlin"));
    }

    @Test
    void oneLaneCanBeLookedAtAlone() {
        String page = visitor.get("/ladder?track=Shed+loop&lane=red").body();
        assertThat(page).contains("Laps on red alone.").contains(">Dunlin").doesNotContain(">Knot");
        assertThat(visitor.get("/ladder?track=Shed+loop&lane=green").statusCode())
                .isEqualTo(404);
    }
}
