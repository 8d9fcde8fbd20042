package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lapwright.app.web.view.KeptListPage;

/** Many comparisons are shown a page at a time, the newest first; the ladder follows whatever is kept. */
class KeptListTest {
    @Test
    void manyAreShownAPageAtATime() {
        try (Stage stage = new Stage()) {
            Visitor visitor = new Visitor(stage);
            for (int i = 1; i <= KeptListPage.ROWS + 2; i++) {
                stage.keep("Car " + i + ".", 6.2, 6.1, i);
            }
            String newest = visitor.get("/kept").body();
            assertThat(newest)
                    .contains("Car 62.", "Car 3.", "href=\"/kept?from=60\"")
                    .doesNotContain("Car 2.", "Newer");
            assertThat(visitor.get("/kept?from=60").body())
                    .contains("Car 2.", "Car 1.", "Newer", "href=\"/kept\"")
                    .doesNotContain("Car 3.", "Older");
            assertThat(visitor.get("/kept?from=900").body()).contains("There are no older ones.");
            assertThat(visitor.get("/kept?from=x").body()).contains("Car 62.");
        }
    }

    @Test
    void aLadderThatIsRememberedFollowsWhatIsKeptAndTakenOut() {
        try (Stage stage = new Stage()) {
            Visitor visitor = new Visitor(stage);
            stage.keep("Redshank", 6.2, 6.1, 1);
            assertThat(visitor.get("/ladder?track=Shed+loop").body()).contains("Redshank");
            long second = stage.keep("Knot", 6.4, 6.3, 2).id();
            assertThat(visitor.get("/ladder?track=Shed+loop").body()).contains("Redshank", "Knot");
            visitor.post("/kept/" + second + "/remove", Map.of());
            assertThat(visitor.get("/ladder?track=Shed+loop").body())
                    .contains("Redshank")
                    .doesNotContain("Knot");
        }
    }
}
