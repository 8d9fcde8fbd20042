package org.lapwright.app.files.drawing.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Entities of the DXF reference whose course is known in closed form. */
class DxfReferenceTest {
    private static void onCircle(Polyline line, double x, double y, double radius) {
        assertThat(line.spots())
                .allSatisfy(spot -> assertThat(spot.distance(new Spot(x, y))).isCloseTo(radius, within(2e-4)));
    }

    @Test
    void linesArcsAndCircles() {
        assertThat(Drawn.length(Drawn.dxf("0 LINE 10 1 20 1 30 0 11 4 21 5 31 0")))
                .isCloseTo(5, within(1e-9));
        Polyline circle = Drawn.only(Drawn.dxf("0 CIRCLE 10 7 20 8 40 100"));
        assertThat(circle.closed()).isTrue();
        assertThat(circle.length()).isCloseTo(200 * Math.PI, within(2e-3));
        Polyline arc = Drawn.only(Drawn.dxf("0 ARC 10 7 20 8 40 100 50 270 51 90"));
        onCircle(arc, 7, 8, 100);
        assertThat(arc.length()).isCloseTo(100 * Math.PI, within(1e-3));
        // Against the clock, so through angle 0.
        assertThat(arc.spots()).anySatisfy(spot -> assertThat(spot.x()).isCloseTo(107, within(1e-6)));
        assertThat(arc.first().y()).isCloseTo(-92, within(1e-9));
    }

    /** A bulge of 1 is half a circle; the chord goes to the right, so against the clock it passes below. */
    @Test
    void aBulgeOfOneIsHalfACircle() {
        Polyline half = Drawn.only(Drawn.dxf("0 LWPOLYLINE 90 2 70 0 10 0 20 0 42 1 10 200 20 0"));
        assertThat(half.length()).isCloseTo(100 * Math.PI, within(1e-3));
        onCircle(half, 100, 0, 100);
        assertThat(half.spots()).allSatisfy(spot -> assertThat(spot.y()).isLessThan(1e-9));
    }

    /** A bulge is the tangent of a quarter of the angle: any angle over the same chord, either way round. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 20, 90, 170, 250, 340, -1, -90, -200, -350})
    void aBulgeTurnsThroughItsAngle(double degrees) {
        double bulge = Math.tan(Math.toRadians(degrees) / 4);
        Polyline arc = Drawn.only(Drawn.dxf("0 LWPOLYLINE 10 0 20 0 42 " + bulge + " 10 200 20 0"));
        double radius = 100 / Math.sin(Math.toRadians(Math.abs(degrees)) / 2);
        assertThat(arc.length()).isCloseTo(radius * Math.toRadians(Math.abs(degrees)), within(5e-3));
        double sagitta = bulge * 100;
        assertThat(arc.spots().stream()
                        .mapToDouble(spot -> -Math.signum(degrees) * spot.y())
                        .max()
                        .orElse(0))
                .isCloseTo(Math.abs(sagitta), within(5e-3));
    }

    /** Two straights and two half circles. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 LWPOLYLINE 90 4 70 1 10 0 20 0 10 500 20 0 42 1 10 500 20 200 10 0 20 200 42 1",
                "0 POLYLINE 66 1 70 1 10 0 20 0 0 VERTEX 10 0 20 0 0 VERTEX 10 500 20 0 42 1 0 VERTEX 10 500 20 200 0 VERTEX"
                        + " 10 0 20 200 42 1 0 SEQEND",
                "0 LINE 10 0 20 0 11 500 21 0 0 ARC 10 500 20 100 40 100 50 270 51 90 0 LINE 10 500 20 200 11 0 21 200 0 ARC 10"
                        + " 0 20 100 40 100 50 90 51 270",
                "0 LWPOLYLINE 90 4 70 1 210 0 220 0 230 -1 10 0 20 0 10 500 20 0 42 1 10 500 20 200 10 0 20 200 42 1",
            })
    void aStadiumHoweverItIsDrawn(String entities) {
        Loops loops = Loops.find(Drawn.read(Drawn.dxf(entities)), 1, 1, 1e-3);
        assertThat(loops.loops()).hasSize(1);
        Loop loop = loops.loops().get(0);
        assertThat(loop.lengthMm()).isCloseTo(1000 + 200 * Math.PI, within(0.01));
        assertThat(loop.widthMm()).isCloseTo(700, within(0.01));
        assertThat(loop.heightMm()).isCloseTo(200, within(0.01));
        assertThat(Math.abs(loop.area())).isCloseTo(500 * 200 + Math.PI * 1e4, within(5.0));
        assertThat(loops.remarks()).isEmpty();
    }

    /** A clamped spline of one span is the Bézier curve with the same control points. */
    @ParameterizedTest
    @CsvSource({
        "1, 0 0 1 1, 10 0 20 0 10 30 20 40, M0 0 L30 -40",
        "2, 0 0 0 5 5 5, 10 0 20 0 10 50 20 90 10 100 20 0, M0 0 Q50 -90 100 0",
        "3, 0 0 0 0 1 1 1 1, 10 0 20 0 10 0 20 90 10 100 20 90 10 100 20 0, M0 0 C0 -90 100 -90 100 0",
        // Two spans, joined in the middle of the inner leg: knots 0 0 0 0 1 2 2 2 2 by inserting knots by hand.
        "3, 0 0 0 0 1 2 2 2 2, 10 0 20 0 10 0 20 8 10 8 20 8 10 16 20 8 10 16 20 0,"
                + " M0 0 C0 -8 4 -8 8 -8 C12 -8 16 -8 16 0",
    })
    void aSplineIsItsBezierCurves(int degree, String knots, String points, String path) {
        String spline = "0 SPLINE 70 8 71 %d 40 %s %s".formatted(degree, knots.replace(" ", " 40 "), points);
        Polyline followed = Drawn.only(Drawn.dxf(spline));
        Polyline known = Drawn.only(Drawn.path(path));
        assertThat(followed.length()).isCloseTo(known.length(), within(2e-3));
        ClosedLine course = new ClosedLine(known.spots());
        for (Spot spot : followed.spots()) {
            double off = Double.MAX_VALUE;
            for (int i = 0; i < course.count() - 1; i++) {
                off = Math.min(off, spot.fromLine(course.spot(i), course.spot(i + 1)));
            }
            assertThat(off).isLessThan(3e-4);
        }
    }

