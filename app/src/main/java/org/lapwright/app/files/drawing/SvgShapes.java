package org.lapwright.app.files.drawing;

import java.util.Iterator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Draws the shapes of SVG 1.1, chapters 8 and 9, as they are before any transform. */
final class SvgShapes {
    static final Set<String> NAMES = Set.of("path", "line", "polyline", "polygon", "circle", "ellipse", "rect");

    private final Pen pen;

    SvgShapes(Pen pen) {
        this.pen = pen;
    }

    /**
     * Draws one shape.
     *
     * @return what could not be drawn of it, as a part of a sentence; empty if all was
     */
    String draw(Attributes shape) {
        return switch (shape.element()) {
            case "path" -> path(shape.text("d"));
            case "polyline" -> points(shape.text("points"), false);
            case "polygon" -> points(shape.text("points"), true);
            default -> measured(shape);
        };
    }

    private String path(String data) {
        int end = PathData.draw(data, pen);
        if (end < 0) {
            return "";
        }
        String there = data.substring(end, Math.min(end + 12, data.length())).replaceAll("\\s+", " ");
        return "its data cannot be read from character %d on (%s), so the rest of it was left out"
                .formatted(end + 1, there.isEmpty() ? "it breaks off" : "“" + there + "”");
    }

    private String points(String text, boolean closed) {
        List<Double> numbers = SvgNumbers.list(text);
        Iterator<Double> in = numbers.iterator();
        for (int i = 0; i + 1 < numbers.size(); i += 2) {
            if (i == 0) {
                pen.move(in.next(), in.next());
            } else {
                pen.line(in.next(), in.next());
            }
        }
        if (closed && !pen.isEmpty()) {
            pen.close();
        }
        return numbers.size() % 2 == 0 ? "" : "its last point has one number only";
    }

    private String measured(Attributes shape) {
        List<String> names = switch (shape.element()) {
            case "line" -> List.of("x1", "y1", "x2", "y2");
            case "circle" -> List.of("cx", "cy", "r");
            case "ellipse" -> List.of("cx", "cy", "rx", "ry");
            default -> List.of("x", "y", "width", "height", "rx", "ry");
        };
        double[] a = new double[names.size()];
        for (int i = 0; i < a.length; i++) {
            OptionalDouble length = shape.length(names.get(i));
            if (length.isEmpty()) {
                return "its %s is '%s', which is no length in px, mm, cm, in or pt; it was left out"
                        .formatted(names.get(i), LeftOut.shortened(shape.text(names.get(i))));
            }
            a[i] = length.getAsDouble();
        }
        switch (shape.element()) {
            case "line" -> {
                pen.move(a[0], a[1]);
                pen.line(a[2], a[3]);
            }
            case "circle" -> ellipse(a[0], a[1], a[2], a[2]);
            case "ellipse" -> ellipse(a[0], a[1], a[2], a[3]);
            default -> rectangle(a, shape.has("rx"), shape.has("ry"));
        }
        return "";
    }

    /** A radius of zero draws nothing (§9.3, §9.4); one below zero is an error and draws nothing here either. */
    private void ellipse(double cx, double cy, double rx, double ry) {
        if (rx > 0 && ry > 0) {
            EllipseArc.whole(cx, cy, rx, ry).drawAlone(pen);
        }
    }

    /** §9.2: one radius stands for both, and none is larger than half the side. */
    private void rectangle(double[] a, boolean hasRx, boolean hasRy) {
        double x = a[0];
        double y = a[1];
        double w = a[2];
        double h = a[3];
        if (!(w > 0 && h > 0)) {
            return;
        }
        double rx = Math.min(Math.max(0, hasRx ? a[4] : hasRy ? a[5] : 0), w / 2);
        double ry = Math.min(Math.max(0, hasRy ? a[5] : hasRx ? a[4] : 0), h / 2);
        boolean round = rx > 0 && ry > 0;
        if (!round) {
            rx = 0;
            ry = 0;
        }
        pen.move(x + rx, y);
        side(x + w - rx, y);
        corner(round, new EllipseArc(x + w - rx, y + ry, rx, ry, 0, -Math.PI / 2, Math.PI / 2), x + w, y + ry);
        side(x + w, y + h - ry);
        corner(round, new EllipseArc(x + w - rx, y + h - ry, rx, ry, 0, 0, Math.PI / 2), x + w - rx, y + h);
        side(x + rx, y + h);
        corner(round, new EllipseArc(x + rx, y + h - ry, rx, ry, 0, Math.PI / 2, Math.PI / 2), x, y + h - ry);
        side(x, y + ry);
        corner(round, new EllipseArc(x + rx, y + ry, rx, ry, 0, Math.PI, Math.PI / 2), x + rx, y);
        pen.close();
    }

    private void side(double x, double y) {
        if (x != pen.x() || y != pen.y()) {
            pen.line(x, y);
        }
    }

    private void corner(boolean round, EllipseArc arc, double x, double y) {
        if (round) {
            arc.draw(pen, x, y);
        }
    }
}
