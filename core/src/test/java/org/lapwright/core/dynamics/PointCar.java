package org.lapwright.core.dynamics;

import java.util.List;
import java.util.OptionalDouble;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/**
 * The car as a point: 0.01 mm long, its mass on the rear axle, no losses. What is left of the model is the circle of grip and the
 * motor's line; published problems for a point mass can then be put to the real solver.
 */
final class PointCar {
    /** Stands for a force or a speed without limit, m/s² or m/s. */
    static final double ENDLESS = 1e6;

    private static final double MASS = 0.1;
    private static final double LENGTH = 1e-5;
    private static final double AHEAD = 1e-6;
    private static final double VOLTS = 12;

    private PointCar() {}

    /**
     * A car on which the motor drives by {@code drive} (1 − v/{@code topMps}) and brakes by {@code brake}, all m/s². The brake is the
     * motor's own friction K I₀, the only part of the model that brakes alike at any speed; the line is raised by as much.
     */
    static ResolvedCar of(double grip, double drive, double topMps, double brake) {
        double constant = VOLTS * drive / (topMps * (drive + brake));
        MotorLine motor = new MotorLine(constant, constant * VOLTS / (MASS * (drive + brake)), MASS * brake / constant);
        return new ResolvedCar(
                new ResolvedCar.Body(MASS, LENGTH, AHEAD * LENGTH, 1e-8 * LENGTH, 0, LENGTH, LENGTH / 2, 1),
                new ResolvedCar.Contact(grip, 0, 0, 0, 0, 0, 0, 0),
                new ResolvedCar.Drive(motor, 1, 1, 1, 0, 0));
    }

    /** A lane without resistance in its rails, through pieces. */
    static LaneCells lane(List<Piece> pieces, int cells) {
        return track(pieces).cells(new Lane("only", 0), cells);
    }

    static Track track(List<Piece> pieces) {
        return new Track(
                "of a book",
                new Surface(1, false),
                List.of(new Lane("only", 0)),
                new Power(VOLTS, 0, 0, List.of(0.0), OptionalDouble.empty()),
                new PieceLayout(pieces));
    }

    /** A straight, m. */
    static Piece straight(double lengthM) {
        return new Piece.Straight(1000 * lengthM, 0);
    }

    /** A left turn by its length, m. */
    static Piece turn(double lengthM, double radiusM) {
        return new Piece.Turn(1000 * radiusM, Math.toDegrees(lengthM / radiusM), true, 0, 0);
    }

    /** Square of the speed at a place, linear in between. */
    static double squareAt(LapTrace trace, double placeM) {
        int edge = 1;
        while (trace.placeM(edge) < placeM) {
            edge++;
        }
        double part = (placeM - trace.placeM(edge - 1)) / (trace.placeM(edge) - trace.placeM(edge - 1));
        double before = trace.speedMps(edge - 1) * trace.speedMps(edge - 1);
        double after = trace.speedMps(edge) * trace.speedMps(edge);
        return before + part * (after - before);
    }
}
