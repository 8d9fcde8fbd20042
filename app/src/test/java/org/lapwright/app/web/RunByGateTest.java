package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.lapwright.app.capture.Gates;
import org.lapwright.app.capture.Sent;
import org.lapwright.app.usecase.capture.PassSink;

/** What a gate sees goes to the page Run and is judged there. */
class RunByGateTest {
    private final Sent news = new Sent();
    private final Gates gates = new Gates(System::nanoTime);
    private final Random random = new Random(6);
    private long sequence;
    private double at = 100;

    /** The lines of a gate while a run is driven. */
    private void drive(PassSink page, double pace) throws IOException {
        StringBuilder lines = new StringBuilder(Sent.beat("7f3a", at)).append('\n');
        at += 30;
        lines.append(Sent.pass(sequence++, at)).append('\n');
        for (int i = 0; i < 10; i++) {
            at += pace + 0.02 * random.nextGaussian();
            lines.append(Sent.pass(sequence++, at)).append('\n');
        }
        gates.lines(new ByteArrayInputStream(lines.toString().getBytes(StandardCharsets.US_ASCII)))
                .listen(page, news);
    }

    private static void next(Visitor visitor) {
        String page = visitor.get("/run").body();
        visitor.post(
                "/run/press",
                Map.of("drive", Visitor.field(page, "drive"), "key", Visitor.field(page, "key"), "do", "next-run"));
    }

    @Test
    void aWholeSessionRunsToItsVerdictOnThePage() throws IOException {
        try (Stage stage = new Stage().withBench()) {
            Visitor visitor = new Visitor(stage);
            PassSink page = gates.runPage(stage.url("/"), news);
            drive(page, 6.3);
            assertThat(news.isTold("unreadable")).as("no drive is on").isTrue();
            news.clear();
            Map<String, String> form = new HashMap<>(Map.of("car", "plain", "track", "Shed loop", "change", "shim in"));
            form.putAll(Map.of("plan", "ABBA x 10", "warm_up", "0", "lane_number", "1", "key", "begin"));
            visitor.post("/run", form);
            drive(page, 6.3);
            next(visitor);
            drive(page, 6.1);
            next(visitor);
            drive(page, 6.1);
            next(visitor);
            drive(page, 6.3);
            assertThat(visitor.get("/run").body()).contains("All runs are driven.", "s a lap faster");
            assertThat(news.isTold("unreadable")).isFalse();
        }
    }

    @Test
    void passesWaitWhileNobodyTakesThemAndKeepTheirOrder() throws IOException {
        List<String> taken = new CopyOnWriteArrayList<>();
        List<Integer> answers = new CopyOnWriteArrayList<>(List.of(200, 503, 503));
        HttpServer server = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
        server.createContext("/api/passes", exchange -> {
            String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
            int answer = answers.isEmpty() ? 200 : answers.remove(0);
            if (answer == 200) {
                taken.add(body.replaceAll(".*\"sequence\":(\\d+).*", "$1"));
            }
            exchange.sendResponseHeaders(answer, -1);
            exchange.close();
        });
        server.start();
        try {
            drive(gates.runPage("http://127.0.0.1:" + server.getAddress().getPort(), news), 6.3);
        } finally {
            server.stop(0);
        }
        assertThat(taken).containsExactly("0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10");
        assertThat(news.told()).containsExactly("gone", "back");
    }

    @Test
    void anAddressThatIsNoneIsNamed() {
        assertThatThrownBy(() -> gates.runPage("over there", news)).hasMessageContaining("http://127.0.0.1:8737");
        assertThatThrownBy(() -> gates.runPage("ftp://127.0.0.1", news)).hasMessageContaining("http://127.0.0.1:8737");
    }

    /** The laps of a run with two section gates; half of the lap's gain is looked for behind the first. */
    private void driveSections(PassSink page, double firstS, double restS) throws IOException {
        StringBuilder lines = new StringBuilder(Sent.beat("7f3a", at)).append('\n');
        at += 30;
        lines.append(Sent.pass(sequence++, at)).append('\n');
        for (int i = 0; i < 10; i++) {
            double split = at + firstS + 0.01 * random.nextGaussian();
            lines.append(Sent.line("P,%d,1,%d,1,1".formatted(sequence++, Math.round(split * 1e6))))
                    .append('\n');
            at = split + restS + 0.01 * random.nextGaussian();
            lines.append(Sent.pass(sequence++, at)).append('\n');
        }
        gates.lines(new ByteArrayInputStream(lines.toString().getBytes(StandardCharsets.US_ASCII)))
                .listen(page, news);
    }

    @Test
    void aSectionGateShowsWhereTheChangeGains() throws IOException {
        try (Stage stage = new Stage().withBench()) {
            Visitor visitor = new Visitor(stage);
            PassSink page = gates.runPage(stage.url("/"), news);
            Map<String, String> form = new HashMap<>(Map.of("car", "plain", "track", "Shed loop", "change", "shim in"));
            form.putAll(Map.of("plan", "ABBA x 10", "warm_up", "0", "lane_number", "1", "key", "begin"));
            visitor.post("/run", form);
            driveSections(page, 2.4, 3.9);
            assertThat(visitor.get("/run").body())
                    .containsPattern("class=\"splits\">2\\.\\d{3} · 3\\.\\d{3}<")
                    .doesNotContain("Where on the lap");
            next(visitor);
            driveSections(page, 2.3, 3.9);
            next(visitor);
            driveSections(page, 2.3, 3.9);
            next(visitor);
            driveSections(page, 2.4, 3.9);
            assertThat(visitor.get("/run").body())
                    .contains("Where on the lap", "With the change faster in section 1.")
                    .containsPattern("section 2</th><td>3\\.\\d{3}</td>");
            String done = visitor.get("/run").body();
            visitor.post(
                    "/run/press",
                    Map.of("drive", Visitor.field(done, "drive"), "key", Visitor.field(done, "key"), "do", "kept"));
            assertThat(visitor.get("/kept/1").body()).contains("With the change faster in section 1.");
        }
    }
}
