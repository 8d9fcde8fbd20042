package org.lapwright.app.files.drawing.course;

import java.util.Arrays;
import java.util.List;

/** A closed line of straight strokes by its length. */
final class ClosedLine {
    private final List<Spot> spots;
    private final double[] upTo;
    private final double[] turned;

    ClosedLine(List<Spot> spots) {
        this.spots = spots;
        int n = spots.size();
        upTo = new double[n + 1];
        turned = new double[n + 1];
        for (int i = 1; i <= n; i++) {
            upTo[i] = upTo[i - 1] + spot(i - 1).distance(spot(i));
            turned[i] = turned[i - 1] + Math.abs(turnAt(i % n));
        }
    }

    /** Corner {@code i}, counted on past the last. */
    Spot spot(int i) {
        return spots.get(Math.floorMod(i, spots.size()));
    }

    int count() {
        return spots.size();
    }

    double length() {
        return upTo[upTo.length - 1];
    }

    double placeOf(int i) {
        return upTo[i];
    }

    /** By how much the line turns at a corner, rad, left positive. */
    double turnAt(int i) {
        return Math.IEEEremainder(direction(i) - direction(i - 1), 2 * Math.PI);
    }

    /** Direction of the stroke that begins at a corner, rad. */
    double direction(int i) {
        Spot a = spot(i);
        Spot b = spot(i + 1);
        return Math.atan2(b.y() - a.y(), b.x() - a.x());
    }

    /** The stroke that holds a place from 0 to below the length. */
    int strokeAt(double s) {
        int found = Arrays.binarySearch(upTo, s);
        int stroke = found >= 0 ? found : -found - 2;
        return Math.min(Math.max(stroke, 0), spots.size() - 1);
    }

    Spot at(double s) {
        double inside = s - Math.floor(s / length()) * length();
        int i = strokeAt(inside);
        double stroke = upTo[i + 1] - upTo[i];
        return spot(i).towards(spot(i + 1), stroke > 0 ? Math.min(1, (inside - upTo[i]) / stroke) : 0);
    }

    /** How much the line turns between two places, all turns counted as positive, rad. */
    double turning(double from, double to) {
        return turned[strokeAt(to)] - turned[strokeAt(from)];
    }

    /** Where a part begins, its corners, and where it ends; {@code to} may be the length. */
    List<Spot> part(double from, double to) {
        java.util.ArrayList<Spot> part = new java.util.ArrayList<>();
        part.add(at(from));
        for (int i = strokeAt(from) + 1; i < upTo.length && upTo[i] < to; i++) {
            if (upTo[i] > from) {
                part.add(spot(i));
            }
        }
        part.add(to >= length() ? spot(0) : at(to));
        return part;
    }
}
