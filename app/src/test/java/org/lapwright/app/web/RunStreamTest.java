package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Pages that follow a drive: server-sent events as in WHATWG HTML, 9.2, with resume by the id seen last. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class RunStreamTest {
    private final HttpClient client = HttpClient.newHttpClient();
    private Stage stage;
    private Visitor visitor;
    private long sequence;

    @BeforeEach
    void open() {
        stage = new Stage().withBench();
        visitor = new Visitor(stage);
        Map<String, String> form = new HashMap<>(Map.of("car", "plain", "track", "Shed loop", "change", "shim in"));
        form.putAll(Map.of("plan", "ABBA x 10", "warm_up", "0", "lane_number", "2", "key", "begin"));
        visitor.post("/run", form);
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private record Event(String name, String id, String data) {}

    /** A page that follows. */
    private final class Page implements AutoCloseable {
        private final BufferedReader lines;
        private final HttpResponse<java.io.InputStream> answer;

        Page(String seen) throws IOException, InterruptedException {
            HttpRequest.Builder request =
                    HttpRequest.newBuilder(URI.create(stage.url("/run/stream"))).header("Accept", "text/event-stream");
            if (!seen.isEmpty()) {
                request.header("Last-Event-ID", seen);
            }
            answer = client.send(request.build(), HttpResponse.BodyHandlers.ofInputStream());
            lines = new BufferedReader(new InputStreamReader(answer.body(), StandardCharsets.UTF_8));
            assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("text/event-stream");
        }

        /** The next event; comments are none. */
        Event next() throws IOException {
            String name = "";
            String id = "";
            List<String> data = new ArrayList<>();
            while (true) {
                String line = lines.readLine();
                assertThat(line).as("the stream goes on").isNotNull();
                if (line.isEmpty() && !name.isEmpty()) {
                    return new Event(name, id, String.join("\n", data));
                } else if (line.startsWith("event:")) {
                    name = line.substring(6).strip();
                } else if (line.startsWith("id:")) {
                    id = line.substring(3).strip();
                } else if (line.startsWith("data:")) {
                    data.add(line.substring(5).strip());
                }
            }
        }

        /** Events until one shows so many laps; gives that one. */
        Event until(int laps) throws IOException {
            Event event = next();
            while (shown(event.data()) < laps) {
                event = next();
            }
            assertThat(shown(event.data())).isEqualTo(laps);
            return event;
        }

        @Override
        public void close() throws IOException {
            answer.body().close();
        }
    }

    private static int shown(String html) {
        return html.split("<span class=\"count\">", -1).length - 1;
    }

    private void pass() {
        String pass = "{\"source\":\"gate\",\"boot\":\"b\",\"sequence\":%d,\"lane\":2,\"time_ns\":%d}"
                .formatted(sequence, 6_300_000_000L * sequence);
        sequence++;
        assertThat(visitor.postJson("/api/passes", "{\"passes\":[" + pass + "]}")
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void everyViewerSeesEveryLapAndOneThatWasAwayCatchesUp() throws Exception {
        try (Page one = new Page("");
                Page other = new Page("")) {
            assertThat(one.next().data()).contains("the first pass starts the clock");
            pass();
            pass();
            Event seen = one.until(1);
            assertThat(other.until(1)).isEqualTo(seen);
            one.close();
            pass();
            pass();
            pass();
            try (Page again = new Page(seen.id())) {
                Event caughtUp = again.next();
                assertThat(shown(caughtUp.data())).isEqualTo(4);
                assertThat(other.until(4)).isEqualTo(caughtUp);
                assertThat(caughtUp.data()).isEqualTo(now(visitor.get("/run").body()));
            }
        }
    }

    /** The part of the page that the stream brings anew. */
    private static String now(String page) {
        int from = page.indexOf("<div id=\"now\"");
        String rest = page.substring(from, page.indexOf("<p id=\"running\""));
        return rest.lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .reduce((a, b) -> a + "\n" + b)
                .orElse("")
                .strip();
    }

    @Test
    void onlyWhatChangesIsTold() throws Exception {
        pass();
        pass();
        String seen;
        try (Page page = new Page("")) {
            seen = page.next().id();
        }
        try (Page page = new Page(seen)) {
            // A pass of another lane changes nothing here.
            visitor.postJson(
                    "/api/passes",
                    "{\"passes\":[{\"source\":\"gate\",\"boot\":\"c\",\"sequence\":0,\"lane\":1,\"time_ns\":1}]}");
            pass();
            assertThat(shown(page.next().data())).isEqualTo(2);
        }
    }

    @Test
    void theEndOfADriveIsTold() throws Exception {
        try (Page page = new Page("")) {
            Event event = page.next();
            String drive = event.id().split("-")[0];
            visitor.post("/run/press", Map.of("drive", drive, "key", "end", "do", "dropped"));
            assertThat(page.next().name()).isEqualTo("over");
        }
    }

    @Test
    void twoPeopleWhoPressOneButtonOnOneStatePressItOnce() {
        for (int i = 0; i < 11; i++) {
            pass();
        }
        String page = visitor.get("/run").body();
        String key = page.replaceAll("(?s).*?name=\"key\" value=\"([^\"]*)\".*", "$1");
        String drive = page.replaceAll("(?s).*?name=\"drive\" value=\"([^\"]*)\".*", "$1");
        Map<String, String> form = Map.of("drive", drive, "key", key, "do", "next-run");
        visitor.post("/run/press", form);
        visitor.post("/run/press", form);
        assertThat(visitor.get("/run").body()).contains("Run 2 of 4");
    }
}
