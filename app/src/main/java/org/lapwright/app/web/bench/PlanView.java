package org.lapwright.app.web.bench;

import java.util.List;

/**
 * A car from above, nose up, drawn to scale. Places are in units of the drawing, of which it is {@link #WIDTH} wide whatever the
 * screen; {@code scale} of them are 1 mm.
 *
 * @param height of the drawing
 * @param scale units for 1 mm
 * @param axle middle of the rear axle
 * @param body dashed outline, schematic
 * @param tyres all four
 * @param axles rear and front
 * @param guide the guide with its braids
 * @param stands corners of the area that the car stands on, and over whose edges it tips
 * @param marks centre of gravity, magnet, ballast
 * @param tipping the distance to the nearer tipping line
 * @param labels beside the car
 * @param bar the scale bar
 * @param summary the drawing in a sentence
 */
public record PlanView(
        double height,
        double scale,
        Point axle,
        Box body,
        List<Tyre> tyres,
        List<Line> axles,
        GuideMark guide,
        List<Point> stands,
        List<Mark> marks,
        Line tipping,
        List<Label> labels,
        ScaleBar bar,
        String summary) {
    /** Width of every drawing. */
    public static final double WIDTH = 360;

    /** Width of a column of labels on either side. */
    public static final double COLUMN = 98;

    /** Copies the lists. */
    public PlanView {
        tyres = List.copyOf(tyres);
        axles = List.copyOf(axles);
        stands = List.copyOf(stands);
        marks = List.copyOf(marks);
        labels = List.copyOf(labels);
    }

    /** The corners as the drawing wants them. */
    public String standsPath() {
        StringBuilder path = new StringBuilder();
        for (Point corner : stands) {
            path.append(path.isEmpty() ? "" : " ")
                    .append(corner.x())
                    .append(',')
                    .append(corner.y());
        }
        return path.toString();
    }

    /** A place; y grows towards the rear. */
    public record Point(double x, double y) {}

    /** A rectangle. */
    public record Box(double x, double y, double width, double height) {}

    /** A line. */
    public record Line(double x1, double y1, double x2, double y2) {}

    /** A tyre; {@code touches} is false for a front wheel that hangs clear. */
    public record Tyre(Box box, boolean touches) {}

    /** The pivot with its radius, and a braid on either side. */
    public record GuideMark(Point pivot, double radius, Line left, Line right) {}

    /** What a mark stands for. */
    public enum Kind {
        /** Centre of gravity: a circle with two of four quarters filled. */
        CENTRE,
        /** Magnet. */
        MAGNET,
        /** Ballast stuck on. */
        BALLAST,
        /** A piece taken out. */
        TAKEN_OUT
    }

    /**
     * Something on the car.
     *
     * @param kind what
     * @param at its middle
     * @param half half its width
     * @param number of a piece of ballast as in the list; empty for the others
     */
    public record Mark(Kind kind, Point at, double half, String number) {}

    /**
     * A label beside the car with a line to what it names.
     *
     * @param x where its lines of text begin, or end on the left
     * @param y foot of its first line
     * @param anchor {@code start} or {@code end}
     * @param lines of text, at most two
     * @param leader from the label to the place
     * @param share of the weight as a bar, 0 to 1; negative for none
     */
    public record Label(double x, double y, String anchor, List<String> lines, Line leader, double share) {
        /** Copies the list. */
        public Label {
            lines = List.copyOf(lines);
        }

        /** Length of the bar. */
        public double bar() {
            return Math.rint(10 * share * COLUMN) / 10;
        }
    }

    /** The scale bar with its length in words. */
    public record ScaleBar(Line line, String label) {}
}
