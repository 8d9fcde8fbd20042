package org.lapwright.app.files.drawing.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.integration.RombergIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lengths of the examples in the specification (SVG 1.1, second edition, W3C 2011, §8.3 and §9) in closed form, or by Hipparchus'
 * Romberg quadrature of the curve's own formula.
 */
class SvgLengthReferenceTest {
    /** ∫ |B'| of a Bézier curve from its control points, as the Bernstein form defines it. */
    private static double bezier(double... p) {
        int n = p.length / 2 - 1;
        return new RombergIntegrator(1e-10, 1e-10, 5, 25)
                .integrate(
                        1 << 25,
                        t -> {
                            double x = 0;
                            double y = 0;
                            for (int i = 0; i < n; i++) {
                                double b = binomial(n - 1, i) * Math.pow(t, i) * Math.pow(1 - t, n - 1 - i) * n;
                                x += b * (p[2 * i + 2] - p[2 * i]);
                                y += b * (p[2 * i + 3] - p[2 * i + 1]);
                            }
                            return Math.hypot(x, y);
                        },
                        0,
                        1);
    }

    private static double binomial(int n, int k) {
        return k == 0 ? 1 : binomial(n - 1, k - 1) * n / k;
    }

    @Test
    void triangleOfSection832() {
        assertThat(Drawn.length(Drawn.path("M 100 100 L 300 100 L 200 300 z")))
                .isCloseTo(200 + 2 * Math.hypot(100, 200), within(1e-9));
    }

    @Test
    void cubicOfSection836() {
        double first = bezier(100, 200, 100, 100, 250, 100, 250, 200);
        double second = bezier(250, 200, 250, 300, 400, 300, 400, 200);
        assertThat(Drawn.length(Drawn.path("M100,200 C100,100 250,100 250,200 S400,300 400,200")))
                .isCloseTo(first + second, within(1e-3));
    }

    @Test
    void quadraticOfSection837() {
        double first = bezier(200, 300, 400, 50, 600, 300);
        assertThat(Drawn.length(Drawn.path("M200,300 Q400,50 600,300 T1000,300")))
                .isCloseTo(2 * first, within(1e-3));
    }

    @Test
    void piesOfSection838() {
        double threeQuarters = 300 + 1.5 * Math.PI * 150;
        assertThat(Drawn.length(Drawn.path("M300,200 h-150 a150,150 0 1,0 150,-150 z")))
                .isCloseTo(threeQuarters, within(2e-3));
        assertThat(Drawn.length(Drawn.path("M275,175 v-150 a150,150 0 0,0 -150,150 z")))
                .isCloseTo(300 + Math.PI * 75, within(2e-3));
    }

    /** The four choices of flags: two arcs of a quarter and two of three quarters round the same chord. */
    @ParameterizedTest
    @CsvSource({"0 0, 0.5, 0, 0", "0 1, 0.5, 100, 100", "1 0, 1.5, 100, 100", "1 1, 1.5, 0, 0"})
    void flagsOfSection838(String flags, double turns, double centreX, double centreY) {
        Polyline arc = Drawn.only(Drawn.path("M0,100 A100,100 0 " + flags + " 100,0"));
        assertThat(arc.length()).isCloseTo(turns * Math.PI * 100, within(1e-3));
        for (Spot spot : arc.spots()) {
            // The page's y goes down.
            assertThat(Math.hypot(spot.x() - centreX, -spot.y() - centreY)).isCloseTo(100, within(2e-4));
        }
    }

    /** F.6.6: radii too small for the chord grow until they fit: half a circle. */
    @Test
    void radiiThatAreTooSmallGrow() {
        assertThat(Drawn.length(Drawn.path("M0 0 A 1 1 0 0 1 200 0"))).isCloseTo(100 * Math.PI, within(1e-3));
        assertThat(Drawn.length(Drawn.path("M0 0 A -100 100 0 0 1 200 0"))).isCloseTo(100 * Math.PI, within(1e-3));
        assertThat(Drawn.length(Drawn.path("M0 0 A 0 5 0 0 1 200 0"))).isCloseTo(200, within(1e-9));
    }

