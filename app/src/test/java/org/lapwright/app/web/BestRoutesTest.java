package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class BestRoutesTest {
    private static final long PATIENCE_MS = 30_000;

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

    private static Map<String, String> asked() {
        return new HashMap<>(Map.of("car", "plain", "track", "Shed loop"));
    }

    private String finished(String address) throws InterruptedException {
        long until = System.currentTimeMillis() + PATIENCE_MS;
        String page = visitor.get(address).body();
        while (page.contains("Searching") && System.currentTimeMillis() < until) {
            Thread.sleep(50);
            page = visitor.get(address).body();
        }
        return page;
    }

    @Test
    void aSearchIsBegunLookedAtAndFound() throws InterruptedException {
        assertThat(visitor.get("/next/best").body())
                .contains("Best set-up", "Search")
                .doesNotContain("id=\"search\"");
        HttpResponse<String> begun = visitor.post("/next/best", asked());
        assertThat(begun.statusCode()).isEqualTo(303);
        String page = finished(begun.headers().firstValue("Location").orElseThrow());
        assertThat(page)
                .contains(
                        "Found",
                        "plain could do",
                        "by itself</strong>; so far lap",
                        "Do it and log it",
                        "After all steps")
                .contains("/bench/change?name=plain&amp;kind=");
    }

    @Test
    void rulesOfTheClassAndOneLaneAreKept() throws InterruptedException {
        Map<String, String> asked = asked();
        asked.putAll(Map.of("lane", "red", "most_mass", "1", "no_magnet", "yes"));
        HttpResponse<String> begun = visitor.post("/next/best", asked);
        String page = finished(begun.headers().firstValue("Location").orElseThrow());
        // No set-up of this car weighs so little, not even as it is.
        assertThat(page).contains("The car breaks a rule of the class as it is").contains("value=\"red\"");
    }

    @Test
    void aSearchCanBeEndedEarly() throws InterruptedException {
        HttpResponse<String> begun = visitor.post("/next/best", asked());
        String address = begun.headers().firstValue("Location").orElseThrow();
        Map<String, String> end = asked();
        end.put("job", address.replaceFirst(".*job=(\\d+).*", "$1"));
        assertThat(visitor.post("/next/best/end", end).statusCode()).isEqualTo(303);
        assertThat(finished(address)).containsAnyOf("Ended early", "Found");
    }

    @Test
    void whatCannotBeIsSaid() {
        Map<String, String> wrong = asked();
        wrong.putAll(Map.of("track", "nowhere", "least_mass", "heavy"));
        HttpResponse<String> page = visitor.post("/next/best", wrong);
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("There is no track", "Least weight", "value=\"heavy\"");
        Map<String, String> lane = asked();
        lane.put("lane", "mauve");
        assertThat(visitor.post("/next/best", lane).body()).contains("mauve");
        assertThat(visitor.get("/next/best?job=99").statusCode()).isEqualTo(404);
    }
}
