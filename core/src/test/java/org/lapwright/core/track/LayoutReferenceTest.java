package org.lapwright.core.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.RombergIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.num.PeriodicSpline;
import org.lapwright.core.track.Piece.Straight;
import org.lapwright.core.track.Piece.Turn;

/** Lengths, turns and gaps of layouts against closed forms, and of drawn lines against Hipparchus' quadrature. */
class LayoutReferenceTest {
    private static final PieceLayout STADIUM = new PieceLayout(List.of(
            new Straight(1500, 0),
            new Turn(300, 180, true, 0, 0),
            new Straight(1500, 0),
            new Turn(300, 180, true, 0, 0)));

    /** Two loops of 270° that cross on the way. */
    private static final PieceLayout EIGHT = new PieceLayout(List.of(
            new Straight(600, 0),
            new Turn(300, 270, true, 0, 0),
            new Straight(600, 0),
            new Turn(300, 270, false, 0, 0)));

    private static Track track(Layout layout, double... offsets) {
        List<Lane> lanes = new ArrayList<>();
        for (int i = 0; i < offsets.length; i++) {
            lanes.add(new Lane("lane " + i, offsets[i]));
        }
        return new Track(
                "drawn", Surface.BENCH, lanes, new Power(12, 0.5, 0.1, List.of(0.0), OptionalDouble.empty()), layout);
    }

    private static PointLayout ellipse(double a, double b, int points) {
        return new PointLayout(IntStream.range(0, points)
                .mapToObj(i ->
                        new PlanPoint(a * Math.cos(2 * Math.PI * i / points), b * Math.sin(2 * Math.PI * i / points)))
                .toList());
    }

    private static double turned(LaneCells cells) {
        double turned = 0;
        for (int i = 0; i < cells.count(); i++) {
            turned += cells.curvature(i) * cells.lengthM(i);
        }
        return turned;
    }

    @ParameterizedTest
    @ValueSource(doubles = {-120, 0, 50, 200})
    void aStadiumsLaneIsTwoStraightsAndACircle(double offsetMm) {
        double expected = 3.0 + 2 * Math.PI * (0.3 - offsetMm / 1000);
        Track track = track(STADIUM, offsetMm);
        assertThat(track.lengthM(track.lanes().get(0))).isCloseTo(expected, within(1e-12));
        for (int cells : new int[] {10, 600, 6000}) {
            LaneCells cut = track.cells(track.lanes().get(0), cells);
            assertThat(cut.lapM()).isCloseTo(expected, within(1e-9));
            assertThat(turned(cut)).isCloseTo(2 * Math.PI, within(1e-9));
        }
        assertThat(STADIUM.closingGap().distanceM()).isLessThan(1e-12);
        assertThat(STADIUM.closingGap().headingRad()).isLessThan(1e-12);
    }

    @Test
    void aFigureOfEightTurnsNothingAndBothLanesAreAlike() {
        Track track = track(EIGHT, 60, -60);
        double expected = 1.2 + 2 * 1.5 * Math.PI * 0.3;
        assertThat(track.lengthM(track.lanes().get(0))).isCloseTo(expected, within(1e-12));
        assertThat(track.lengthM(track.lanes().get(1))).isCloseTo(expected, within(1e-12));
        assertThat(turned(track.cells(track.lanes().get(0)))).isCloseTo(0, within(1e-9));
        assertThat(EIGHT.closingGap().isOpen()).isFalse();
    }