    /** One path in many spellings (§8.3.9: implied repeats, no marks between numbers, flags against what follows). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "M10 20L-30.5.5 1e2-20A25 25-30 01 150-25z",
                "M10,20,-30.5,.5,100,-20 A25,25,-30,0,1,150,-25Z",
                "m10 20-40.5-19.5L100-20a25,25 -30 0150-5Z",
                " \n M 1.0E1\t+20 L-30.5,0.5 L 100 , -20.0 A 25 25 -30 0 1 150 -25 Z ",
            })
    void spellingsOfOnePath(String data) {
        assertThat(Drawn.length(Drawn.path(data)))
                .isCloseTo(
                        Drawn.length(Drawn.path("M 10 20 L -30.5 0.5 L 100 -20 A 25 25 -30 0 1 150 -25 Z")),
                        within(1e-6));
    }

    @Test
    void horizontalsVerticalsAndPartsAfterAClose() {
        assertThat(Drawn.length(Drawn.path("M0 0 H10 20 V5 h-3 v-5 z l7 24")))
                .isCloseTo(20 + 5 + 3 + 5 + 17 + 25, within(1e-9));
        assertThat(Drawn.lines(Drawn.path("M0 0 L9 9 z m5 0 l1 1")).get(1).first())
                .isEqualTo(new Spot(5, -0.0));
    }

    /** Without a curve of the same kind before it, the control point is the place itself (§8.3.6, §8.3.7). */
    @Test
    void smoothAfterAnotherKind() {
        assertThat(Drawn.length(Drawn.path("M0 0 L10 0 T 20 0 "))).isCloseTo(20, within(1e-9));
        assertThat(Drawn.length(Drawn.path("M0 0 Q 50 50 100 0 S 200 50 200 0")))
                .isCloseTo(bezier(0, 0, 50, 50, 100, 0) + bezier(100, 0, 100, 0, 200, 50, 200, 0), within(1e-3));
    }

    /** Appendix F.2: what comes before a mistake is drawn, and the mistake is told. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"M0 0 L10 0 L 10", "M0 0 L10 0 L,", "M0 0 L10 0 X 3 3", "M0 0 L10 0 A 5 5 0 2 0 9 9", "M0 0 L10 0,"
            })
    void aMistakeEndsThePathThere(String data) {
        assertThat(Drawn.length(Drawn.path(data))).isCloseTo(10, within(1e-9));
        assertThat(Drawn.read(Drawn.path(data)).leftOut())
                .hasSize(1)
                .first()
                .asString()
                .contains("cannot be read from character");
    }

    @Test
    void shapesOfChapterNine() {
        assertThat(Drawn.length(Drawn.svg("<circle cx='60' cy='-7' r='50'/>"))).isCloseTo(100 * Math.PI, within(2e-3));
        assertThat(Drawn.length(Drawn.svg("<rect x='1' y='2' width='30' height='40'/>")))
                .isCloseTo(140, within(1e-9));
        assertThat(Drawn.length(Drawn.svg("<rect width='300' height='400' rx='50'/>")))
                .isCloseTo(2 * (200 + 300) + 100 * Math.PI, within(2e-3));
        assertThat(Drawn.length(Drawn.svg("<rect width='300' height='400' rx='900' ry='900'/>")))
                .isCloseTo(ellipse(150, 200), within(5e-3));
        assertThat(Drawn.length(Drawn.svg("<ellipse cx='3' rx='250' ry='100'/>")))
                .isCloseTo(ellipse(250, 100), within(5e-3));
        assertThat(Drawn.length(Drawn.svg("<line x1='1' y1='1' x2='4' y2='5'/>")))
                .isCloseTo(5, within(1e-9));
        assertThat(Drawn.length(Drawn.svg("<polyline points='0,0 3,4 3,10'/>"))).isCloseTo(11, within(1e-9));
        assertThat(Drawn.length(Drawn.svg("<polygon points='0,0 3,0 3-4'/>"))).isCloseTo(12, within(1e-9));
        assertThat(Drawn.length(Drawn.svg("<circle r='25.4mm'/>"))).isCloseTo(2 * 96 * Math.PI, within(5e-3));
    }

    /** By the quadrature of its definition. */
    private static double ellipse(double a, double b) {
        return 4
                * new RombergIntegrator(1e-11, 1e-10, 5, 25)
                        .integrate(1 << 25, t -> Math.hypot(a * Math.sin(t), b * Math.cos(t)), 0, Math.PI / 2);
    }

    /** §7.7 and §7.8 with the CSS sizes of units: 96 px, 72 pt, 25.4 mm to the inch. */
    @ParameterizedTest
    @CsvSource({
        "width='200mm' height='100mm' viewBox='0 0 400 200', 50",
        "width='20cm' viewBox='0 0 400 200', 50",
        "height='4in' viewBox='7 7 400 200', 50.8",
        "width='144pt' height='72pt' viewBox='0 0 2 1', 2540",
        "width='96px' height='96', 26.458333333333332",
        "width='200mm' height='300mm' viewBox='0 0 400 200', 50",
        "width='200mm' height='300mm' preserveAspectRatio='none' viewBox='0 0 400 200', 50",
        "width='200mm' height='300mm' preserveAspectRatio='xMidYMid slice' viewBox='0 0 400 200', 150",
        "width='100%' height='100%' viewBox='0 0 400 200', 26.458333333333332",
    })
    void sizeOfThePage(String attributes, double mm) {
        var drawing = Drawn.read("<svg xmlns='http://www.w3.org/2000/svg' " + attributes + "><line x2='100'/></svg>");
        assertThat(Flattening.of(drawing, drawing.scale().mm(), 0.01).get(0).length())
                .isCloseTo(mm, within(1e-9));
        assertThat(drawing.scale().stated()).isEqualTo(!attributes.contains("px") && !attributes.contains("%"));
    }
}
