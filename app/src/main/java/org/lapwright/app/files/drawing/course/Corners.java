package org.lapwright.app.files.drawing.course;

import java.util.ArrayList;
import java.util.List;

/**
 * A line whose corners were rounded.
 *
 * @param spots the line
 * @param count how many corners it had
 * @param smallestMm the smallest radius used; less than asked for where there was no room
 * @param furthestMm how far the line leaves the drawing
 */
record Corners(List<Spot> spots, int count, double smallestMm, double furthestMm) {
    /** A curve that was flattened to 0.01 mm turns less at its strokes, down to a radius of 5 mm. */
    private static final double LEAST_TURN = Math.toRadians(8);

    /** The share of the way to the next corner that one may take. */
    private static final double ROOM = 0.45;

    /** Copies the list. */
    Corners {
        spots = List.copyOf(spots);
    }

    /** Puts a smooth bend in the place of every corner, tangent to the line on either side. */
    static Corners rounded(List<Spot> spots, double radius) {
        ClosedLine line = new ClosedLine(spots);
        List<Integer> corners = corners(line);
        List<Spot> rounded = new ArrayList<>();
        double smallest = radius;
        double furthest = 0;
        int n = corners.size();
        double lastCut = 0;
        double firstCut = 0;
        for (int k = 0; k < n; k++) {
            double here = line.placeOf(corners.get(k));
            double before = gap(line, corners, k - 1);
            double after = gap(line, corners, k);
            double half = Math.tan(Math.abs(line.turnAt(corners.get(k))) / 2);
            double cut = Math.min(radius * half, ROOM * Math.min(before, after));
            smallest = Math.min(smallest, cut / half);
            if (k == 0) {
                firstCut = here - cut;
            } else {
                rounded.addAll(line.part(lastCut, here - cut));
            }
            List<Spot> bend = bend(line, here - cut, here + cut);
            rounded.addAll(bend);
            Spot corner = line.spot(corners.get(k));
            furthest = Math.max(
                    furthest, bend.stream().mapToDouble(corner::distance).min().orElse(0));
            lastCut = here + cut;
        }
        if (n == 0) {
            return new Corners(spots, 0, 0, 0);
        }
        rounded.addAll(around(line, lastCut, firstCut));
        return new Corners(new Polyline(rounded, true).spots(), n, smallest, furthest);
    }

    /** How many corners a line has. */
    static int count(List<Spot> spots) {
        return corners(new ClosedLine(spots)).size();
    }

    private static List<Integer> corners(ClosedLine line) {
        List<Integer> corners = new ArrayList<>();
        for (int i = 0; i < line.count(); i++) {
            if (Math.abs(line.turnAt(i)) > LEAST_TURN) {
                corners.add(i);
            }
        }
        return corners;
    }

    private static double gap(ClosedLine line, List<Integer> corners, int k) {
        int n = corners.size();
        double from = line.placeOf(corners.get(Math.floorMod(k, n)));
        double to = line.placeOf(corners.get(Math.floorMod(k + 1, n)));
        return to > from ? to - from : to - from + line.length();
    }

    /** From the last bend past the beginning to the first. */
    private static List<Spot> around(ClosedLine line, double from, double to) {
        double length = line.length();
        if (from >= length) {
            return line.part(from - length, to);
        }
        if (to < 0) {
            return line.part(from, to + length);
        }
        List<Spot> around = new ArrayList<>(line.part(from, length));
        if (to > 0) {
            around.addAll(line.part(0, to));
        }
        return around;
    }

    /** One Bézier curve: nearly an arc between straights, and smooth between any curves. */
    private static List<Spot> bend(ClosedLine line, double from, double to) {
        double length = line.length();
        Spot a = line.at(from);
        Spot b = line.at(to);
        double into = line.direction(line.strokeAt(wrapped(from, length)));
        double out = line.direction(line.strokeAt(wrapped(to, length)));
        double angle = Math.abs(Math.IEEEremainder(out - into, 2 * Math.PI));
        double arm = angle < 1e-6
                ? a.distance(b) / 3
                : a.distance(b) * 4 / 3 * Math.tan(angle / 4) / (2 * Math.sin(angle / 2));
        Spot c = new Spot(a.x() + arm * Math.cos(into), a.y() + arm * Math.sin(into));
        Spot d = new Spot(b.x() - arm * Math.cos(out), b.y() - arm * Math.sin(out));
        int strokes = (int) Math.min(200, 8 + Math.ceil(Math.toDegrees(angle)));
        List<Spot> bend = new ArrayList<>();
        for (int i = 0; i <= strokes; i++) {
            double t = (double) i / strokes;
            Spot ab = a.towards(c, t).towards(c.towards(d, t), t);
            bend.add(ab.towards(c.towards(d, t).towards(d.towards(b, t), t), t));
        }
        return bend;
    }

    private static double wrapped(double s, double length) {
        return s - Math.floor(s / length) * length;
    }
}
