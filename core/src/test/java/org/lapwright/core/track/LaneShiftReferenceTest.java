package org.lapwright.core.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

/** Lanes that move sideways, against the curve written out in coordinates and integrated by Hipparchus' adaptive Legendre–Gauss rule. */
final class LaneShiftReferenceTest {
    private static final double FROM = 0.05;
    private static final double TO = -0.05;

    private static final IterativeLegendreGaussIntegrator QUADRATURE =
            new IterativeLegendreGaussIntegrator(15, 1e-13, 1e-14);

    /** The slopes of the lane in plane coordinates; its centre line begins in the origin along x. */
    private interface Curve {
        double dx(double u);

        double dy(double u);
    }

    private static double shifted(double u) {
        return FROM + (TO - FROM) * u * u * u * (10 - 15 * u + 6 * u * u);
    }

    private static double slope(double u) {
        return (TO - FROM) * (30 * u * u - 60 * u * u * u + 30 * u * u * u * u);
    }

    private static Curve straight(double length) {
        return new Curve() {
            @Override
            public double dx(double u) {
                return length;
            }

            @Override
            public double dy(double u) {
                return slope(u);
            }
        };
    }

    /** x = R sin φ − o sin φ, y = R − (R − o) cos φ for a left turn. */
    private static Curve leftTurn(double radius, double angle) {
        return new Curve() {
            @Override
            public double dx(double u) {
                return (radius - shifted(u)) * angle * Math.cos(angle * u) - slope(u) * Math.sin(angle * u);
            }

            @Override
            public double dy(double u) {
                return (radius - shifted(u)) * angle * Math.sin(angle * u) + slope(u) * Math.cos(angle * u);
            }
        };
    }

    private static double length(Curve curve, double from, double to) {
        return QUADRATURE.integrate(100_000, u -> Math.hypot(curve.dx(u), curve.dy(u)), from, to);
    }

    private static double heading(Curve curve, double u) {
        return Math.atan2(curve.dy(u), curve.dx(u));
    }

    private static void check(Section centre, Curve curve) {
        LaneShift shift = new LaneShift(centre, FROM, TO);
        assertThat(shift.lengthM()).isCloseTo(length(curve, 0, 1), within(1e-10));
        List<Section> cells = shift.cells(40);
        for (int i = 0; i < cells.size(); i++) {
            double from = (double) i / cells.size();
            double to = (i + 1.0) / cells.size();
            double length = length(curve, from, to);
            double turned = Math.IEEEremainder(heading(curve, to) - heading(curve, from), 2 * Math.PI);
            assertThat(cells.get(i).lengthM()).isCloseTo(length, within(1e-10));
            assertThat(cells.get(i).curvature()).isCloseTo(turned / length, within(1e-8));
        }
    }

    @Test
    void onAStraight() {
        check(new Section(0.4, 0, 0, 0), straight(0.4));
    }

    @Test
    void onALeftTurn() {
        check(new Section(0.3 * Math.PI, 1 / 0.3, 0, 0), leftTurn(0.3, Math.PI));
    }

    /** Length and place of a whole lap: a stadium whose lanes swap on both straights closes in every lane. */
    @Test
    void aLapWithTwoSwapsClosesInEveryLane() {
        Track track = swapping();
        for (Lane lane : track.lanes()) {
            LanePlan plan = LanePlan.of(track, lane);
            PlanPose start = plan.at(0);
            PlanPose end = plan.at(plan.cells());
            assertThat(end.xM()).isCloseTo(start.xM(), within(1e-12));
            assertThat(end.yM()).isCloseTo(start.yM(), within(1e-12));
            assertThat(end.headingRad() - start.headingRad()).isCloseTo(2 * Math.PI, within(1e-12));
            LaneCells cells = track.cells(lane);
            double turned = 0;
            for (int i = 0; i < cells.count(); i++) {
                turned += cells.curvature(i) * cells.lengthM(i);
            }
            assertThat(turned).isCloseTo(2 * Math.PI, within(1e-12));
            assertThat(cells.lapM()).isCloseTo(track.lengthM(lane), within(1e-12));
        }
        // Each lane has one turn outside and one inside, so that both are as long.
        assertThat(track.lengthM(track.lanes().get(0)))
                .isCloseTo(track.lengthM(track.lanes().get(1)), within(1e-12));
        double swap = length(straight(1.0), 0, 1);
        assertThat(track.lengthM(track.lanes().get(0))).isCloseTo(2 * swap + Math.PI * (0.45 + 0.55), within(1e-10));
    }

    /** The places laid from the centre line are those that the cells lead to. */
    @Test
    void cellsLeadWhereThePlanSays() {
        Track track = swapping();
        LanePlan plan = LanePlan.of(track, track.lanes().get(0));
        LaneCells cells = track.cells(track.lanes().get(0));
        PlanPose here = plan.at(0);
        for (int i = 0; i < cells.count(); i++) {
            here = here.after(new Section(cells.lengthM(i), cells.curvature(i), 0, 0));
            assertThat(here.xM()).isCloseTo(plan.at(i + 1).xM(), within(2e-5));
            assertThat(here.yM()).isCloseTo(plan.at(i + 1).yM(), within(2e-5));
        }
    }

    private static Track swapping() {
        PieceExtras swap = PieceExtras.NONE.withLaneEnds(List.of(-50.0, 50.0));
        PieceExtras back = PieceExtras.NONE.withLaneEnds(List.of(50.0, -50.0));
        return track(
                new Piece.Straight(1000, 0, swap),
                new Piece.Turn(500, 180, true, 0, 0),
                new Piece.Straight(1000, 0, back),
                new Piece.Turn(500, 180, true, 0, 0));
    }

    private static Track track(Piece... pieces) {
        return new Track(
                "Test",
                new Surface(1, true),
                List.of(new Lane("a", 50), new Lane("b", -50)),
                new Power(12, 0.5, 0.1, List.of(0.0), OptionalDouble.empty()),
                new PieceLayout(List.of(pieces)));
    }

    @Test
    void whatCannotBeIsSaidWithWhatWouldBeRight() {
        PieceExtras swap = PieceExtras.NONE.withLaneEnds(List.of(-50.0, 50.0));
        assertThatThrownBy(() -> track(
                        new Piece.Straight(1000, 0, swap),
                        new Piece.Turn(500, 180, true, 0, 0),
                        new Piece.Straight(1000, 0),
                        new Piece.Turn(500, 180, true, 0, 0)))
                .hasMessageContaining("lane 'a'")
                .hasMessageContaining("even number of times");
        assertThatThrownBy(
                        () -> track(new Piece.Straight(1000, 0, PieceExtras.NONE.withLaneEnds(List.of(1.0, 2.0, 3.0)))))
                .hasMessageContaining("pieces[0].lane_ends_mm has 3 entries; it needs one for each of the 2 lanes");
        assertThatThrownBy(() -> new LaneShift(new Section(0.03, 0, 0, 0), FROM, TO).cells(16))
                .hasMessageContaining("longer piece");
        assertThatThrownBy(() -> new PieceExtras(OptionalDouble.of(9), Optional.empty(), List.of()))
                .hasMessageContaining("pieces.grip_factor");
    }
}