    /** Piegl and Tiller, The NURBS Book, example 7.1: a quarter circle as a rational curve, weights 1, √½, 1. */
    @Test
    void aRationalSplineIsACircle() {
        Polyline quarter =
                Drawn.only(Drawn.dxf("0 SPLINE 70 12 71 2 40 0 40 0 40 0 40 1 40 1 40 1 41 1 41 0.7071067811865476 41 1"
                        + " 10 100 20 0 10 100 20 100 10 0 20 100"));
        assertThat(quarter.length()).isCloseTo(50 * Math.PI, within(1e-3));
        onCircle(quarter, 0, 0, 100);
    }

    @Test
    void anEllipseAndAPartOfIt() {
        Polyline whole = Drawn.only(Drawn.dxf("0 ELLIPSE 10 5 20 5 11 0 21 200 40 0.5 41 0 42 6.283185307179586"));
        assertThat(whole.spots())
                .allSatisfy(spot -> assertThat(Math.hypot((spot.x() - 5) / 100, (spot.y() - 5) / 200))
                        .isCloseTo(1, within(1e-5)));
        // From the end of the major axis against the clock: to the left of "up".
        Polyline quarter = Drawn.only(Drawn.dxf("0 ELLIPSE 10 5 20 5 11 0 21 200 40 0.5 41 0 42 1.5707963267948966"));
        assertThat(quarter.last().x()).isCloseTo(-95, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"1, 25.4", "2, 304.8", "4, 1", "5, 10", "6, 1000", "0, 1", "77, 1"})
    void unitsOfTheHeader(int unit, double mm) {
        String text = "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1015\n9\n$INSUNITS\n70\n     " + unit + "\n0\nENDSEC\n"
                + Drawn.dxf("0 LINE 11 1 21 1");
        var scale = Drawn.read(text.replace("\n", "\r\n")).scale();
        assertThat(scale.mm()).isEqualTo(mm);
        assertThat(scale.stated()).isEqualTo(unit >= 1 && unit <= 6);
    }

    @Test
    void whatIsNotTakenIsSaid() {
        var drawing = Drawn.read(
                Drawn.dxf("0 LINE 11 1 21 1 0 TEXT 1 Hi 10 0 20 0 0 TEXT 1 Ho 0 INSERT 2 B 0 CIRCLE 40 -3 0 SPLINE 71 3"
                        + " 0 LINE 67 1 11 4 0 ARC 40 3 210 1"));
        assertThat(Flattening.of(drawing, 1, 0.01)).hasSize(1);
        assertThat(String.join(" ", drawing.leftOut()))
                .contains("2 × TEXT", "1 × INSERT", "CIRCLE: its radius", "no control points", "on the paper", "leans");
    }
}
