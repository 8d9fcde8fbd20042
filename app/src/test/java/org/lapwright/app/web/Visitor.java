package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A browser without a script: opens pages, fills the form, presses buttons. */
final class Visitor {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final Pattern HIDDEN =
            Pattern.compile("<input type=\"hidden\" name=\"([^\"]*)\" value=\"([^\"]*)\">");

    private static final String RIM = "----rim";

    private final Stage stage;

    Visitor(Stage stage) {
        this.stage = stage;
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(stage.url(path))).GET());
    }

    HttpResponse<String> post(String path, Map<String, String> fields) {
        List<String> pairs = new ArrayList<>();
        fields.forEach((name, value) -> pairs.add(encode(name) + "=" + encode(value)));
        return send(HttpRequest.newBuilder(URI.create(stage.url(path)))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", stage.url(""))
                .POST(HttpRequest.BodyPublishers.ofString(String.join("&", pairs))));
    }

    /** Sends one file as a browser's form does (RFC 7578). */
    HttpResponse<String> upload(String path, String field, String name, String text) {
        return multipart(path, HttpRequest.BodyPublishers.ofString(parts(field, name, text)));
    }

    /** The same without telling its length beforehand. */
    HttpResponse<String> uploadInChunks(String path, String field, String name, String text) {
        byte[] bytes = parts(field, name, text).getBytes(StandardCharsets.UTF_8);
        return multipart(path, HttpRequest.BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(bytes)));
    }

    private HttpResponse<String> multipart(String path, HttpRequest.BodyPublisher body) {
        return send(HttpRequest.newBuilder(URI.create(stage.url(path)))
                .header("Content-Type", "multipart/form-data; boundary=" + RIM)
                .header("Origin", stage.url(""))
                .POST(body));
    }

    private static String parts(String field, String name, String text) {
        return "--%s\r\nContent-Disposition: form-data; name=\"%s\"; filename=\"%s\"\r\nContent-Type: application/json\r\n\r\n%s\r\n--%s--\r\n"
                .formatted(RIM, field, name, text, RIM);
    }

    HttpResponse<String> postJson(String path, String json) {
        return send(HttpRequest.newBuilder(URI.create(stage.url(path)))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json)));
    }

    /** The value of the first field of a name. */
    static String field(String html, String name) {
        Matcher found =
                Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(html);
        assertThat(found.find()).as(name).isTrue();
        return found.group(1);
    }

    /** The hidden fields of the Before / After page, as its next form would send them. */
    static Map<String, String> carried(String html) {
        Map<String, String> fields = new LinkedHashMap<>();
        String form = html.substring(html.indexOf("<form id=\"compare\""));
        Matcher hidden = HIDDEN.matcher(form);
        while (hidden.find()) {
            fields.put(hidden.group(1), hidden.group(2));
        }
        return fields;
    }

    /** Laps about a pace, always the same for the same seed. */
    static String laps(double pace, int count, long seed) {
        var random = new java.util.SplittableRandom(seed);
        StringBuilder laps = new StringBuilder();
        for (int i = 0; i < count; i++) {
            laps.append(String.format(java.util.Locale.ROOT, "%.3f%n", pace + random.nextDouble(-0.05, 0.05)));
        }
        return laps.toString();
    }

    /** Two boxes with laps in them. */
    static Map<String, String> boxes(String before, String after) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("side-1", "before");
        fields.put("laps-1", before);
        fields.put("side-2", "after");
        fields.put("laps-2", after);
        return fields;
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }
}
