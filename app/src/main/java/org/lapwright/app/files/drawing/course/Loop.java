package org.lapwright.app.files.drawing.course;

import java.util.List;

/**
 * A closed line that was found on a drawing.
 *
 * @param number in the order of the drawing, from 1
 * @param spots strokes that follow it; the first is not repeated
 * @param pieces how many drawn pieces it was joined from
 */
public record Loop(int number, List<Spot> spots, int pieces) {
    /** Copies the list. */
    public Loop {
        spots = List.copyOf(spots);
    }

    /** Its length, mm. */
    public double lengthMm() {
        return new Polyline(spots, true).length();
    }

    /** From its left end to its right, mm. */
    public double widthMm() {
        return spots.stream().mapToDouble(spot -> spot.x()).max().orElse(0) - leftMm();
    }

    /** From its lowest place to its highest, mm. */
    public double heightMm() {
        return topMm() - spots.stream().mapToDouble(spot -> spot.y()).min().orElse(0);
    }

    /** Its left end, mm. */
    public double leftMm() {
        return spots.stream().mapToDouble(spot -> spot.x()).min().orElse(0);
    }

    /** Its highest place, mm. */
    public double topMm() {
        return spots.stream().mapToDouble(spot -> spot.y()).max().orElse(0);
    }

    /** The area inside, mm², positive if it was drawn against the clock. */
    double area() {
        double sum = 0;
        for (int i = 0; i < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get((i + 1) % spots.size());
            sum += (a.x() - spots.get(0).x()) * (b.y() - a.y())
                    - (a.y() - spots.get(0).y()) * (b.x() - a.x());
        }
        return sum / 2;
    }

    /** The same loop larger or smaller. */
    public Loop scaled(double factor) {
        return new Loop(number, new Polyline(spots, true).scaled(factor).spots(), pieces);
    }
}
