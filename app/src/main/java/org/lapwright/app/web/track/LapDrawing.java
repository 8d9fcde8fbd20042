package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.SectionTimes;
import org.lapwright.app.web.chart.Scale;
import org.lapwright.core.dynamics.LapTrace;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.Stretch;

/**
 * A lap over its distance: the speed, what limits it, where the turns are, and what it loses against another one.
 *
 * @param summary what it shows, in words
 * @param speed the speed
 * @param bands the turns
 * @param strip what limits, as a strip
 * @param limits the limits that occur, for the legend
 * @param loss time lost so far against the other lap, if there is one
 */
public record LapDrawing(
        String summary,
        TracePlot speed,
        List<Band> bands,
        List<Piece> strip,
        List<Colouring.Kind> limits,
        Optional<TracePlot> loss) {
    private static final int HEIGHT = 210;
    private static final int LOSS_HEIGHT = 110;
    private static final double LETTERED = 0.035;

    /** Copies the lists. */
    public LapDrawing {
        bands = List.copyOf(bands);
        strip = List.copyOf(strip);
        limits = List.copyOf(limits);
    }

    /**
     * A turn.
     *
     * @param x where it begins
     * @param width how far it goes
     * @param middle its middle
     * @param label its number among the sections
     */
    public record Band(String x, String width, String middle, String label) {}

    /**
     * A stretch under one limit.
     *
     * @param css its class in the style sheet
     * @param from where it begins
     * @param to where it ends
     * @param middle its middle
     * @param letter its letter; empty where there is no room
     */
    public record Piece(String css, String from, String to, String middle, String letter) {}

    /**
     * Draws a lap.
     *
     * @param lap the lap
     * @param stretches its straights and turns
     * @param other the lap to hold it against, if any
     * @param times what it loses against the other one
     */
    static LapDrawing of(
            PredictedLap lap, List<Stretch> stretches, Optional<PredictedLap> other, Optional<SectionTimes> times) {
        Colouring limits = Colouring.byLimit(lap);
        double top = Math.max(lap.topMps(), other.map(PredictedLap::topMps).orElse(0.0));
        List<TracePlot.Values> speeds = new ArrayList<>();
        other.ifPresent(held -> speeds.add(speed("other", held.trace())));
        speeds.add(speed("here", lap.trace()));
        return new LapDrawing(
                "Speed along the lap, from %s to %s m/s"
                        .formatted(Figures.fixed(lap.slowestMps(), 2), Figures.fixed(lap.topMps(), 2)),
                TracePlot.of(HEIGHT, new Scale(0, 1.12 * top, HEIGHT, 0), speeds),
                bands(stretches),
                strip(lap.trace(), limits),
                limits.used(),
                times.map(held -> loss(lap.trace(), held)));
    }

    private static TracePlot.Values speed(String css, LapTrace trace) {
        return new TracePlot.Values(css, trace.cells() + 1, trace::placeM, trace::speedMps);
    }

    private static TracePlot loss(LapTrace trace, SectionTimes times) {
        double low =
                times.lossS().stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double high =
                times.lossS().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return TracePlot.of(
                LOSS_HEIGHT,
                TracePlot.around(low, high, LOSS_HEIGHT),
                List.of(new TracePlot.Values(
                        "here",
                        trace.cells() + 1,
                        edge -> trace.placeM(edge),
                        edge -> times.lossS().get(edge))));
    }

    private static List<Band> bands(List<Stretch> stretches) {
        double lap = stretches.get(stretches.size() - 1).toM();
        List<Band> bands = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            if (stretch.kind() != Stretch.Kind.STRAIGHT) {
                bands.add(new Band(
                        Scale.percent(100 * stretch.fromM() / lap),
                        Scale.percent(100 * stretch.lengthM() / lap),
                        Scale.percent(50 * (stretch.fromM() + stretch.toM()) / lap),
                        stretch.lengthM() < LETTERED * lap ? "" : String.valueOf(i + 1)));
            }
        }
        return bands;
    }

    private static List<Piece> strip(LapTrace trace, Colouring limits) {
        double lap = trace.placeM(trace.cells());
        List<Piece> strip = new ArrayList<>();
        for (CellRun run : limits.runs()) {
            double from = trace.placeM(run.fromCell()) / lap;
            double to = trace.placeM(run.toCell()) / lap;
            strip.add(new Piece(
                    limits.kind(run).css(),
                    Scale.percent(100 * from),
                    Scale.percent(100 * to),
                    Scale.percent(50 * (from + to)),
                    to - from < LETTERED ? "" : limits.kind(run).letter()));
        }
        return strip;
    }
}
