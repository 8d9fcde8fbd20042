package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The checks at the door, on every route. Sources: OWASP Application Security Verification Standard 5.0 (3.2.1, 3.4.2
 * to 3.4.6, 3.5.1 to 3.5.3, 13.4.4); RFC 9110, 15.5.20 for 421; W3C Fetch Metadata for Sec-Fetch-Site.
 */
class DoorTest {
    private static final String FORM = "Content-Type: application/x-www-form-urlencoded";
    private static final List<String> READS = List.of(
            "/",
            "/?example",
            "/ladder",
            "/ladder?track=Shed+loop",
            "/bench/change?name=plain",
            "/run",
            "/bench/sheet?name=plain",
            "/bench/sheet.csv?name=plain",
            "/bench/sheet.pdf?name=plain",
            "/next",
            "/next/learned?car=Greenshank&track=Shed+loop",
            "/next/score",
            "/next/even",
            "/next/best",
            "/bench/compare?name=plain",
            "/kept",
            "/kept/1",
            "/words",
            "/bench",
            "/bench/car?name=plain&track=Shed+loop",
            "/bench/car.json?name=plain",
            "/bench/guided?name=plain",
            "/bench/guided?name=plain&what=motor",
            "/bench/measure",
            "/bench/share.json?name=plain",
            "/bench/photo?name=plain",
            "/bench/classes",
            "/run/screening",
            "/run/gate",
            "/bench/photo.jpg?name=plain",
            "/shelf",
            "/shelf/part?id=1",
            "/shelf/part.json?id=1",
            "/bench/file",
            "/words/braid",
            "/favicon.ico",
            "/track",
            "/track?track=Hill",
            "/track/download?track=Hill",
            "/track/how-sure?track=Hill",
            "/track/draw",
            "/track/draw?track=Hill",
            "/track/rails?track=Hill",
            "/track/box",
            "/track/print?track=Hill",
            "/track/tiles?track=Hill&scale=5",
            "/track/lanes.svg?track=Hill",
            "/track/file",
            "/track/line",
            "/track/pieces",
            "/nowhere",
            "/kept/77",
            "/assets/0/none.css");
    private static final List<String> WRITES = List.of(
            "/",
            "/kept/1/remove",
            "/kept/1/bring-back",
            "/example/remove",
            "/example/bring-back",
            "/api/verdict",
            "/next/best",
            "/next/best/end",
            "/bench/change",
            "/bench/photo",
            "/shelf",
            "/shelf/part",
            "/bench/undo",
            "/bench/classes",
            "/run/screening",
            "/run/gate",
            "/bench/label",
            "/bench/class",
            "/bench/back",
            "/run",
            "/run/press",
            "/api/passes",
            "/track/draw",
            "/bench/guided",
            "/track/rails",
            "/track/file",
            "/track/line",
            "/track/pieces",
            "/bench/measure",
            "/bench/file",
            "/nowhere");

    private static Stage stage;

    @BeforeAll
    static void open() {
        stage = new Stage().withExampleGarage().withReferenceFiles().withBench().withAPart();
    }

    @AfterAll
    static void close() {
        stage.close();
    }

    static List<String> reads() {
        List<String> reads = new ArrayList<>(READS);
        reads.addAll(new Assets().addresses());
        return reads;
    }

    static List<String> writes() {
        return WRITES;
    }

    static Stream<String> foreignHosts() {
        return Stream.of(
                "evil.example",
                "evil.example:" + stage.port(),
                "localhost",
                "127.0.0.1:1",
                "127.0.0.1.evil.example:" + stage.port(),
                "localhost.:" + stage.port(),
                "127.0.0.2:" + stage.port(),
                "192.168.1.5:" + stage.port(),
                "[::2]:" + stage.port(),
                "user@127.0.0.1:" + stage.port());
    }

    @ParameterizedTest
    @MethodSource("reads")
    void everyAnswerCarriesTheHeaders(String path) {
        assertHeaders(get(path, host()));
    }

