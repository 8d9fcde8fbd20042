package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.PredictionInWords;
import org.lapwright.core.dynamics.Limit;
import org.lapwright.core.dynamics.PredictedLap;

/**
 * How the cells of a lap are drawn: each kind has a colour and, for those who do not see it, a width or a dash of its own.
 *
 * @param kinds what the kinds are, for the legend
 * @param runs the lap divided into kinds
 */
public record Colouring(List<Kind> kinds, List<CellRun> runs) {
    private static final int SPEEDS = 5;

    /** Shorter runs than this share of the lap are not told apart. */
    private static final double SHORTEST = 0.004;

    /** Copies the lists. */
    public Colouring {
        kinds = List.copyOf(kinds);
        runs = List.copyOf(runs);
    }

    /**
     * One way to draw.
     *
     * @param css its class in the style sheet
     * @param label what it means
     * @param letter its letter on the drawing; empty when it has none
     */
    public record Kind(String css, String label, String letter) {}

    /** The lane itself, without a lap. */
    static Colouring plain(int cells) {
        return new Colouring(List.of(new Kind("plain", "the lane", "")), List.of(new CellRun(0, 0, cells)));
    }

    /** Five steps of speed between the slowest and the fastest place, equally wide. */
    static Colouring bySpeed(PredictedLap lap) {
        double low = lap.slowestMps();
        double step = (lap.topMps() - low) / SPEEDS;
        List<Kind> kinds = new ArrayList<>();
        for (int i = 0; i < SPEEDS; i++) {
            kinds.add(new Kind(
                    "speed-" + (i + 1),
                    "%s to %s m/s".formatted(Figures.fixed(low + i * step, 1), Figures.fixed(low + (i + 1) * step, 1)),
                    ""));
        }
        return new Colouring(kinds, runs(lap, cell -> speed(lap, cell, low, step)));
    }

    private static int speed(PredictedLap lap, int cell, double low, double step) {
        double middle = (lap.trace().speedMps(cell) + lap.trace().speedMps(cell + 1)) / 2;
        return step > 0 ? Math.max(0, Math.min(SPEEDS - 1, (int) ((middle - low) / step))) : 0;
    }

    /** By what limits the car. */
    static Colouring byLimit(PredictedLap lap) {
        List<Kind> kinds = new ArrayList<>();
        for (Limit limit : Limit.values()) {
            kinds.add(new Kind(
                    "limit-" + limit.word(),
                    limit.word() + ": " + PredictionInWords.meaning(limit),
                    limit.word().substring(0, 1).toUpperCase(Locale.ROOT)));
        }
        return new Colouring(kinds, runs(lap, cell -> lap.trace().limit(cell).ordinal()));
    }

    private static List<CellRun> runs(PredictedLap lap, java.util.function.IntUnaryOperator kind) {
        int cells = lap.trace().cells();
        return CellRun.of(
                cells,
                kind,
                edge -> lap.trace().placeM(edge),
                SHORTEST * lap.trace().placeM(cells));
    }

    /** The kinds that occur, for the legend. */
    List<Kind> used() {
        return java.util.stream.IntStream.range(0, kinds.size())
                .filter(kind -> runs.stream().anyMatch(run -> run.kind() == kind))
                .mapToObj(kinds::get)
                .toList();
    }

    Kind kind(CellRun run) {
        return kinds.get(run.kind());
    }
}