    @Test
    void aGapIsAsWideAsItWasMade() {
        List<Piece> pieces = new ArrayList<>(STADIUM.pieces());
        pieces.set(0, new Straight(1512, 0));
        ClosingGap along = new PieceLayout(pieces).closingGap();
        assertThat(along.distanceM()).isCloseTo(0.012, within(1e-12));
        assertThat(along.isOpen()).isTrue();
        pieces.set(0, new Straight(1500, 30));
        ClosingGap up = new PieceLayout(pieces).closingGap();
        // 30 mm up over 1500 mm of surface leaves √(1500² − 30²) mm of plan.
        assertThat(up.distanceM())
                .isCloseTo(Math.hypot(0.030, 1.5 - Math.sqrt(1.5 * 1.5 - 0.03 * 0.03)), within(1e-12));
        pieces.set(0, new Straight(1500, 0));
        pieces.set(3, new Turn(300, 178, true, 0, 0));
        ClosingGap round = new PieceLayout(pieces).closingGap();
        assertThat(Math.toDegrees(round.headingRad())).isCloseTo(2, within(1e-9));
        assertThat(round.isOpen()).isTrue();
    }

    @Test
    void cellsEndOnTheJoints() {
        Track track = track(STADIUM, 50);
        LaneCells cells = track.cells(track.lanes().get(0), 601);
        double[] joints = {0, 1.5, 1.5 + 0.25 * Math.PI, 3 + 0.25 * Math.PI};
        double at = 0;
        int found = 0;
        for (int i = 0; i < cells.count(); i++) {
            if (cells.isAfterJoint(i)) {
                assertThat(at).isCloseTo(joints[found], within(1e-9));
                found++;
            }
            at += cells.lengthM(i);
        }
        assertThat(found).isEqualTo(joints.length);
    }

    /** Length by Hipparchus; beside a simple closed line of length L driven anticlockwise a lane measures L − 2π offset. */
    @ParameterizedTest
    @ValueSource(doubles = {-80, 0, 80})
    void aDrawnLanesLengthIsThatOfTheQuadrature(double offsetMm) {
        PointLayout layout = ellipse(1200, 700, 24);
        PeriodicSpline x = layout.spline(true);
        PeriodicSpline y = layout.spline(false);
        double[] chords = layout.chords();
        double centre = 0;
        for (int i = 0; i + 1 < chords.length; i++) {
            centre += new RombergIntegrator()
                    .integrate(1_000_000, t -> Math.hypot(x.derivative(t), y.derivative(t)), chords[i], chords[i + 1]);
        }
        Track track = track(layout, offsetMm);
        double expected = centre - 2 * Math.PI * offsetMm / 1000;
        assertThat(track.lengthM(track.lanes().get(0))).isCloseTo(expected, within(1e-7));
        LaneCells cells = track.cells(track.lanes().get(0));
        assertThat(cells.lapM()).isCloseTo(expected, within(1e-7));
        assertThat(turned(cells)).isCloseTo(2 * Math.PI, within(1e-9));
    }

    /** Perimeter of an ellipse 1.2 by 0.7 m: 6.072 m by Ramanujan's second formula, good to 1e-7 here; a denser drawing meets it. */
    @Test
    void aDrawnEllipseHasItsPerimeterAndCurvature() {
        double a = 1.2;
        double b = 0.7;
        double h = Math.pow((a - b) / (a + b), 2);
        double ramanujan = Math.PI * (a + b) * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h)));
        Track track = track(ellipse(1200, 700, 96), 0);
        LaneCells cells = track.cells(track.lanes().get(0), 960);
        assertThat(cells.lapM()).isCloseTo(ramanujan, within(2e-5));
        double sharpest = 0;
        for (int i = 0; i < cells.count(); i++) {
            sharpest = Math.max(sharpest, cells.curvature(i));
        }
        assertThat(sharpest).as("a / b² at the ends of the long axis").isCloseTo(a / (b * b), within(0.005));
    }

    @Test
    void aLaneInsideTheCentreOfATurnIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> track(STADIUM, 300))
                .withMessage("lane 'lane 0': pieces[1]: radius_mm is 300; a lane offset by 300 mm to the inside needs a"
                        + " radius of at least 320 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> track(ellipse(1200, 300, 40), 150))
                .withMessageContaining("needs more room");
    }
}
