package org.lapwright.app.files.drawing.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.lapwright.app.files.drawing.Drawing;
import org.lapwright.app.files.drawing.DrawingFile;
import org.lapwright.app.files.drawing.Trouble;

/** Drawings spoiled at random: a line of finite points, or a sentence; never anything else. */
class DrawingFuzzLawTest {
    private static final List<String> SOUND = List.of(
            "<svg xmlns='http://www.w3.org/2000/svg' width='700mm' viewBox='0 0 700 400'><g transform='translate(5 5) rotate(10, 3 4)"
                    + " skewX(3)'><path transform='matrix(1 0 0 -1 2 3)' d='M0 0H500A100 100 0 0 1 500 200H0a100 100 0 010-200z'/></g>"
                    + "<rect x='1' width='90' height='50' rx='9'/><circle r='40' cx='3'/><polygon points='0,0 9,0 9,9'/><path d='M1 1C2 3 4"
                    + " 5 6 7S8 9 1 1Q4 4 5 6T1 1'/></svg>",
            Drawn.dxf(
                    "0 LWPOLYLINE 90 4 70 1 10 0 20 0 10 500 20 0 42 1 10 500 20 200 10 0 20 200 42 1 0 CIRCLE 40 50 0 ARC 40 90"
                            + " 50 10 51 190 0 SPLINE 71 3 40 0 40 0 40 0 40 0 40 1 40 1 40 1 40 1 10 0 20 0 10 0 20 90 10 100 20 90 10 100"
                            + " 20 0 0 ELLIPSE 11 80 40 0.5 42 6.2831853 0 POLYLINE 70 1 0 VERTEX 10 4 0 VERTEX 10 90 42 -1 0 SEQEND"));
    private static final List<String> PARTS = List.of(
            "NaN",
            "1e999",
            "-1e300",
            "1e-320",
            "0",
            "-0",
            ".",
            "",
            "-",
            "1e9",
            "&x;",
            "<g>",
            "</g>",
            "z",
            "A",
            "M",
            "\n",
            "0 0 0 0",
            "'",
            "\u0000",
            "\ud800",
            "999999999",
            "LINE",
            "1e8",
            "<svg>",
            "]]>",
            "<!--");

    private static String spoiled(Random random) {
        StringBuilder text = new StringBuilder(SOUND.get(random.nextInt(SOUND.size())));
        for (int k = random.nextInt(5); k >= 0 && text.length() > 2; k--) {
            int at = random.nextInt(text.length());
            switch (random.nextInt(5)) {
                case 0 -> text.deleteCharAt(at);
                case 1 -> text.insert(at, PARTS.get(random.nextInt(PARTS.size())));
                case 2 -> text.setCharAt(at, "0123456789.-eE ,MmLlAaZzCcQq<>/\n".charAt(random.nextInt(32)));
                case 3 -> number(text, at, random);
                default -> text.setLength(random.nextInt(6) == 0 ? at : text.length());
            }
        }
        return text.toString();
    }

    /** Puts something else in the place of the next number. */
    private static void number(StringBuilder text, int from, Random random) {
        int at = from;
        while (at < text.length() && !Character.isDigit(text.charAt(at))) {
            at++;
        }
        int end = at;
        while (end < text.length() && Character.isDigit(text.charAt(end))) {
            end++;
        }
        text.replace(
                at,
                end,
                random.nextBoolean() ? PARTS.get(random.nextInt(PARTS.size())) : "" + 300 * random.nextGaussian());
    }

    @Property(tries = 3000)
    void aSpoiledDrawingIsALineOrASentence(@ForAll long seed) {
        Random random = new Random(seed);
        DrawingFile.Reading reading = DrawingFile.read(spoiled(random));
        assertThat(reading.drawing().isPresent()).isNotEqualTo(reading.problem().isPresent());
        reading.problem().ifPresent(problem -> readable(problem.sentence()));
        reading.drawing().ifPresent(drawing -> {
            drawing.leftOut().forEach(DrawingFuzzLawTest::readable);
            lay(drawing, random);
        });
    }

    private static void lay(Drawing drawing, Random random) {
        CentreLine.Wish wish = new CentreLine.Wish(
                random.nextBoolean(),
                1000 * random.nextGaussian(),
                random.nextBoolean() ? 0 : 200 * random.nextDouble());
        try {
            Loops loops = Loops.find(drawing, drawing.scale().mm(), 5 * random.nextDouble(), Loops.FLAT_MM);
            loops.remarks().forEach(DrawingFuzzLawTest::readable);
            for (Loop loop : loops.loops()) {
                assertThat(loop.lengthMm()).isFinite().isPositive();
                layOne(loop, wish);
            }
        } catch (Trouble told) {
            readable(told.problem().sentence());
        }
    }

    private static void layOne(Loop loop, CentreLine.Wish wish) {
        try {
            CentreLine line = CentreLine.of(loop, wish);
            line.remarks().forEach(DrawingFuzzLawTest::readable);
            assertThat(line.points()).hasSizeBetween(4, 5000);
        } catch (Trouble told) {
            readable(told.problem().sentence());
        }
    }

    private static void readable(String sentence) {
        assertThat(sentence)
                .isNotBlank()
                .doesNotContain("Exception", "java.", "Infinity")
                .hasSizeLessThan(2000);
    }
}
