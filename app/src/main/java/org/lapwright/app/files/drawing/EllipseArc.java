package org.lapwright.app.files.drawing;

/**
 * A part of an ellipse, drawn as cubic Bézier curves of at most a sixteenth of a turn each, which stay within 1e-7 of the
 * radius of the true arc (the error of the usual approximation falls with the sixth power of the angle; at a quarter turn it
 * is 2.7e-4).
 *
 * @param centreX centre
 * @param centreY centre
 * @param radiusX first semi-axis
 * @param radiusY second semi-axis
 * @param tilt of the first semi-axis, rad
 * @param from where it begins, rad of the ellipse's parameter
 * @param turn how far it goes, rad, with sign
 */
record EllipseArc(
        double centreX, double centreY, double radiusX, double radiusY, double tilt, double from, double turn) {
    private static final double WIDEST = Math.PI / 8;

    static EllipseArc whole(double centreX, double centreY, double radiusX, double radiusY) {
        return new EllipseArc(centreX, centreY, radiusX, radiusY, 0, 0, 2 * Math.PI);
    }

    /**
     * The arc from where the pen is to another point: SVG 1.1, appendix F.6.5 (from endpoint to centre) with F.6.6 (radii out of range). Both
     * radii must not be zero, and the points must differ.
     *
     * @param pen stands at the first point
     * @param radii two semi-axes, in any sign
     * @param tilt of the first, rad
     * @param large whether it goes the long way
     * @param sweep whether the angle grows
     * @param x2 last point
     * @param y2 last point
     */
    static EllipseArc between(
            Pen pen, double[] radii, double tilt, boolean large, boolean sweep, double x2, double y2) {
        double x1 = pen.x();
        double y1 = pen.y();
        double cos = Math.cos(tilt);
        double sin = Math.sin(tilt);
        double halfX = (x1 - x2) / 2;
        double halfY = (y1 - y2) / 2;
        double px = cos * halfX + sin * halfY;
        double py = cos * halfY - sin * halfX;
        double reach = Math.hypot(px / radii[0], py / radii[1]);
        double grown = Math.max(1, reach);
        double rx = Math.abs(radii[0]) * grown;
        double ry = Math.abs(radii[1]) * grown;
        double unitX = px / rx;
        double unitY = py / ry;
        double square = unitX * unitX + unitY * unitY;
        double away = Math.sqrt(Math.max(0, (1 - square) / square)) * (large == sweep ? -1 : 1);
        double cx = away * unitY;
        double cy = -away * unitX;
        double from = Math.atan2(unitY - cy, unitX - cx);
        double turn = Math.atan2(-unitY - cy, -unitX - cx) - from;
        turn += sweep && turn < 0 ? 2 * Math.PI : !sweep && turn > 0 ? -2 * Math.PI : 0;
        double midX = (x1 + x2) / 2 + cos * cx * rx - sin * cy * ry;
        double midY = (y1 + y2) / 2 + sin * cx * rx + cos * cy * ry;
        return new EllipseArc(midX, midY, rx, ry, tilt, from, turn);
    }

    double x(double angle) {
        return centreX + Math.cos(tilt) * radiusX * Math.cos(angle) - Math.sin(tilt) * radiusY * Math.sin(angle);
    }

    double y(double angle) {
        return centreY + Math.sin(tilt) * radiusX * Math.cos(angle) + Math.cos(tilt) * radiusY * Math.sin(angle);
    }

    private double dx(double angle) {
        return -Math.cos(tilt) * radiusX * Math.sin(angle) - Math.sin(tilt) * radiusY * Math.cos(angle);
    }

    private double dy(double angle) {
        return -Math.sin(tilt) * radiusX * Math.sin(angle) + Math.cos(tilt) * radiusY * Math.cos(angle);
    }

    /** Draws it from where the pen is, which is its beginning, to this end, which is its own but for rounding. */
    void draw(Pen pen, double endX, double endY) {
        int parts = (int) Math.max(1, Math.ceil(Math.abs(turn) / WIDEST - 1e-9));
        double step = turn / parts;
        double handle = 4.0 / 3 * Math.tan(step / 4);
        for (int i = 0; i < parts; i++) {
            double a = from + i * step;
            double b = a + step;
            double toX = i == parts - 1 ? endX : x(b);
            double toY = i == parts - 1 ? endY : y(b);
            pen.cubic(
                    x(a) + handle * dx(a),
                    y(a) + handle * dy(a),
                    x(b) - handle * dx(b),
                    y(b) - handle * dy(b),
                    toX,
                    toY);
        }
    }

    /** Draws it as a shape of its own; a whole turn is closed. */
    void drawAlone(Pen pen) {
        pen.move(x(from), y(from));
        boolean whole = Math.abs(turn) >= 2 * Math.PI - 1e-9;
        draw(pen, whole ? x(from) : x(from + turn), whole ? y(from) : y(from + turn));
        if (whole) {
            pen.close();
        }
    }
}
