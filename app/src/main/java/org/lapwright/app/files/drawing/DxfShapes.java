package org.lapwright.app.files.drawing;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;

/** Draws the entities of a DXF drawing. */
final class DxfShapes {
    /** A bulge below this is a straight line for every purpose. */
    private static final double STRAIGHT = 1e-6;

    private final Budget budget;
    private final LeftOut leftOut;
    private final List<Outline> outlines = new ArrayList<>();

    DxfShapes(Budget budget, LeftOut leftOut) {
        this.budget = budget;
        this.leftOut = leftOut;
    }

    List<Outline> outlines() {
        return outlines;
    }

    /** Draws one entity, or notes that it is left out. */
    void draw(DxfEntity entity) {
        budget.take();
        if (isOutside(entity)) {
            return;
        }
        Pen pen = new Pen(budget);
        AffineTransform placed = new AffineTransform();
        switch (entity.type()) {
            case "LINE" -> line(entity, pen);
            case "ARC", "CIRCLE" -> {
                arc(entity, pen);
                placed = entity.placed();
            }
            case "ELLIPSE" -> ellipse(entity, pen);
            case "LWPOLYLINE" -> {
                bulged(DxfVertex.ofLight(entity), entity.flag(1), pen);
                placed = entity.placed();
            }
            case "SPLINE" -> {
                String trouble = DxfSpline.draw(entity, pen);
                if (!trouble.isEmpty()) {
                    leftOut.say("Line %d, SPLINE: %s; it was left out.".formatted(entity.line(), trouble));
                }
            }
            default -> leftOut.one(entity.type());
        }
        keep(pen, placed);
    }

    /** Draws a polyline of the older kind with its vertices. */
    void polyline(DxfEntity entity, List<DxfEntity> vertices) {
        budget.take();
        if (isOutside(entity)) {
            return;
        }
        if (entity.flag(16) || entity.flag(64)) {
            leftOut.one("mesh");
            return;
        }
        Pen pen = new Pen(budget);
        bulged(DxfVertex.of(vertices), entity.flag(1), pen);
        keep(pen, entity.placed());
    }

    private boolean isOutside(DxfEntity entity) {
        if (entity.number(60) == 1 || entity.number(67) == 1) {
            leftOut.one(entity.type() + (entity.number(67) == 1 ? " on the paper, not in the drawing" : ", hidden"));
            return true;
        }
        if (entity.leans()) {
            leftOut.one(entity.type() + " in a plane that leans");
            return true;
        }
        return false;
    }

    private void keep(Pen pen, AffineTransform placed) {
        if (!pen.isEmpty()) {
            outlines.add(new Outline(pen.path(), placed));
        }
    }

    private void line(DxfEntity entity, Pen pen) {
        if (entity.has(11)) {
            pen.move(entity.number(10), entity.number(20));
            pen.line(entity.number(11), entity.number(21));
        } else {
            leftOut.say("Line %d, LINE: it has no end; it was left out.".formatted(entity.line()));
        }
    }

    private void arc(DxfEntity entity, Pen pen) {
        double radius = entity.number(40);
        if (!(radius > 0)) {
            leftOut.say("Line %d, %s: its radius is not above zero; it was left out."
                    .formatted(entity.line(), entity.type()));
            return;
        }
        boolean whole = entity.type().equals("CIRCLE");
        double from = whole ? 0 : Math.toRadians(entity.number(50) % 360);
        double turn = whole ? 2 * Math.PI : turn(from, Math.toRadians(entity.number(51) % 360));
        new EllipseArc(entity.number(10), entity.number(20), radius, radius, 0, from, turn).drawAlone(pen);
    }

    private void ellipse(DxfEntity entity, Pen pen) {
        double across = Math.hypot(entity.number(11), entity.number(21));
        double ratio = entity.number(40, 1);
        if (!(across > 0 && ratio > 0)) {
            leftOut.say("Line %d, ELLIPSE: its axes are not above zero; it was left out.".formatted(entity.line()));
            return;
        }
        double tilt = Math.atan2(entity.number(21), entity.number(11));
        double from = entity.number(41) % (2 * Math.PI);
        double to = entity.number(42, 2 * Math.PI);
        boolean whole = Math.abs(to - entity.number(41)) >= 2 * Math.PI - 1e-6;
        double turn = whole ? 2 * Math.PI : turn(from, to % (2 * Math.PI));
        double up = (entity.isSeenFromBelow() ? -1 : 1) * ratio * across;
        new EllipseArc(entity.number(10), entity.number(20), across, up, tilt, from, turn).drawAlone(pen);
    }

    /** From one angle to another against the clock; a whole turn if they are the same. */
    private static double turn(double from, double to) {
        double turn = (to - from) % (2 * Math.PI);
        return turn <= 1e-12 ? turn + 2 * Math.PI : turn;
    }

    private static void bulged(List<DxfVertex> vertices, boolean closed, Pen pen) {
        if (vertices.size() < 2) {
            return;
        }
        pen.move(vertices.get(0).x(), vertices.get(0).y());
        int spans = closed ? vertices.size() : vertices.size() - 1;
        for (int i = 0; i < spans; i++) {
            span(vertices.get(i), vertices.get((i + 1) % vertices.size()), pen);
        }
        if (closed) {
            pen.close();
        }
    }

    /** The bulge is the tangent of a quarter of the angle that the arc turns through, against the clock when positive. */
    private static void span(DxfVertex from, DxfVertex to, Pen pen) {
        double bulge = from.bulge();
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double chord = Math.hypot(dx, dy);
        if (Math.abs(bulge) < STRAIGHT || chord < 1e-12) {
            pen.line(to.x(), to.y());
            return;
        }
        double away = (1 - bulge * bulge) / (4 * bulge);
        double centreX = (from.x() + to.x()) / 2 - dy * away;
        double centreY = (from.y() + to.y()) / 2 + dx * away;
        double radius = chord * (1 + bulge * bulge) / (4 * Math.abs(bulge));
        double angle = Math.atan2(from.y() - centreY, from.x() - centreX);
        new EllipseArc(centreX, centreY, radius, radius, 0, angle, 4 * Math.atan(bulge)).draw(pen, to.x(), to.y());
    }
}
