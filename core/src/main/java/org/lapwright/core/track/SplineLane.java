package org.lapwright.core.track;

import java.util.Arrays;
import org.lapwright.core.num.GaussLegendre;
import org.lapwright.core.num.PeriodicSpline;

/** A lane that runs beside a spline at a constant distance. */
final class SplineLane {
    private final PeriodicSpline x;
    private final PeriodicSpline y;
    private final double offsetM;
    private final double[] parameter;
    private final double[] lengthUpTo;

    SplineLane(PointLayout layout, double offsetM, int stepsPerSpan) {
        this.x = layout.spline(true);
        this.y = layout.spline(false);
        this.offsetM = offsetM;
        double[] chords = layout.chords();
        int spans = chords.length - 1;
        parameter = new double[spans * stepsPerSpan + 1];
        for (int i = 0; i < spans; i++) {
            for (int k = 0; k < stepsPerSpan; k++) {
                parameter[i * stepsPerSpan + k] = chords[i] + (chords[i + 1] - chords[i]) * k / stepsPerSpan;
            }
        }
        parameter[spans * stepsPerSpan] = chords[spans];
        lengthUpTo = new double[parameter.length];
        for (int i = 1; i < parameter.length; i++) {
            lengthUpTo[i] = lengthUpTo[i - 1] + lengthBetween(parameter[i - 1], parameter[i]);
        }
    }

    double lengthM() {
        return lengthUpTo[lengthUpTo.length - 1];
    }

    /** Direction of travel, rad; jumps by whole turns are the caller's to undo. */
    double headingAt(double t) {
        return Math.atan2(y.derivative(t), x.derivative(t));
    }

    /** Where the lane is, with its direction as {@link #headingAt} has it. */
    PlanPose poseAt(double t) {
        return new PlanPose(x.value(t), y.value(t), 0, headingAt(t)).leftBy(offsetM);
    }

    /** The spline's parameter at a length along the lane. */
    double parameterAt(double s) {
        int found = Arrays.binarySearch(lengthUpTo, s);
        if (found >= 0) {
            return parameter[found];
        }
        int i = Math.min(Math.max(-found - 2, 0), parameter.length - 2);
        double share = (s - lengthUpTo[i]) / (lengthUpTo[i + 1] - lengthUpTo[i]);
        double t = parameter[i] + share * (parameter[i + 1] - parameter[i]);
        for (int step = 0; step < 4; step++) {
            double t1 = t - (lengthUpTo[i] + lengthBetween(parameter[i], t) - s) / speed(t);
            t = Math.min(Math.max(t1, parameter[i]), parameter[i + 1]);
        }
        return t;
    }

    private double lengthBetween(double from, double to) {
        return GaussLegendre.integral(this::speed, from, to);
    }

    /** Metres of lane for one unit of parameter: |r'| (1 − offset κ). */
    private double speed(double t) {
        double dx = x.derivative(t);
        double dy = y.derivative(t);
        double square = dx * dx + dy * dy;
        double turning = (dx * y.secondDerivative(t) - dy * x.secondDerivative(t)) / square;
        double centre = Math.sqrt(square);
        double curvature = turning / centre;
        double room = 1 - offsetM * curvature;
        if (!(room > Piece.SMALLEST_LANE_RADIUS_M * Math.abs(curvature))) {
            throw new IllegalArgumentException(
                    ("points_mm near (%.0f, %.0f): the centre line turns with a radius of %.4g mm; a lane offset by"
                                    + " %.4g mm needs more room, move the points apart")
                            .formatted(
                                    1000 * x.value(t), 1000 * y.value(t), 1000 / Math.abs(curvature), 1000 * offsetM));
        }
        return centre * room;
    }
}
