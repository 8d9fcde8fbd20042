package org.lapwright.app.web.shelf;

import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.chart.Scale;
import org.lapwright.core.trial.wear.Wear;
import org.lapwright.core.trial.wear.Wear.Point;

/**
 * Pace against the laps that a part has run.
 *
 * @param sentence what it tells
 * @param dots a run each
 * @param line where wear would have them
 * @param across round numbers of laps
 * @param up round differences of pace
 */
public record WearView(String sentence, List<Dot> dots, Ends line, List<Tick> across, List<Tick> up) {
    /** Height of the drawing, px. */
    public static final int HEIGHT = 200;

    private static final double TOP = 12;
    private static final double BOTTOM = 168;
    private static final double LEFT = 12;
    private static final double RIGHT = 97;
    private static final double ROOM = 1.15;
    private static final double LEAST_S = 0.02;
    private static final int HUNDRED = 100;

    /** Copies the lists. */
    public WearView {
        dots = List.copyOf(dots);
        across = List.copyOf(across);
        up = List.copyOf(up);
    }

    /**
     * A run.
     *
     * @param x laps run, percent
     * @param y pace, px
     */
    public record Dot(String x, String y) {}

    /**
     * Ends of a line.
     *
     * @param x1 percent
     * @param y1 px
     * @param x2 percent
     * @param y2 px
     */
    public record Ends(String x1, String y1, String x2, String y2) {}

    /**
     * A round number.
     *
     * @param at percent across, px up
     * @param label it
     */
    public record Tick(String at, String label) {}

    /** The picture of a part's wear; nothing where too few runs tell. */
    public static Optional<WearView> of(Optional<Wear> found) {
        return found.map(WearView::drawn);
    }

    private static WearView drawn(Wear wear) {
        List<Point> points = wear.points();
        double last = points.stream().mapToDouble(Point::laps).max().orElseThrow();
        double most = points.stream()
                        .mapToDouble(point -> Math.abs(point.off()))
                        .max()
                        .orElseThrow()
                * wear.paceS();
        Scale across = new Scale(0, last * ROOM, LEFT, RIGHT);
        Scale up = new Scale(-Math.max(most, LEAST_S) * ROOM, Math.max(most, LEAST_S) * ROOM, BOTTOM, TOP);
        return new WearView(
                sentence(wear),
                points.stream()
                        .map(point -> new Dot(
                                Scale.percent(across.at(point.laps())),
                                Figures.fixed(up.at(point.off() * wear.paceS()), 1)))
                        .toList(),
                line(wear, across, up, last),
                across.ticks(4).stream()
                        .map(laps -> new Tick(Scale.percent(across.at(laps)), Figures.fixed(laps, 0)))
                        .toList(),
                up.ticks(4).stream()
                        .map(s -> new Tick(Figures.fixed(up.at(s), 1), Figures.signed(s, Scale.decimals(up.step(4)))))
                        .toList());
    }

    private static Ends line(Wear wear, Scale across, Scale up, double last) {
        double first = wear.points().stream().mapToDouble(Point::laps).min().orElseThrow();
        return new Ends(
                Scale.percent(across.at(first)),
                Figures.fixed(up.clamped(wear.paceS() * wear.perLap() * (first - wear.meanLaps())), 1),
                Scale.percent(across.at(last)),
                Figures.fixed(up.clamped(wear.paceS() * wear.perLap() * (last - wear.meanLaps())), 1));
    }

    private static String sentence(Wear wear) {
        double scale = wear.paceS() * HUNDRED;
        double low = scale * wear.interval().low();
        double high = scale * wear.interval().high();
        if (!wear.isSure()) {
            return "No wear to be seen in %s runs: %s s a lap in a hundred laps, somewhere between %s and %s."
                    .formatted(
                            Figures.count(wear.points().size()),
                            Figures.signed(scale * wear.perLap(), 3),
                            Figures.signed(low, 3),
                            Figures.signed(high, 3));
        }
        return "A hundred laps on it make a lap %s s %s, somewhere between %s and %s."
                .formatted(
                        Figures.fixed(Math.abs(scale * wear.perLap()), 3),
                        wear.perLap() > 0 ? "slower" : "faster",
                        Figures.fixed(Math.min(Math.abs(low), Math.abs(high)), 3),
                        Figures.fixed(Math.max(Math.abs(low), Math.abs(high)), 3));
    }
}
