package org.lapwright.app.capture;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.core.laps.pass.Pass;

/**
 * Sends passes to the page <i>Run</i> of a program that is serving, in the order in which they came; while it does not answer they wait.
 * What was sent twice is taken once there.
 */
final class RunPageSink implements PassSink {
    private static final Duration PATIENCE = Duration.ofSeconds(5);
    private static final int AGAIN_MS = 500;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final HttpClient http =
            HttpClient.newBuilder().connectTimeout(PATIENCE).build();
    private final URI door;
    private final SourceNews news;

    /** A gate on the sound card counts its samples from the start of listening: no two of those may be taken for one. */
    private final String start = UUID.randomUUID().toString().substring(0, 8);

    private boolean away;

    private record Batch(List<Sent> passes) {}

    private record Sent(
            String source,
            String boot,
            long sequence,
            int lane,
            int gate,
            String clock,
            @JsonProperty("time_ns") long timeNs,
            @JsonProperty("sigma_s") double sigmaS) {}

    private RunPageSink(URI door, SourceNews news) {
        this.door = door;
        this.news = news;
    }

    /**
     * A sink.
     *
     * @param address of the program
     * @param news is told when it does not answer, or takes a pass for none
     * @throws IOException if the address is none
     */
    static RunPageSink to(String address, SourceNews news) throws IOException {
        try {
            URI door = URI.create(address).resolve("/api/passes");
            if (!"http".equals(door.getScheme()) || door.getHost() == null) {
                throw new IOException(address + " should be like http://127.0.0.1:8737");
            }
            return new RunPageSink(door, news);
        } catch (IllegalArgumentException wrong) {
            throw new IOException(address + " should be like http://127.0.0.1:8737", wrong);
        }
    }

    @Override
    public boolean accept(List<Pass> passes) {
        try {
            while (!sent(passes)) {
                if (!away) {
                    away = true;
                    news.gone("nobody takes passes at " + door);
                }
                Thread.sleep(AGAIN_MS);
            }
            if (away) {
                away = false;
                news.back();
            }
            return true;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** False where it should be tried again. */
    private boolean sent(List<Pass> passes) throws InterruptedException {
        try {
            byte[] body = JSON.writeValueAsBytes(
                    new Batch(passes.stream().map(each -> sent(each)).toList()));
            HttpRequest request = HttpRequest.newBuilder(door)
                    .timeout(PATIENCE)
                    .header("Content-Type", "application/json")
                    .header("Accept", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofByteArray(body))
                    .build();
            HttpResponse<byte[]> answer = http.send(request, HttpResponse.BodyHandlers.ofByteArray());
            if (answer.statusCode() >= 400 && answer.statusCode() < 500) {
                news.unreadable("the page Run did not take it: " + why(answer));
            }
            return answer.statusCode() < 500;
        } catch (IOException noAnswer) {
            return false;
        }
    }

    private static String why(HttpResponse<byte[]> answer) {
        String number = "answer " + answer.statusCode();
        try {
            String detail = JSON.readTree(answer.body()).path("detail").asText(number);
            return detail.endsWith(".") ? detail.substring(0, detail.length() - 1) : detail;
        } catch (IOException noJson) {
            return number;
        }
    }

    private Sent sent(Pass pass) {
        return new Sent(
                pass.source(),
                start + " " + pass.boot(),
                pass.sequence(),
                pass.lane(),
                pass.gate(),
                pass.stamp().clock().name().toLowerCase(Locale.ROOT),
                pass.stamp().timeNs(),
                pass.stamp().sigmaS());
    }
}
