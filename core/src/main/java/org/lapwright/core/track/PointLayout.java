package org.lapwright.core.track;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.num.PeriodicSpline;

/**
 * A closed centre line through points, flat, joined by a periodic cubic spline with the chord length as parameter.
 *
 * @param points in the direction of travel; a last point equal to the first is dropped
 */
public record PointLayout(List<PlanPoint> points) implements Layout {
    private static final int FEWEST = 4;
    private static final int MOST = 5000;
    private static final double CLOSEST_MM = 0.5;
    private static final int STEPS_PER_SPAN = 16;

    /** Checks that the points make a line. */
    public PointLayout {
        points = withoutRepeatedEnd(points);
        if (points.size() < FEWEST || points.size() > MOST) {
            throw new IllegalArgumentException(
                    "points_mm has %d different points; it needs from %d to %d".formatted(points.size(), FEWEST, MOST));
        }
        for (int i = 0; i < points.size(); i++) {
            int next = (i + 1) % points.size();
            if (points.get(i).distanceMm(points.get(next)) < CLOSEST_MM) {
                throw new IllegalArgumentException(
                        "points_mm[%d] and [%d] lie on each other; leave one out".formatted(i, next));
            }
        }
    }

    @Override
    public double lengthM(LanePath lane) {
        return new SplineLane(this, lane.offsetM(), STEPS_PER_SPAN).lengthM();
    }

    @Override
    public List<Cell> cut(LanePath path, int cells) {
        SplineLane lane = new SplineLane(this, path.offsetM(), STEPS_PER_SPAN);
        List<Cell> row = new ArrayList<>(cells);
        double length = lane.lengthM() / cells;
        double heading = lane.headingAt(0);
        for (int i = 1; i <= cells; i++) {
            double to = lane.parameterAt(i * length);
            double next = lane.headingAt(to);
            double turned = Math.IEEEremainder(next - heading, 2 * Math.PI);
            row.add(new Cell(new Section(length, turned / length, 0, 0), false));
            heading = next;
        }
        return row;
    }

    @Override
    public List<PlanPose> course(LanePath path, int cells) {
        SplineLane lane = new SplineLane(this, path.offsetM(), STEPS_PER_SPAN);
        double length = lane.lengthM() / cells;
        List<PlanPose> poses = new ArrayList<>(cells + 1);
        double heading = lane.headingAt(0);
        for (int i = 0; i <= cells; i++) {
            PlanPose there = lane.poseAt(lane.parameterAt(i * length));
            heading += Math.IEEEremainder(there.headingRad() - heading, 2 * Math.PI);
            poses.add(new PlanPose(there.xM(), there.yM(), there.zM(), heading));
        }
        return poses;
    }

    @Override
    public ClosingGap closingGap() {
        return new ClosingGap(0, 0);
    }

    /** Chord lengths up to each point and back to the first, m. */
    double[] chords() {
        int n = points.size();
        double[] at = new double[n + 1];
        for (int i = 0; i < n; i++) {
            at[i + 1] = at[i] + points.get(i).distanceMm(points.get((i + 1) % n)) / 1000;
        }
        return at;
    }

    /** The spline of one coordinate. */
    PeriodicSpline spline(boolean along) {
        double[] values = points.stream()
                .mapToDouble(point -> (along ? point.xMm() : point.yMm()) / 1000)
                .toArray();
        return new PeriodicSpline(chords(), values);
    }

    private static List<PlanPoint> withoutRepeatedEnd(List<PlanPoint> points) {
        List<PlanPoint> copy = new ArrayList<>(points);
        int last = copy.size() - 1;
        if (last > 0 && copy.get(last).distanceMm(copy.get(0)) < CLOSEST_MM) {
            copy.remove(last);
        }
        return List.copyOf(copy);
    }
}
