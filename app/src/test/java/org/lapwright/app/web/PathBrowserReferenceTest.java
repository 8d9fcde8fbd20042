package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.options.ColorScheme;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.lapwright.app.files.drawing.Drawing;
import org.lapwright.app.files.drawing.DrawingFile;
import org.lapwright.app.files.drawing.course.Loop;
import org.lapwright.app.files.drawing.course.Loops;
import org.lapwright.app.files.drawing.course.Spot;
import org.lapwright.app.web.Chromium.Size;
import org.lapwright.app.web.Chromium.Window;

/** Paths as Chromium understands them: getTotalLength and getPointAtLength of SVG DOM, 0.1 % of the length. */
@ExtendWith(Chromium.class)
class PathBrowserReferenceTest {
    private static final int PLACES = 8;

    /** Length, then places along the path, each as the path has it and as it is drawn. */
    private static final String MEASURE = """
            content => {
              const svg = new DOMParser().parseFromString(
                '<svg xmlns="http://www.w3.org/2000/svg">' + content + '</svg>', 'image/svg+xml').documentElement;
              document.body.appendChild(document.adoptNode(svg));
              const path = svg.querySelector('path');
              const length = path.getTotalLength(), ctm = path.getCTM(), found = [length];
              for (let i = 0; i < 8; i++) {
                const p = path.getPointAtLength(length * i / 8), q = p.matrixTransform(ctm);
                found.push(p.x, p.y, q.x, q.y);
              }
              svg.remove();
              return found;
            }""";

    private static final List<String> SPECIFIED = List.of(
            "M 100 100 L 300 100 L 200 300 z",
            "M100,200 C100,100 250,100 250,200 S400,300 400,200z",
            "M200,300 Q400,50 600,300 T1000,300z",
            "M300,200 h-150 a150,150 0 1,0 150,-150 z",
            "M275,175 v-150 a150,150 0 0,0 -150,150 z",
            "M600,350 l 50,-25 a25,25 -30 0,1 50,-25 l 50,-25 a25,50 -30 0,1 50,-25 l 50,-25 a25,75 -30 0,1 50,-25 l 50,-25"
                    + " a25,100 -30 0,1 50,-25 l 50,-25z",
            "M10-20.5.5 3e1a25 25-30 01150-25 10 90 45 10-70 80z");

    private static Stage stage;

    @BeforeAll
    static void open() {
        stage = new Stage();
    }

    @AfterAll
    static void close() {
        stage.close();
    }

    private static String number(Random random) {
        return String.format(Locale.ROOT, "%.3f", 400 * random.nextDouble() - 100);
    }

    /** Any commands in any order, upper and lower case, with repeats. */
    private static String anyPath(Random random) {
        StringBuilder data = new StringBuilder("M" + number(random) + " " + number(random));
        for (int k = 2 + random.nextInt(9); k > 0; k--) {
            char command = "LHVCSQTA".charAt(random.nextInt(8));
            data.append(random.nextBoolean() ? command : Character.toLowerCase(command));
            for (int repeat = random.nextInt(2); repeat >= 0; repeat--) {
                int numbers = command == 'A'
                        ? 7
                        : command == 'C' ? 6 : "SQ".indexOf(command) >= 0 ? 4 : "HV".indexOf(command) >= 0 ? 1 : 2;
                for (int i = 0; i < numbers; i++) {
                    boolean flag = command == 'A' && (i == 3 || i == 4);
                    data.append(' ').append(flag ? "" + random.nextInt(2) : number(random));
                }
            }
        }
        return data + "z";
    }

    private static String anyPlace(Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> "matrix(1.2 0.3 -0.4 0.9 %s %s)".formatted(number(random), number(random));
            case 1 -> "translate(%s)".formatted(number(random));
            case 2 -> "rotate(%s %s,%s)".formatted(number(random), number(random), number(random));
            case 3 -> "scale(1.5, -0.7) translate(3,4)";
            case 4 -> "skewX(20)rotate(30)";
            default -> "skewY(-15),scale(2)";
        };
    }

    private static void compare(List<?> measured, String data, String content) {
        Loop own = only("<path d='" + data + "'/>");
        double near = 1e-3 * number(measured, 0);
        assertThat(own.lengthMm()).as(data).isCloseTo(number(measured, 0), within(near));
        Loop placed = only(content);
        for (int i = 0; i < PLACES; i++) {
            Spot drawn = new Spot(number(measured, 4 * i + 1), -number(measured, 4 * i + 2));
            assertThat(distance(at(own, own.lengthMm() * i / PLACES), drawn))
                    .as(data)
                    .isLessThan(near);
            // Where the transform puts the same place: how far along it is there is not comparable, so it has to lie on
            // the line.
            Spot moved = new Spot(number(measured, 4 * i + 3), -number(measured, 4 * i + 4));
            assertThat(fromLoop(placed, moved)).as(content).isLessThan(near);
        }
    }

    private static double distance(Spot a, Spot b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }

    private static double fromLoop(Loop loop, Spot spot) {
        double nearest = Double.MAX_VALUE;
        List<Spot> spots = loop.spots();
        for (int i = 0; i < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get((i + 1) % spots.size());
            nearest = Math.min(nearest, Line2D.ptSegDist(a.x(), a.y(), b.x(), b.y(), spot.x(), spot.y()));
        }
        return nearest;
    }

    private static double number(List<?> measured, int i) {
        return ((Number) measured.get(i)).doubleValue();
    }

    private static Loop only(String content) {
        Drawing drawing = DrawingFile.read("<svg xmlns='http://www.w3.org/2000/svg'>" + content + "</svg>")
                .drawing()
                .orElseThrow();
        List<Loop> loops = Loops.find(drawing, 1, 0.001, 1e-4).loops();
        assertThat(loops).as(content).hasSize(1);
        return loops.get(0);
    }

    private static Spot at(Loop loop, double length) {
        double gone = 0;
        List<Spot> spots = loop.spots();
        for (int i = 0; i < spots.size(); i++) {
            Spot here = spots.get(i);
            Spot next = spots.get((i + 1) % spots.size());
            double stroke = distance(here, next);
            if (gone + stroke >= length) {
                double share = (length - gone) / stroke;
                return new Spot(here.x() + share * (next.x() - here.x()), here.y() + share * (next.y() - here.y()));
            }
            gone += stroke;
        }
        return spots.get(0);
    }

    @Test
    void theExamplesOfTheSpecification() {
        try (Window window = Chromium.open(stage, Size.DESK, ColorScheme.LIGHT, true)) {
            window.go("/words");
            for (String data : SPECIFIED) {
                String content = "<path d='" + data + "'/>";
                compare((List<?>) window.page().evaluate(MEASURE, content), data, content);
            }
        }
    }

    @Test
    void anyPathAnywhere() {
        Random random = new Random(8);
        try (Window window = Chromium.open(stage, Size.DESK, ColorScheme.LIGHT, true)) {
            window.go("/words");
            for (int i = 0; i < 150; i++) {
                String data = anyPath(random);
                String content = "<g transform='%s'><g transform='%s'><path transform='%s' d='%s'/></g></g>"
                        .formatted(anyPlace(random), anyPlace(random), anyPlace(random), data);
                compare((List<?>) window.page().evaluate(MEASURE, content), data, content);
            }
        }
    }
}
