package org.lapwright.core.track;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.track.Stretch.Kind;

/**
 * Divides a lap into straights and turns by its curvature, so that pieces that go on in the same way, and the small wavering of
 * a drawn line, are one.
 *
 * <p>A place belongs to a turn where the lane curves more than a quarter of what it curves on average. A straight shorter than
 * 1.5 % of the lap and a turn through less than 10° are too small to lose time in and go to a neighbour. The three bounds are
 * choices. The timing line always divides.
 */
public final class Stretches {
    private static final double BENT = 0.25;
    private static final double SHORT = 0.015;
    private static final double SLIGHT = Math.toRadians(10);

    private Stretches() {}

    /** The stretches of a lap, from the timing line on; they cover it without gaps. */
    public static List<Stretch> of(LaneCells lane) {
        List<Stretch> row = runs(lane, BENT * meanCurvature(lane));
        int smallest = smallest(row, lane.lapM());
        while (smallest >= 0) {
            absorb(row, smallest);
            smallest = smallest(row, lane.lapM());
        }
        return List.copyOf(row);
    }

    private static double meanCurvature(LaneCells lane) {
        double turned = 0;
        for (int i = 0; i < lane.count(); i++) {
            turned += Math.abs(lane.curvature(i)) * lane.lengthM(i);
        }
        return turned / lane.lapM();
    }

    private static List<Stretch> runs(LaneCells lane, double bound) {
        List<Stretch> row = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < lane.count(); i++) {
            double curvature = lane.curvature(i);
            Kind kind = Math.abs(curvature) <= bound ? Kind.STRAIGHT : curvature > 0 ? Kind.LEFT : Kind.RIGHT;
            double end = at + lane.lengthM(i);
            append(row, new Stretch(kind, i, i + 1, at, end, curvature * lane.lengthM(i)));
            at = end;
        }
        return row;
    }

    private static void append(List<Stretch> row, Stretch next) {
        int last = row.size() - 1;
        if (last >= 0 && row.get(last).kind() == next.kind()) {
            row.set(last, row.get(last).joined(next, next.kind()));
        } else {
            row.add(next);
        }
    }

    /** The shortest of those that are too small to stand alone, or −1. */
    private static int smallest(List<Stretch> row, double lapM) {
        int found = -1;
        for (int i = 0; i < row.size() && row.size() > 1; i++) {
            Stretch stretch = row.get(i);
            boolean small = stretch.kind() == Kind.STRAIGHT
                    ? stretch.lengthM() < SHORT * lapM
                    : Math.abs(stretch.turnedRad()) < SLIGHT;
            if (small && (found < 0 || stretch.lengthM() < row.get(found).lengthM())) {
                found = i;
            }
        }
        return found;
    }

    private static void absorb(List<Stretch> row, int small) {
        boolean backwards = small == row.size() - 1
                || (small > 0
                        && row.get(small - 1).lengthM() >= row.get(small + 1).lengthM());
        int first = backwards ? small - 1 : small;
        Kind kind = row.get(backwards ? small - 1 : small + 1).kind();
        Stretch joined = row.get(first).joined(row.remove(first + 1), kind);
        row.set(first, joined);
        List<Stretch> again = new ArrayList<>();
        row.forEach(stretch -> append(again, stretch));
        row.clear();
        row.addAll(again);
    }
}
