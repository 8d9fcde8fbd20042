package org.lapwright.core.track;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** Layouts whose geometry has a closed form. */
final class Tracks {
    static final Lane CENTRE = new Lane("centre", 0);
    static final Lane INNER = new Lane("inner", 50);
    static final Lane OUTER = new Lane("outer", -50);

    private Tracks() {}

    static Track of(Layout layout) {
        return new Track(
                "Test",
                new Surface(1, false),
                List.of(CENTRE, INNER, OUTER),
                new Power(12, 0.5, 0.1, List.of(0.0), OptionalDouble.empty()),
                layout);
    }

    static Track of(Piece... pieces) {
        return of(new PieceLayout(Arrays.asList(pieces)));
    }

    static Piece straight(double lengthMm) {
        return new Piece.Straight(lengthMm, 0);
    }

    static Piece rising(double lengthMm, double riseMm) {
        return new Piece.Straight(lengthMm, riseMm);
    }

    static Piece left(double radiusMm, double angleDeg) {
        return new Piece.Turn(radiusMm, angleDeg, true, 0, 0);
    }

    static Piece right(double radiusMm, double angleDeg) {
        return new Piece.Turn(radiusMm, angleDeg, false, 0, 0);
    }

    /** Two straights of 2 m and two half circles of 0.5 m radius. */
    static Track stadium() {
        return of(straight(2000), left(500, 180), straight(2000), left(500, 180));
    }

    /** Three quarters of a circle of 0.4 m radius each way, joined by straights of two radii that cross at right angles. */
    static Track figureOfEight(double riseMm) {
        return of(
                straight(400),
                left(400, 270),
                rising(400, riseMm),
                rising(400, -riseMm),
                right(400, 270),
                straight(400));
    }

    /** Area to the left of the lane, m²: the polygon of its edges and the circle segments on its chords. */
    static double area(Track track, Lane lane) {
        LanePlan plan = LanePlan.of(track, lane);
        LaneCells cells = track.cells(lane);
        double area = 0;
        for (int i = 0; i < plan.cells(); i++) {
            PlanPose a = plan.at(i);
            PlanPose b = plan.at(i + 1);
            area += (a.xM() * b.yM() - b.xM() * a.yM()) / 2;
            double curvature = cells.curvature(i);
            double turned = curvature * cells.lengthM(i);
            area += curvature == 0 ? 0 : (turned - Math.sin(turned)) / (2 * curvature * curvature);
        }
        return area;
    }
}
