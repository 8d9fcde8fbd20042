package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.photo.Pictures;

/** The photo of a car over the wire. */
class PhotoRoutesTest {
    private final Stage stage = new Stage().withBench();
    private final HttpClient client = HttpClient.newHttpClient();

    @AfterEach
    void close() {
        stage.close();
    }

    private HttpResponse<byte[]> get(String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(stage.url(path))).build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private HttpResponse<String> post(String car, String press, byte[] photo) throws IOException, InterruptedException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (String[] field : new String[][] {{"name", car}, {"do", press}}) {
            body.writeBytes("--rim\r\nContent-Disposition: form-data; name=\"%s\"\r\n\r\n%s\r\n"
                    .formatted(field[0], field[1])
                    .getBytes(StandardCharsets.UTF_8));
        }
        body.writeBytes(
                "--rim\r\nContent-Disposition: form-data; name=\"file\"; filename=\"../../x.exe\"\r\nContent-Type: image/jpeg\r\n\r\n"
                        .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(photo);
        body.writeBytes("\r\n--rim--\r\n".getBytes(StandardCharsets.UTF_8));
        return client.send(
                HttpRequest.newBuilder(URI.create(stage.url("/bench/photo")))
                        .header("Origin", stage.url(""))
                        .header("Content-Type", "multipart/form-data; boundary=rim")
                        .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void aPhotoIsKeptShownAndTakenAway() throws Exception {
        assertThat(get("/bench/photo.jpg?name=plain").statusCode()).isEqualTo(404);
        assertThat(post("plain", "keep", Pictures.jpegOfACamera(80, 60, 1)).statusCode())
                .isEqualTo(303);
        HttpResponse<byte[]> photo = get("/bench/photo.jpg?name=plain");
        assertThat(photo.headers().firstValue("Content-Type")).contains("image/jpeg");
        assertThat(photo.body()).startsWith((byte) 0xFF, (byte) 0xD8);
        assertThat(new String(photo.body(), StandardCharsets.ISO_8859_1)).doesNotContain("Exif", Pictures.SECRET);
        assertThat(new String(get("/bench/car?name=plain").body(), StandardCharsets.UTF_8))
                .contains("src=\"/bench/photo.jpg?name=plain\"");
        assertThat(post("plain", "remove", new byte[0]).statusCode()).isEqualTo(303);
        assertThat(get("/bench/photo.jpg?name=plain").statusCode()).isEqualTo(404);
        assertThat(new String(get("/bench/car?name=plain").body(), StandardCharsets.UTF_8))
                .doesNotContain("photo.jpg");
    }

    /** Bytes behind the end of a JPEG are no part of it. */
    @Test
    void fifteenMegabytesFitAndMoreDoNot() throws Exception {
        byte[] camera = Pictures.jpegOfACamera(80, 60, 1);
        assertThat(post("plain", "keep", Arrays.copyOf(camera, 15_000_000)).statusCode())
                .isEqualTo(303);
        HttpResponse<String> more = post("plain", "keep", Arrays.copyOf(camera, 15_000_001));
        assertThat(more.statusCode()).isEqualTo(422);
        assertThat(more.body()).contains("at most 15 MB fit");
        String head =
                "POST /bench/photo HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nOrigin: %s\r\nContent-Type: multipart/form-data; boundary=rim\r\n"
                        .formatted(stage.port(), stage.url(""));
        RawHttp.Answer declared = RawHttp.send(stage.port(), head + "Content-Length: 16000000\r\n\r\n--rim");
        assertThat(declared.status()).isEqualTo(413);
        assertThat(declared.body()).contains("at most 15 MB fit", "Nothing was saved");
        String part = "--rim\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a\"\r\n\r\n"
                + "6".repeat(16_000_000);
        RawHttp.Answer chunked = RawHttp.send(
                stage.port(),
                head
                        + "Transfer-Encoding: chunked\r\nConnection: close\r\n\r\n%s\r\n%s\r\n0\r\n\r\n"
                                .formatted(Integer.toHexString(part.length()), part));
        assertThat(chunked.status()).isBetween(400, 422);
        assertThat(chunked.body()).contains("Nothing was");
        assertThat(stage.garage().photo("plain").orElseThrow()).hasSizeLessThan(5_000);
    }

    @Test
    void whatIsNoPhotoIsSaidAndNothingIsSaved() throws Exception {
        HttpResponse<String> text = post("plain", "keep", "<script>".getBytes(StandardCharsets.UTF_8));
        assertThat(text.statusCode()).isEqualTo(422);
        assertThat(text.body()).contains("Nothing was saved", "neither a JPEG nor a PNG");
        assertThat(post("plain", "keep", new byte[0]).body()).contains("no photo was chosen");
        assertThat(post("nobody", "keep", Pictures.jpegOfACamera(8, 8, 1)).statusCode())
                .isEqualTo(404);
        stage.garage().failWith("The disk is full.");
        assertThat(post("plain", "keep", Pictures.jpegOfACamera(8, 8, 1)).statusCode())
                .isEqualTo(503);
        assertThat(stage.garage().photo("plain")).isEmpty();
    }
}
