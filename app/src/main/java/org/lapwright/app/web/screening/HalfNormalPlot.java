package org.lapwright.app.web.screening;

import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.chart.Scale;
import org.lapwright.core.trial.screening.Screening;
import org.lapwright.core.trial.screening.Screening.Findings;

/**
 * Effects by size against where they would lie if all were noise (Daniel 1959): noise lies on a line through the corner, what matters
 * stands above it.
 *
 * @param summary what it shows, in words
 * @param points one for each effect, the smallest first
 * @param sure height of the line that an effect passes when it is likely real, px from the top
 * @param most label of the upper end
 */
public record HalfNormalPlot(String summary, List<Dot> points, String sure, String most) {
    /** Height of the drawing, px. */
    public static final int HEIGHT = 240;

    private static final double BOTTOM = 210;
    private static final double TOP = 16;
    private static final double LEFT = 4;
    private static final double RIGHT = 88;
    private static final double ROOM = 1.05;

    /** Copies the list. */
    public HalfNormalPlot {
        points = List.copyOf(points);
    }

    /**
     * A point.
     *
     * @param x place along the page
     * @param y px from the top
     * @param label number of the tweak, the one that did most first; empty for a column without one
     * @param named whether it is a tweak's
     */
    public record Dot(String x, String y, String label, boolean named) {}

    /** The plot of what was found. */
    public static HalfNormalPlot of(Findings found) {
        List<Screening.Point> points = found.points();
        double largest = points.get(points.size() - 1).seconds();
        double most = Math.max(ROOM * Math.max(largest, found.margins().simultaneousMargin()), 1e-3);
        double widest = points.get(points.size() - 1).score();
        Scale up = new Scale(0, most, BOTTOM, TOP);
        Scale along = new Scale(0, widest, LEFT, RIGHT);
        List<String> named = points.stream()
                .map(Screening.Point::tweak)
                .filter(tweak -> !tweak.isEmpty())
                .toList();
        return new HalfNormalPlot(
                "Sizes of all effects, the largest %s s".formatted(Figures.fixed(largest, 3)),
                points.stream()
                        .map(point -> new Dot(
                                Scale.percent(along.at(point.score())),
                                Scale.pixels(up.at(point.seconds())),
                                point.tweak().isEmpty()
                                        ? ""
                                        : String.valueOf(named.size() - named.indexOf(point.tweak())),
                                !point.tweak().isEmpty()))
                        .toList(),
                Scale.pixels(up.at(found.margins().simultaneousMargin())),
                Figures.fixed(most, 3) + " s");
    }
}
