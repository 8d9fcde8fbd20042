package org.lapwright.app.files.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawings made to hurt: refused with a sentence; the time limit is there to catch a hang, not to measure. */
class HostileDrawingTest {
    private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\">";

    private static String refusal(String text) {
        DrawingFile.Reading reading =
                Assertions.assertTimeoutPreemptively(Duration.ofSeconds(60), () -> DrawingFile.read(text));
        assertThat(reading.drawing()).isEmpty();
        return reading.problem().orElseThrow().sentence();
    }

    private static String path(String data) {
        return SVG + "<path d=\"" + data + "\"/></svg>";
    }

    @Test
    void aBillionLaughs() {
        StringBuilder laughs = new StringBuilder("<?xml version=\"1.0\"?><!DOCTYPE svg [<!ENTITY a0 \"ha\">");
        for (int i = 1; i < 10; i++) {
            laughs.append("<!ENTITY a%d \"".formatted(i))
                    .append(("&a" + (i - 1) + ";").repeat(10))
                    .append("\">");
        }
        assertThat(refusal(laughs + "]>" + SVG + "<path d=\"M0 0&a9;L9 9\"/></svg>"))
                .contains("entities");
        assertThat(refusal(laughs + "]>" + SVG + "<text>&a9;</text></svg>")).isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/passwd\">]>",
                "<!DOCTYPE svg [<!ENTITY % x SYSTEM \"http://127.0.0.1:1/x.dtd\"> %x;]>",
            })
    void externalEntitiesAreNotFetched(String type) {
        assertThat(refusal(type + SVG + "<path d=\"M0 0L&x;9 9\"/></svg>"))
                .contains("entities")
                .doesNotContain("root:");
        assertThat(refusal(type + SVG + "<text>&x;</text></svg>")).doesNotContain("root:");
    }

    /** Many programs write a document type of SVG 1.1; it is passed over. */
    @Test
    void aPlainDocumentTypeIsPassedOver() {
        String type = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\""
                + " \"http://127.0.0.1:1/svg11.dtd\">\n";
        assertThat(DrawingFile.read("\uFEFF" + type + path("M0 0L9 9")).drawing())
                .isPresent();
    }

    @Test
    void scriptsStylesAndRepeatsAreNotLookedAt() {
        String text = SVG + "<script>alert(1)</script><style>@import url(http://127.0.0.1:1/)</style>"
                + "<g id=\"a\"><use href=\"#b\"/></g><g id=\"b\" onload=\"alert(1)\"><use href=\"#a\"/></g>"
                + "<image href=\"http://127.0.0.1:1/x.png\"/><foreignObject><svg><path d=\"M0 0L1 1\"/></svg></foreignObject>"
                + "<defs><path d=\"M0 0L1 1\"/></defs><path display=\"none\" d=\"M0 0L1 1\"/><path d=\"M0 0L9 9\"/></svg>";
        Drawing drawing = DrawingFile.read(text).drawing().orElseThrow();
        assertThat(drawing.outlines()).hasSize(1);
        assertThat(String.join(" ", drawing.leftOut()))
                .contains("1 × script", "2 × use", "1 × image", "1 × foreignObject", "1 × hidden path");
    }

    @ParameterizedTest
    @ValueSource(strings = {"M0 0L1e999 0", "M0 0L-1e10 5", "M1e308 0l1e308 0 1e308 0", "M0 0A1e999 5 0 0 1 9 9"})
    void endlessNumbers(String data) {
        assertThat(refusal(path(data))).contains("beyond 1,000,000,000");
    }

    @Test
    void whatIsNoNumber() {
        assertThat(DrawingFile.read(path("M0 0L9 9L NaN 7"))
                        .drawing()
                        .orElseThrow()
                        .leftOut())
                .first()
                .asString()
                .contains("NaN");
        assertThat(refusal(SVG + "<g transform=\"scale(NaN)\"><path d=\"M0 0L9 9\"/></g></svg>"))
                .contains("Line 1", "not a transform");
        assertThat(refusal("0\nSECTION\n2\nENTITIES\n0\nLINE\n11\nNaN\n0\nEOF")).contains("'NaN' is not a number");
        assertThat(refusal("0\nSECTION\n2\nENTITIES\n0\nLINE\n11\n1e999\n0\nEOF"))
                .contains("beyond");
        assertThat(refusal("0\nSECTION\n2\nENTITIES\n0\nLINE\n11\n1,5\n0\nEOF")).contains("no comma");
    }

    @Test
    void aMillionStrokes() {
        assertThat(refusal(path("M0 0" + "l1 1".repeat(1_000_000)))).contains("200000");
        assertThat(refusal(SVG + "<path d=\"M0 0L1 1\"/>".repeat(210_000) + "</svg>"))
                .contains("200");
        assertThat(refusal(SVG + "<g/>".repeat(210_000) + "</svg>")).contains("200,000 elements");
        assertThat(refusal("0\nSECTION\n2\nENTITIES\n" + "0\nLINE\n11\n1\n".repeat(300_000)))
                .contains("200000");
        assertThat(refusal("0\nSECTION\n2\nENTITIES\n0\nSPLINE\n" + "10\n1\n".repeat(300_000)))
                .contains("200,000 groups");
    }

    /** What is promised fits. */
    @Test
    void nearlyAsManyPointsAsMayBe() {
        String most = SVG + "<polyline points=\"" + "0,0 1,1 ".repeat(99_000) + "\"/></svg>";
        assertThat(DrawingFile.read(most).drawing()).isPresent();
        assertThat(refusal(most.replace("1,1 ", "1,1 2,2 "))).contains("200000");
    }

    @Test
    void nestedTooDeep() {
        assertThat(refusal(SVG + "<g>".repeat(100_000))).contains("nested more than 100 deep");
        assertThat(refusal(SVG + "<x>".repeat(100_000))).contains("nested more than 100 deep");
        assertThat(refusal(SVG + "<g transform=\"" + "scale(2)".repeat(250_000) + "\"/></svg>"))
                .isNotBlank();
    }

    @Test
    void somethingElseAltogether() {
        assertThat(refusal("")).contains("There is no drawing yet");
        assertThat(refusal("GIF89a")).contains("neither an SVG nor a DXF");
        assertThat(refusal("<html><body/></html>")).contains("begins with 'html'");
        assertThat(refusal("<svg><path d='M0 0")).contains("Line 1", "not well-formed");
        assertThat(refusal("999\nhello\n")).contains("has no section");
        assertThat(refusal("0\nSECTION\nx")).contains("Line 3", "not the number of a DXF group");
        assertThat(refusal("x".repeat(5_000_001))).contains("5 million");
        byte[] junk = new byte[100_000];
        new Random(7).nextBytes(junk);
        assertThat(refusal(new String(junk, StandardCharsets.UTF_8))).isNotBlank();
        assertThat(refusal(SVG + "</svg>")).contains("no line in the drawing");
    }

    @Test
    void aCutOffFileDoesNotGoOnForever() {
        assertThat(refusal("0\nSECTION\n2\nENTITIES\n0\nLINE\n10")).contains("cut off");
        for (String end :
                new String[] {"0\nLINE", "0\nLINE\n", "0\nPOLYLINE\n0\nVERTEX", "0", "0\nSECTION\n2\nHEADER\n9"}) {
            assertThat(refusal("0\nSECTION\n2\nENTITIES\n" + end)).isNotBlank();
        }
    }

    /** All of them in a process of 256 MB; the time is printed, not judged, but for a hang. */
    @Test
    void littleMemoryIsEnough() throws Exception {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        HostileChild.class.getName())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> lines = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        assertThat(child.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assertThat(child.exitValue()).as("%s", lines).isZero();
        assertThat(lines).last().isEqualTo("done");
        assertThat(lines)
                .hasSize(11)
                .filteredOn(line -> line.contains(" read "))
                .allMatch(line -> line.startsWith("points ") || line.startsWith("arcs "));
    }
}
