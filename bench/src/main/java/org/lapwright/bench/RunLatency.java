package org.lapwright.bench;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How long it takes from a gate's pass until every page that follows the drive has it: eight lanes at five passes a second each and
 * ten pages, against a server that runs already with an empty garage. Every third pass of the drive's lane ends a lap.
 */
public final class RunLatency {
    private static final Logger LOG = Logger.getLogger(RunLatency.class.getName());
    private static final int VIEWERS = 10;
    private static final int LANES = 8;
    private static final int LANE = 1;
    private static final int LAPS = 100;
    private static final long EVERY_MS = 200;
    private static final int PASSES_A_LAP = 3;
    private static final Pattern SEEN = Pattern.compile("data-seen=\"\\d+-\\d+-\\d+-\\d+-(\\d+)-\\d+\"");

    private final String url;
    private final HttpClient client = HttpClient.newHttpClient();
    private final Map<Integer, Long> sentNs = new ConcurrentHashMap<>();
    private final List<Double> waitedMs = Collections.synchronizedList(new ArrayList<>());

    private RunLatency(String url) {
        this.url = url;
    }

    /** Measures against the server at the address named first, as {@code http://127.0.0.1:8737}. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        new RunLatency(arguments[0]).measure();
    }

    private void measure() throws IOException, InterruptedException {
        post(
                "/run",
                "application/x-www-form-urlencoded",
                form(Map.of(
                        "car",
                        "car",
                        "track",
                        "track",
                        "plan",
                        "AB x " + LAPS,
                        "warm_up",
                        "0",
                        "lane_number",
                        "" + LANE,
                        "key",
                        "latency")));
        for (int viewer = 0; viewer < VIEWERS; viewer++) {
            Thread follower = new Thread(this::follow);
            follower.setDaemon(true);
            follower.start();
        }
        TimeUnit.SECONDS.sleep(2);
        long start = System.nanoTime();
        long sequence = 0;
        for (int beat = 0; beat <= LAPS * PASSES_A_LAP; beat++) {
            for (int lane = 1; lane <= LANES; lane++) {
                boolean lap = lane == LANE && beat > 0 && beat % PASSES_A_LAP == 0;
                if (lap) {
                    sentNs.put(LAPS - beat / PASSES_A_LAP, System.nanoTime());
                }
                post("/api/passes", "application/json", pass(sequence++, lane, beat));
            }
            long next = start + (beat + 1) * EVERY_MS * 1_000_000;
            TimeUnit.NANOSECONDS.sleep(Math.max(0, next - System.nanoTime()));
        }
        TimeUnit.SECONDS.sleep(1);
        tell();
    }

    private void tell() {
        double[] sorted =
                waitedMs.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        LOG.info(() -> String.format(
                Locale.ROOT,
                "%d of %d seen; ms: half under %.1f, 99 of 100 under %.1f, most %.1f",
                sorted.length,
                LAPS * VIEWERS,
                sorted[sorted.length / 2],
                sorted[(int) Math.ceil(0.99 * sorted.length) - 1],
                Arrays.stream(sorted).max().orElseThrow()));
    }

    /** A page that is looked at: takes the stream and notes when each lap has come. */
    private void follow() {
        try {
            HttpResponse<java.util.stream.Stream<String>> stream = client.send(
                    HttpRequest.newBuilder(URI.create(url + "/run/stream?seen="))
                            .build(),
                    BodyHandlers.ofLines());
            stream.body().forEach(line -> {
                Matcher seen = SEEN.matcher(line);
                if (seen.find()) {
                    Long sent = sentNs.get(Integer.parseInt(seen.group(1)));
                    if (sent != null) {
                        waitedMs.add((System.nanoTime() - sent) / 1e6);
                    }
                }
            });
        } catch (IOException gone) {
            LOG.log(Level.WARNING, "a page was left alone", gone);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private static String pass(long sequence, int lane, int beat) {
        return "{\"passes\":[{\"source\":\"gate\",\"boot\":\"b\",\"sequence\":%d,\"lane\":%d,\"time_ns\":%d}]}"
                .formatted(sequence, lane, (1 + beat) * EVERY_MS * 1_000_000);
    }

    private void post(String path, String type, String body) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create(url + path))
                        .header("Content-Type", type)
                        .header("Origin", url)
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
        if (answer.statusCode() >= 400) {
            throw new IOException(path + " was answered by " + answer.statusCode() + ": " + answer.body());
        }
    }

    private static String form(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(each -> each.getKey() + "=" + URLEncoder.encode(each.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }
}
