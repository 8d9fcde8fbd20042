package org.lapwright.app.web.chart;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.trial.Look;

/**
 * How the interval of the difference closed in, lap by lap.
 *
 * @param height of the drawing, px
 * @param bars one interval a look
 * @param zeroY place of no difference
 * @param marginY place where the margin begins; empty without one
 * @param marginHeight height of the margin
 * @param ticks lines of equal difference
 * @param laps lap numbers along the page
 * @param summary the drawing in words
 */
public record LooksChart(
        int height,
        List<Bar> bars,
        String zeroY,
        String marginY,
        String marginHeight,
        List<LapChart.Tick> ticks,
        List<IntervalChart.Mark> laps,
        String summary) {
    private static final int HEIGHT = 200;
    private static final int MOST_BARS = 80;

    /** Copies the lists. */
    public LooksChart {
        bars = List.copyOf(bars);
        ticks = List.copyOf(ticks);
        laps = List.copyOf(laps);
    }

    /**
     * Draws the looks.
     *
     * @param looks at least one with a finite interval among them
     * @param paceS pace before, s, that turns shares into seconds
     * @param margin the margin that does not matter, s a lap; 0 for none
     */
    public static LooksChart of(List<Look> looks, double paceS, double margin) {
        List<Look> shown = thinned(looks.stream()
                .filter(look -> Double.isFinite(look.halfWidth()) && Double.isFinite(look.delta()))
                .toList());
        double reach = reach(shown, paceS, margin);
        Scale up = new Scale(-reach, reach, HEIGHT - 26, 10);
        int firstLap = shown.isEmpty() ? 0 : shown.get(0).lap();
        int lastLap = shown.isEmpty() ? 1 : shown.get(shown.size() - 1).lap();
        Scale along = new Scale(firstLap - 0.5, Math.max(firstLap + 9, lastLap) + 0.5, 1, 99);
        List<Bar> bars = new ArrayList<>();
        for (Look look : shown) {
            bars.add(Bar.of(look, paceS, along, up));
        }
        int decimals = Scale.decimals(up.step(4));
        return new LooksChart(
                HEIGHT,
                bars,
                Scale.pixels(up.at(0)),
                margin > 0 ? Scale.pixels(up.clamped(margin)) : "",
                Scale.pixels(up.clamped(-margin) - up.clamped(margin)),
                up.ticks(4).stream()
                        .map(value -> new LapChart.Tick(Scale.pixels(up.at(value)), Figures.signed(value, decimals)))
                        .toList(),
                along.ticks(5).stream()
                        .filter(lap -> lap == Math.rint(lap))
                        .map(lap ->
                                new IntervalChart.Mark(Scale.percent(along.at(lap)), Figures.count(lap.longValue())))
                        .toList(),
                summary(shown, paceS));
    }

    /** Evenly thinned to what a phone can show; the last look always stays. */
    private static List<Look> thinned(List<Look> looks) {
        if (looks.size() <= MOST_BARS) {
            return looks;
        }
        List<Look> kept = new ArrayList<>();
        for (int i = 0; i < MOST_BARS; i++) {
            kept.add(looks.get((int) Math.round(i * (looks.size() - 1) / (MOST_BARS - 1.0))));
        }
        return kept;
    }

    /** Wide enough for the later half; the first, wildest intervals may run over the rim. */
    private static double reach(List<Look> looks, double paceS, double margin) {
        double reach = Math.max(0.01, 1.5 * margin);
        for (int i = looks.size() / 2; i < looks.size(); i++) {
            Look look = looks.get(i);
            reach = Math.max(reach, 1.15 * paceS * (Math.abs(look.delta()) + look.halfWidth()));
        }
        return reach;
    }

    private static double seconds(double logRatio, double paceS) {
        return paceS * Math.expm1(logRatio);
    }

    private static String summary(List<Look> looks, double paceS) {
        if (looks.isEmpty()) {
            return "No interval yet.";
        }
        Look first = looks.get(0);
        Look last = looks.get(looks.size() - 1);
        return "The interval after each lap. After lap %d it reached from %s to %s s a lap, after lap %d from %s to %s."
                .formatted(
                        first.lap(),
                        Figures.signed(seconds(first.delta() - first.halfWidth(), paceS), 2),
                        Figures.signed(seconds(first.delta() + first.halfWidth(), paceS), 2),
                        last.lap(),
                        Figures.signed(seconds(last.delta() - last.halfWidth(), paceS), 2),
                        Figures.signed(seconds(last.delta() + last.halfWidth(), paceS), 2));
    }

    /**
     * The interval at one look.
     *
     * @param x place along the page
     * @param lowY place of its lower end
     * @param highY place of its upper end
     * @param estimateY place of the estimate
     * @param crossed whether it excludes no difference
     */
    public record Bar(String x, String lowY, String highY, String estimateY, boolean crossed) {
        private static Bar of(Look look, double paceS, Scale along, Scale up) {
            return new Bar(
                    Scale.percent(along.at(look.lap())),
                    Scale.pixels(up.clamped(seconds(look.delta() - look.halfWidth(), paceS))),
                    Scale.pixels(up.clamped(seconds(look.delta() + look.halfWidth(), paceS))),
                    Scale.pixels(up.clamped(seconds(look.delta(), paceS))),
                    look.crossed());
        }
    }
}
