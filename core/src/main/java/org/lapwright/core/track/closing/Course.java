package org.lapwright.core.track.closing;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PlanPose;

/** The ends of the pieces of a layout, and how its far end moves when a number changes. Lengths in mm, angles in rad. */
final class Course {
    private final List<Piece> pieces;
    private final List<PlanPose> poses = new ArrayList<>();

    Course(PieceLayout layout) {
        pieces = layout.pieces();
        poses.add(new PlanPose(0, 0, 0, 0));
        for (Piece piece : pieces) {
            poses.add(end().after(piece.along(0)));
        }
    }

    private PlanPose end() {
        return poses.get(poses.size() - 1);
    }

    /** Heading of the end against the start, rad, −π to π. */
    double headingRad() {
        return Math.IEEEremainder(end().headingRad(), 2 * Math.PI);
    }

    double heightMm() {
        return 1000 * end().zM();
    }

    /** What must become nothing: x and y of the end, mm, and its heading by a lever, mm. */
    double[] miss(double leverMm) {
        return new double[] {1000 * end().xM(), 1000 * end().yM(), leverMm * headingRad()};
    }

    /** Derivative of {@link #miss} by a number, for one unit of it. */
    double[] slope(Freedom freedom, double leverMm) {
        PlanPose start = poses.get(freedom.piece());
        PlanPose far = poses.get(freedom.piece() + 1);
        if (pieces.get(freedom.piece()) instanceof Piece.Turn turn) {
            return freedom.quantity() == Quantity.ANGLE
                    ? byAngle(turn, start, leverMm)
                    : new double[] {
                        1000 * (far.xM() - start.xM()) / turn.radiusMm(),
                        1000 * (far.yM() - start.yM()) / turn.radiusMm(),
                        0
                    };
        }
        Piece.Straight straight = (Piece.Straight) pieces.get(freedom.piece());
        double plan = Math.sqrt(straight.lengthMm() * straight.lengthMm() - straight.riseMm() * straight.riseMm());
        double share = straight.lengthMm() / plan;
        return new double[] {share * Math.cos(start.headingRad()), share * Math.sin(start.headingRad()), 0};
    }

    /** All that follows a turn goes round its centre when its angle changes. */
    private double[] byAngle(Piece.Turn turn, PlanPose start, double leverMm) {
        int sign = turn.left() ? 1 : -1;
        double centreX = 1000 * start.xM() - sign * turn.radiusMm() * Math.sin(start.headingRad());
        double centreY = 1000 * start.yM() + sign * turn.radiusMm() * Math.cos(start.headingRad());
        double perDegree = sign * Math.PI / 180;
        return new double[] {
            -perDegree * (1000 * end().yM() - centreY), perDegree * (1000 * end().xM() - centreX), perDegree * leverMm
        };
    }
}