    @ParameterizedTest
    @MethodSource("reads")
    void anotherHostIsRefusedOnEveryRead(String path) {
        RawHttp.Answer answer = get(path, "Host: evil.example");
        assertThat(answer.status()).isEqualTo(421);
        assertHeaders(answer);
        assertThat(answer.body()).doesNotContain("Dunlin", "evil.example");
    }

    @ParameterizedTest
    @MethodSource("writes")
    void anotherHostIsRefusedOnEveryWrite(String path) {
        assertThat(post(path, "Host: evil.example", FORM, "Origin: http://evil.example")
                        .status())
                .isEqualTo(421);
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET", "HEAD", "POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "PROPFIND"})
    void anotherHostIsRefusedOnEveryMethod(String method) {
        RawHttp.Answer answer = RawHttp.send(stage.port(), method, "/", List.of("Host: evil.example"), "");
        assertThat(answer.status()).isEqualTo(421);
    }

    @ParameterizedTest
    @MethodSource("foreignHosts")
    void onlyThisMachineByNameIsAnswered(String host) {
        assertThat(get("/", "Host: " + host).status()).isIn(400, 421);
    }

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "localhost", "LocalHost", "[::1]"})
    void thisMachineHasThreeNames(String name) {
        assertThat(get("/", "Host: " + name + ":" + stage.port()).status()).isEqualTo(200);
    }

    @Test
    void anAddressInTheRequestLineDoesNotGetRoundIt() {
        assertThat(get("http://evil.example/", host()).status()).isIn(400, 421);
    }

    @Test
    void noHostOrTwoHostsAreRefused() {
        assertThat(RawHttp.send(stage.port(), "GET / HTTP/1.1\r\nConnection: close\r\n\r\n")
                        .status())
                .isEqualTo(400);
        assertThat(RawHttp.send(stage.port(), "GET / HTTP/1.0\r\n\r\n").status())
                .isEqualTo(421);
        assertThat(get("/", host(), "Host: evil.example").status()).isEqualTo(400);
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "PROPFIND", "QUERY"})
    void otherMethodsAreOff(String method) {
        RawHttp.Answer answer = RawHttp.send(stage.port(), method, "/", List.of(host(), ours()), "");
        assertThat(answer.status()).isIn(400, 405);
        assertThat(answer.body()).doesNotContain("TRACE /");
    }

    @ParameterizedTest
    @MethodSource("writes")
    void aWriteFromAnotherSiteIsRefused(String path) {
        assertThat(post(path, host(), FORM, "Origin: http://evil.example").status())
                .isEqualTo(403);
        assertThat(post(path, host(), FORM, "Origin: null").status()).isEqualTo(403);
        assertThat(post(path, host(), FORM, ours(), "Sec-Fetch-Site: cross-site")
                        .status())
                .isEqualTo(403);
        assertThat(post(path, host(), FORM, "Sec-Fetch-Site: same-site").status())
                .isEqualTo(403);
        assertThat(post(path, host(), FORM, "Origin: https://127.0.0.1:" + stage.port())
                        .status())
                .as("another scheme is another origin")
                .isEqualTo(403);
        assertThat(post(path, host(), FORM, "Origin: http://localhost:" + stage.port())
                        .status())
                .as("another name is another origin")
                .isEqualTo(403);
    }

    @ParameterizedTest
    @MethodSource("writes")
    void aFormWithoutAnyOriginIsRefused(String path) {
        assertThat(post(path, host(), FORM).status()).isEqualTo(403);
        assertThat(post(path, host(), "Content-Type: text/plain").status()).isEqualTo(403);
        assertThat(post(path, host(), "Content-Type: text/plain; application/json")
                        .status())
                .isEqualTo(403);
        assertThat(post(path, host()).status()).isEqualTo(403);
    }

    @ParameterizedTest
    @CsvSource({"/, 200", "/kept/1/remove, 303", "/kept/1/bring-back, 303", "/example/remove, 303"})
    void ourOwnPagesMayWrite(String path, int status) {
        assertThat(post(path, host(), FORM, ours(), "Sec-Fetch-Site: same-origin")
                        .status())
                .isEqualTo(status);
        assertThat(post("/example/bring-back", host(), FORM, ours()).status()).isEqualTo(303);
    }

    @ParameterizedTest
    @CsvSource({"/, 200", "/kept/1, 200", "/nowhere, 404"})
    void headTellsWhatGetWould(String path, int status) {
        RawHttp.Answer answer = RawHttp.send(stage.port(), "HEAD", path, List.of(host()), "");
        assertThat(answer.status()).isEqualTo(status);
        assertThat(answer.body()).isEmpty();
        assertHeaders(answer);
    }

    @Test
    void nothingIsSharedWithOtherOrigins() {
        RawHttp.Answer answer = get("/kept/1", host(), "Origin: http://evil.example");
        assertThat(answer.head()).doesNotContain("access-control-");
    }

    @Test
    void theBodyHasALimitWhicheverWayItComes() {
        String declared = "POST / HTTP/1.1\r\n%s\r\n%s\r\n%s\r\nContent-Length: %d\r\n\r\nlaps-1=6"
                .formatted(host(), ours(), FORM, Door.MOST_BYTES + 1);
        assertThat(RawHttp.send(stage.port(), declared).status()).isEqualTo(413);
        String large = "laps-1=" + "6".repeat((int) Door.MOST_BYTES - 6);
        String chunked =
                "POST / HTTP/1.1\r\n%s\r\n%s\r\n%s\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\n%s\r\n%s\r\n0\r\n\r\n"
                        .formatted(host(), ours(), FORM, Integer.toHexString(large.length()), large);
        RawHttp.Answer answer = RawHttp.send(stage.port(), chunked);
        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.body()).contains("at most 10 MB", "Nothing was saved");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/%00", "/words/%zz", "/%2e%2e/%2e%2e/etc/passwd", "/assets/..%2f..%2f", "/kept/1%0d%0aX: 1"})
    void crookedAddressesGetTheSameHeadersAndNoTrace(String path) {
        RawHttp.Answer answer = get(path, host());
        assertThat(answer.status()).isIn(400, 404);
        assertHeaders(answer);
        assertThat(answer.body()).doesNotContain("Exception", "org.eclipse", "java.");
    }

    @Test
    void filesKeepForEverAndPagesDoNot() {
        for (String path : new Assets().addresses()) {
            RawHttp.Answer answer = get(path, host());
            assertThat(answer.status()).isEqualTo(200);
            assertThat(answer.head()).contains("cache-control: public, max-age=31536000, immutable");
        }
        assertThat(get("/", host()).head()).contains("cache-control: no-cache");
    }

    @Test
    void theContentTypesAreRight() {
        assertThat(get("/", host()).head()).containsPattern("content-type: text/html; ?charset=utf-8");
        assertThat(new Assets()
                        .addresses().stream()
                                .map(path ->
                                        get(path, host()).head().replaceAll("(?s).*content-type: ([^;\r]*).*", "$1")))
                .containsExactly("text/css", "text/javascript", "text/javascript", "image/svg+xml");
    }

    private static void assertHeaders(RawHttp.Answer answer) {
        assertThat(answer.head())
                .contains(
                        "content-security-policy: default-src 'self'; object-src 'none'; base-uri 'none'; "
                                + "frame-ancestors 'none'; form-action 'self'",
                        "x-content-type-options: nosniff",
                        "referrer-policy: same-origin",
                        "cross-origin-resource-policy: same-origin",
                        "cache-control: ")
                .doesNotContain("\nserver:", "x-powered-by", "set-cookie", "access-control-");
        if (!answer.head().contains("text/html")) {
            return;
        }
        assertThat(answer.body().toLowerCase(Locale.ROOT))
                .doesNotContain("<script>", "javascript:", " onclick=", " style=", "http://www.w3.org/1999");
    }

    private static String host() {
        return "Host: 127.0.0.1:" + stage.port();
    }

    private static String ours() {
        return "Origin: http://127.0.0.1:" + stage.port();
    }

    private static RawHttp.Answer get(String path, String... headers) {
        return RawHttp.send(stage.port(), "GET", path, List.of(headers), "");
    }

    private static RawHttp.Answer post(String path, String... headers) {
        return RawHttp.send(stage.port(), "POST", path, List.of(headers), "do=check");
    }
}
