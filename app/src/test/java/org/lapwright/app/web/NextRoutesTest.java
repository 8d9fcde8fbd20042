package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What to try next, over the wire. */
class NextRoutesTest {
    @Test
    void withoutCarOrTrackItSaysWhatWillBeHere() {
        try (Stage stage = new Stage()) {
            assertThat(new Visitor(stage).get("/next").body())
                    .contains("Here the changes worth an evening", "Measure a car");
        }
    }

    /** What a suggestion says it brings is what the form says that it leads to. */
    @Test
    void aSuggestionLeadsToItsFormFilledIn() {
        try (Stage stage = new Stage().withBench()) {
            Visitor visitor = new Visitor(stage);
            String page = visitor.get("/next?car=plain&track=Shed+loop").body();
            assertThat(page).contains("changes tried", "limit", "Do it and log it", "A guess of the model");
            Matcher link = Pattern.compile("href=\"(/bench/change[^\"]*)\">Do it and log it")
                    .matcher(page);
            assertThat(link.find()).isTrue();
            HttpResponse<String> form = visitor.get(link.group(1).replace("&amp;", "&"));
            assertThat(form.statusCode()).isEqualTo(200);
            Matcher words = Pattern.compile("<h2>([^<]*)</h2>").matcher(page);
            assertThat(words.find()).isTrue();
            assertThat(form.body()).contains("<p class=\"headline\">" + words.group(1) + "</p>", "Faster by");
        }
    }

    /** One tap: what the card says is the change that the run is about, and its plan is long enough for the laps it names. */
    @Test
    void oneTapStartsTheRunThatWouldProveIt() {
        try (Stage stage = new Stage().withBench()) {
            Visitor visitor = new Visitor(stage);
            String page = visitor.get("/next?car=plain&track=Shed+loop").body();
            Matcher form = Pattern.compile("action=\"/run\">(.*?)</form>", Pattern.DOTALL)
                    .matcher(page);
            assertThat(form.find()).isTrue();
            Map<String, String> fields = new HashMap<>();
            Pattern.compile("name=\"([^\"]*)\" value=\"([^\"]*)\"")
                    .matcher(form.group(1))
                    .results()
                    .forEach(field -> fields.put(field.group(1), field.group(2)));
            Matcher laps = Pattern.compile("about (\\d+) laps prove it").matcher(page);
            assertThat(laps.find()).isTrue();
            String plan = fields.getOrDefault("plan", "");
            assertThat(plan).startsWith("ABBA x ");
            assertThat(4 * Integer.parseInt(plan.substring(7))).isGreaterThanOrEqualTo(Integer.parseInt(laps.group(1)));
            assertThat(visitor.post("/run", fields).statusCode()).isEqualTo(303);
            assertThat(visitor.get("/run").body())
                    .contains("Run 1 of 4, without the change")
                    .contains(fields.getOrDefault("change", "no change").substring(0, 10));
        }
    }

    @Test
    void aCarThatIsNotThereIsSaid() {
        try (Stage stage = new Stage().withBench()) {
            assertThat(new Visitor(stage).get("/next?car=nobody").statusCode()).isEqualTo(404);
            assertThat(new Visitor(stage).get("/next?track=nowhere").body()).contains("cannot be read");
        }
    }

    /** The example garage has laps of cars that are on file: what they tell is told, and the advice stands on it. */
    @Test
    void whatTheLapsTellIsTold() {
        try (Stage stage = new Stage().withExampleGarage().withBench()) {
            Visitor visitor = new Visitor(stage);
            String told =
                    visitor.get("/next/learned?car=Greenshank&track=Shed+loop").body();
            assertThat(told)
                    .contains("Learned from", "Driver's share of the best lap", "What it can do now", "split R̂");
            assertThat(visitor.get("/next?car=Greenshank&track=Shed+loop").body())
                    .contains("of its runs leave them", "/next/learned?car=Greenshank");
        }
    }

    @Test
    void withoutLapsItSaysWhatIsMissing() {
        try (Stage stage = new Stage().withBench()) {
            Visitor visitor = new Visitor(stage);
            assertThat(visitor.get("/next/learned?car=plain&track=Shed+loop").body())
                    .contains("No laps of “plain” on “Shed loop”");
            assertThat(visitor.get("/next/learned?car=nobody").statusCode()).isEqualTo(404);
            assertThat(visitor.get("/next/learned?track=nowhere").body()).contains("cannot be read");
        }
        try (Stage stage = new Stage()) {
            assertThat(new Visitor(stage).get("/next/learned").body()).contains("Here will stand what your laps tell");
        }
    }
}
