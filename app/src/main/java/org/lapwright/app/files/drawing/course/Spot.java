package org.lapwright.app.files.drawing.course;

/**
 * A place on a drawing.
 *
 * @param x to the right, mm
 * @param y upwards, mm
 */
public record Spot(double x, double y) {
    double distance(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    Spot middle(Spot other) {
        return new Spot((x + other.x) / 2, (y + other.y) / 2);
    }

    /** Part of the way to another. */
    Spot towards(Spot other, double share) {
        return new Spot(x + share * (other.x - x), y + share * (other.y - y));
    }

    /** Distance from the straight piece of line between two places. */
    double fromLine(Spot a, Spot b) {
        return fromLine(x, y, a.x, a.y, b.x, b.y);
    }

    static double fromLine(double px, double py, double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        double square = dx * dx + dy * dy;
        double share = square > 0 ? Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / square)) : 0;
        return Math.hypot(px - ax - share * dx, py - ay - share * dy);
    }

    /** As a sentence names it. */
    String said() {
        return "(%d, %d) mm".formatted(Math.round(x), Math.round(y));
    }
}
