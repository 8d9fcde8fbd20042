package org.lapwright.core.track;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.num.GaussLegendre;

/**
 * A lane that moves from one distance beside the centre line to another along a piece: where lanes narrow, or swap.
 *
 * <p>The distance follows 10 u³ − 15 u⁴ + 6 u⁵ over the piece, so that neither direction nor curvature jumps at its ends. With the
 * centre line's curvature κ and the distance o, a step ds along the centre is √((1 − κ o)² + o'²) ds along the lane, and the lane's
 * direction is off the centre line's by atan(o' / (1 − κ o)).
 */
final class LaneShift {
    private static final int PANELS = 16;

    /** Fewer cells than this do not show the bend and the bend back. */
    private static final int FEWEST_CELLS = 16;

    private final Section centre;
    private final double fromM;
    private final double toM;

    /**
     * A shift.
     *
     * @param centre the piece along the centre line
     * @param fromM distance left of the centre line at its near end, m
     * @param toM at its far end
     * @throws IllegalArgumentException if the lane does not fit inside the turn
     */
    LaneShift(Section centre, double fromM, double toM) {
        this.centre = centre;
        this.fromM = fromM;
        this.toM = toM;
    }

    double lengthM() {
        return GaussLegendre.integral(this::speed, 0, 1, PANELS);
    }

    /** The lane in cells of equal share of the piece; each has its exact length and turns as far as the lane does. */
    List<Section> cells(int wanted) {
        int parts = Math.max(FEWEST_CELLS, wanted);
        double rise = centre.gradeSine() * centre.lengthM();
        double grade = rise / lengthM();
        List<Section> cells = new ArrayList<>(parts);
        for (int i = 0; i < parts; i++) {
            double from = (double) i / parts;
            double to = (i + 1.0) / parts;
            double length = GaussLegendre.integral(this::speed, from, to);
            double turned = aside(to) - aside(from) + centre.curvature() * centre.lengthM() / parts;
            double curvature = turned / length;
            if (Math.abs(curvature) * Piece.SMALLEST_LANE_RADIUS_M > 1) {
                throw new IllegalArgumentException(
                        "lane_ends_mm moves a lane by %.4g mm within %.4g mm, so that it bends more tightly than %.4g mm; give it a longer piece"
                                .formatted(
                                        1000 * Math.abs(toM - fromM),
                                        1000 * centre.lengthM(),
                                        1000 * Piece.SMALLEST_LANE_RADIUS_M));
            }
            cells.add(new Section(length, curvature, centre.bankRad(), grade));
        }
        return cells;
    }

    /** Distance left of the centre line at a share of the piece, m. */
    double offsetM(double u) {
        return fromM + (toM - fromM) * u * u * u * (10 + u * (6 * u - 15));
    }

    /** How far the lane's direction is off the centre line's, to the left, rad. */
    double aside(double u) {
        return Math.atan2(slope(u), room(u));
    }

    /** Metres of lane for the whole piece as one. */
    private double speed(double u) {
        return Math.hypot(slope(u), room(u));
    }

    private double slope(double u) {
        return (toM - fromM) * 30 * u * u * (1 - u) * (1 - u);
    }

    private double room(double u) {
        return centre.lengthM() * (1 - centre.curvature() * offsetM(u));
    }
}
