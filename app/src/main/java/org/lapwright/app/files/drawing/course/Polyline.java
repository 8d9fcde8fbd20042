package org.lapwright.app.files.drawing.course;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A piece of drawn line as straight strokes.
 *
 * @param spots in order; of a closed one the first is not repeated
 * @param closed whether the last goes on to the first
 */
record Polyline(List<Spot> spots, boolean closed) {
    /** Places nearer to each other than this are one, mm. */
    static final double SAME = 1e-6;

    /** Copies the list without repeated places. */
    Polyline {
        spots = distinct(spots, closed);
    }

    private static List<Spot> distinct(List<Spot> spots, boolean closed) {
        List<Spot> kept = new ArrayList<>(spots.size());
        for (Spot spot : spots) {
            if (kept.isEmpty() || kept.get(kept.size() - 1).distance(spot) > SAME) {
                kept.add(spot);
            }
        }
        while (closed && kept.size() > 1 && kept.get(0).distance(kept.get(kept.size() - 1)) <= SAME) {
            kept.remove(kept.size() - 1);
        }
        return List.copyOf(kept);
    }

    Spot first() {
        return spots.get(0);
    }

    Spot last() {
        return spots.get(spots.size() - 1);
    }

    /** Length of all strokes, mm. */
    double length() {
        double sum = closed ? last().distance(first()) : 0;
        for (int i = 1; i < spots.size(); i++) {
            sum += spots.get(i - 1).distance(spots.get(i));
        }
        return sum;
    }

    Polyline reversed() {
        List<Spot> turned = new ArrayList<>(spots);
        Collections.reverse(turned);
        return new Polyline(turned, closed);
    }

    Polyline scaled(double factor) {
        return new Polyline(
                spots.stream()
                        .map(spot -> new Spot(spot.x() * factor, spot.y() * factor))
                        .toList(),
                closed);
    }
}
