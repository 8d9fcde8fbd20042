package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.usecase.Glossary;

class PagesTest {
    private static final Pattern LINK = Pattern.compile("(?:href|src|action)=\"(/[^\"#]*)\"");

    private static Stage stage;
    private static Visitor visitor;

    @BeforeAll
    static void open() {
        stage = new Stage().withExampleGarage().withReferenceFiles().withBench();
        visitor = new Visitor(stage);
    }

    @AfterAll
    static void close() {
        stage.close();
    }

    @Test
    void noLinkLeadsNowhere() {
        Set<String> seen = new TreeSet<>(Set.of("/", "/?example"));
        Set<String> next = new TreeSet<>(seen);
        while (!next.isEmpty()) {
            Set<String> found = new TreeSet<>();
            for (String path : next) {
                HttpResponse<String> answer = visitor.get(path);
                assertThat(answer.statusCode()).as(path).isEqualTo(200);
                Matcher link = LINK.matcher(answer.body());
                while (link.find()) {
                    String to = link.group(1).replace("&amp;", "&");
                    if (!to.matches("/(example|kept/\\d+)/.*") && seen.add(to)) {
                        found.add(to);
                    }
                }
            }
            next = found;
        }
        assertThat(seen)
                .hasSizeGreaterThan(40)
                .contains("/ladder", "/kept/1", "/words/braid", "/bench/car?name=plain", "/bench/measure?name=plain");
    }

    @Test
    void theLadderNamesTies() {
        String page = visitor.get("/ladder").body();
        assertThat(page)
                .contains("Dunlin", "% chance to be ahead of", "<span class=\"tag\">example</span>")
                .containsPattern("aria-label=\"somewhere between 6\\.\\d{3} and 6\\.\\d{3} s\"");
        // No car of the example was driven on both lanes, so cars of different lanes are told apart by more than lanes
        // may do.
        assertThat(page).contains("red: nobody knows");
        try (Stage close = new Stage()) {
            close.keep("Knot", 6.5, 6.31, 1);
            close.keep("Ruff", 6.5, 6.312, 2);
            assertThat(new Visitor(close).get("/ladder").body())
                    .contains("1 =", "share a place: the laps cannot tell them apart");
        }
    }

    @Test
    void anUnknownTrackIsNotAFault() {
        HttpResponse<String> answer = visitor.get("/ladder?track=Nowhere");
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("There are no laps on a track of that name.");
    }

    @Test
    void emptyPagesSayWhatWillBeThereAndGiveOneButton() {
        try (Stage empty = new Stage()) {
            Visitor there = new Visitor(empty);
            assertThat(there.get("/ladder").body())
                    .contains("Here the cars of one track will stand", "Compare some laps");
            assertThat(there.get("/kept").body()).contains("Here every comparison", "Compare some laps");
            assertThat(there.get("/kept").body()).doesNotContain("example garage");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/kept/0", "/kept/99", "/kept/1e3", "/kept/9223372036854775808", "/kept/x", "/nix"})
    void whatIsNotThereSaysSo(String path) {
        HttpResponse<String> answer = visitor.get(path);
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("There is no page here.", "Nothing is lost.");
    }

    @Test
    void everyWordHasItsPageAndASlipFindsIt() {
        for (Glossary.Word word : new Glossary().words()) {
            assertThat(visitor.get("/words/" + word.slug()).body()).contains(word.term(), word.text());
        }
        HttpResponse<String> slip = visitor.get("/words/braad");
        assertThat(slip.statusCode()).isEqualTo(404);
        assertThat(slip.body()).contains("Did you mean “braid”?");
    }

    @Test
    void namesAreTextEverywhere() {
        String hostile = "<img src=x onerror=alert(1)>\"'&amp;${7*7}@if(true)</textarea></title><script>";
        Map<String, String> fields = Visitor.boxes(Visitor.laps(6.5, 12, 1), Visitor.laps(6.3, 12, 2) + hostile);
        fields.put("do", "look");
        Map<String, String> keep = new LinkedHashMap<>(fields);
        keep.putAll(Visitor.carried(visitor.post("/", fields).body()));
        keep.put("do", "keep");
        for (String name : new String[] {"car", "track", "lane", "driver", "change"}) {
            keep.put(name, hostile.substring(0, 36));
        }
        HttpResponse<String> answer = visitor.post("/", keep);
        assertThat(answer.statusCode()).isEqualTo(303);
        String kept = answer.headers().firstValue("Location").orElseThrow();
        String ladder = "/ladder?track="
                + java.net.URLEncoder.encode(hostile.substring(0, 36), java.nio.charset.StandardCharsets.UTF_8);
        for (String page : new String[] {
            visitor.post("/", fields).body(),
            visitor.get(kept).body(),
            visitor.get("/kept").body(),
            visitor.get(ladder).body(),
            visitor.get("/?example").body(),
            visitor.get("/words/%3Cimg%20src=x%20onerror=alert(1)%3E").body()
        }) {
            assertThat(page).doesNotContain("<img", "<script>", "\"'&amp;$", "49@if");
        }
        assertThat(visitor.get(kept).body()).contains("&lt;img src=x onerror=alert(1)&gt;");
    }

    @Test
    void aTakenPortIsExplained() {
        assertThatThrownBy(() -> Stage.on(stage.port()))
                .isInstanceOf(UncheckedIOException.class)
                .hasMessageContaining("port " + stage.port() + " is taken by another program; choose another one");
    }

    @Test
    void aFaultShowsNoInnards() {
        try (Stage broken = Stage.thatFails()) {
            Map<String, String> fields = Visitor.boxes("6.2 6.3", "6.1 6.2");
            fields.put("do", "look");
            HttpResponse<String> answer = new Visitor(broken).post("/", fields);
            assertThat(answer.statusCode()).isEqualTo(500);
            assertThat(answer.body())
                    .contains("Something went wrong in the program.", "your laps are still in the form")
                    .doesNotContain("secret", "Exception", "at org.lapwright");
        }
    }

    @Test
    void nothingIsPrintedWhileStartingAndAnswering() {
        java.io.PrintStream out = System.out;
        java.io.PrintStream err = System.err;
        var bytes = new java.io.ByteArrayOutputStream();
        var caught = new java.io.PrintStream(bytes, true, java.nio.charset.StandardCharsets.UTF_8);
        System.setOut(caught);
        System.setErr(caught);
        try (Stage quiet = new Stage()) {
            new Visitor(quiet).get("/");
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
        assertThat(bytes.toString(java.nio.charset.StandardCharsets.UTF_8)).isEmpty();
    }
}
