package org.lapwright.app.web.track;

import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.chart.Scale;

/**
 * Something drawn over the distance along a lap. Across it is stretched to the screen, from 0 to {@value #ACROSS}; up it is in
 * pixels.
 *
 * @param height px
 * @param lines courses
 * @param up lines of equal value
 * @param along round distances
 * @param zero where 0 is, px; empty when it is not on the scale
 */
public record TracePlot(int height, List<Line> lines, List<Tick> up, List<Tick> along, String zero) {
    static final int ACROSS = 1000;
    private static final int MOST_PLACES = 700;
    private static final int TICKS_ALONG = 5;

    /** Copies the lists. */
    public TracePlot {
        lines = List.copyOf(lines);
        up = List.copyOf(up);
        along = List.copyOf(along);
    }

    /**
     * A course.
     *
     * @param css its class in the style sheet
     * @param d its path
     */
    public record Line(String css, String d) {}

    /**
     * A round value.
     *
     * @param at its place, percent along or pixels up
     * @param label the value
     */
    public record Tick(String at, String label) {}

    /**
     * Values at the edges of the cells.
     *
     * @param css class of the course
     * @param edges how many edges
     * @param placeM where each is, m
     * @param value what is there
     */
    record Values(String css, int edges, IntToDoubleFunction placeM, IntToDoubleFunction value) {
        private String path(Scale up) {
            int stride = 1 + edges / MOST_PLACES;
            double lap = placeM.applyAsDouble(edges - 1);
            StringBuilder d = new StringBuilder(edges * 12);
            for (int edge = 0; edge < edges + stride - 1; edge += stride) {
                int there = Math.min(edge, edges - 1);
                d.append(edge == 0 ? 'M' : 'L')
                        .append(String.format(
                                Locale.ROOT,
                                "%.1f %.1f",
                                ACROSS * placeM.applyAsDouble(there) / lap,
                                up.at(value.applyAsDouble(there))));
            }
            return d.toString();
        }
    }

    /** Draws courses on one scale, whose upper end is at the top. */
    static TracePlot of(int height, Scale up, List<Values> courses) {
        Values first = courses.get(0);
        double lap = first.placeM().applyAsDouble(first.edges() - 1);
        Scale along = new Scale(0, lap, 0, 100);
        int ticksUp = Math.max(2, height / 45);
        int decimals = Scale.decimals(up.step(ticksUp));
        int decimalsAlong = Scale.decimals(along.step(TICKS_ALONG));
        return new TracePlot(
                height,
                courses.stream()
                        .map(course -> new Line(course.css(), course.path(up)))
                        .toList(),
                up.ticks(ticksUp).stream()
                        .map(value -> new Tick(Scale.pixels(up.at(value)), Figures.fixed(value, decimals)))
                        .toList(),
                along.ticks(TICKS_ALONG).stream()
                        .map(value -> new Tick(Scale.percent(along.at(value)), Figures.fixed(value, decimalsAlong)))
                        .toList(),
                up.contains(0) ? Scale.pixels(up.at(0)) : "");
    }

    /** Half as high again as needed, so that no course touches the frame. */
    static Scale around(double low, double high, int height) {
        double room = Math.max(0.08 * (high - low), 1e-3);
        return new Scale(low - room, high + room, height, 0);
    }
}
