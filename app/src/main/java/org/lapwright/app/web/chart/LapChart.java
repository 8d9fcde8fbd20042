package org.lapwright.app.web.chart;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.LapInWords;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.trial.JudgedRun;

/**
 * Every lap as a dot, run after run in the order driven, with the pace of each run and the lap that four in five clean
 * laps meet. Laps far off the pace stand on the upper or lower rim with their time as a label.
 *
 * @param height of the drawing, px
 * @param runs the stretch of each run
 * @param dots the laps
 * @param ticks lines of equal lap time
 * @param shapes the shapes that occur, for the key
 * @param summary the drawing in words
 */
public record LapChart(
        int height, List<RunStretch> runs, List<Dot> dots, List<Tick> ticks, Set<Symbol> shapes, String summary) {
    private static final double GAP = 1.5;
    private static final int ROOM_FOR_WORDS = 3;

    /** Copies the collections. */
    public LapChart {
        runs = List.copyOf(runs);
        dots = List.copyOf(dots);
        ticks = List.copyOf(ticks);
        shapes = shapes.isEmpty() ? EnumSet.noneOf(Symbol.class) : EnumSet.copyOf(shapes);
    }

    /** A large drawing of all runs of a verdict. */
    public static LapChart of(List<JudgedRun> runs) {
        return draw(runs, 260, 34);
    }

    /** A strip under a box. */
    public static LapChart strip(List<JudgedRun> runs) {
        return draw(runs, 84, 8);
    }

    private static LapChart draw(List<JudgedRun> runs, int height, int head) {
        List<JudgedRun> driven =
                runs.stream().filter(run -> !run.stint().laps().isEmpty()).toList();
        Scale times = times(driven, height - 20, head + 14);
        double slots =
                driven.stream().mapToInt(run -> run.stint().laps().size()).sum() + GAP * Math.max(0, driven.size() - 1);
        Scale along = new Scale(0, Math.max(1, slots), 1, 99);
        List<RunStretch> stretches = new ArrayList<>();
        List<Dot> dots = new ArrayList<>();
        Set<Symbol> shapes = EnumSet.noneOf(Symbol.class);
        double slot = 0;
        for (int i = 0; i < driven.size(); i++) {
            JudgedRun run = driven.get(i);
            int laps = run.stint().laps().size();
            stretches.add(
                    RunStretch.of(label(i + 1, run, driven.size()), run, along.at(slot), along.at(slot + laps), times));
            for (Lap lap : run.stint().laps()) {
                Symbol shape = Symbol.of(run.side(), lap.kind());
                shapes.add(shape);
                dots.add(Dot.of(i + 1, run, lap, along.at(slot + 0.5), times, height));
                slot++;
            }
            slot += GAP;
        }
        return new LapChart(height, stretches, dots, Tick.of(times, height > 100 ? 4 : 2), shapes, summary(driven));
    }

    private static String label(int number, JudgedRun run, int runs) {
        return runs <= ROOM_FOR_WORDS
                ? number + " · " + run.side().code()
                : number + " " + run.side().letter();
    }

    /** The clean laps fill the drawing; without any, all laps do. */
    private static Scale times(List<JudgedRun> runs, double bottom, double top) {
        double[] clean = seconds(runs, true);
        double[] shown = clean.length > 0 ? clean : seconds(runs, false);
        double low = DoubleStream.of(shown).min().orElse(0);
        double high = DoubleStream.of(shown).max().orElse(1);
        double room = Math.max(0.08 * (high - low), 0.002 * high);
        return new Scale(low - room, high + room, bottom, top);
    }

    private static double[] seconds(List<JudgedRun> runs, boolean cleanOnly) {
        return runs.stream()
                .flatMap(run -> run.stint().laps().stream())
                .filter(lap -> lap.counts() || !cleanOnly)
                .mapToDouble(Lap::seconds)
                .toArray();
    }

    private static String summary(List<JudgedRun> runs) {
        StringBuilder words = new StringBuilder("Lap times, run after run.");
        for (int i = 0; i < runs.size(); i++) {
            Stint stint = runs.get(i).stint();
            int odd = stint.laps().size() - stint.cleanLaps();
            words.append(" Run %d, %s: %s"
                    .formatted(
                            i + 1,
                            runs.get(i).side().code(),
                            Figures.laps(stint.laps().size())));
            stint.paceS().ifPresent(pace -> words.append(", pace ").append(Figures.seconds(pace)));
            words.append(odd == 0 ? "." : ", %d left out.".formatted(odd));
        }
        return words.toString();
    }

    /**
     * One lap.
     *
     * @param x place along the page
     * @param y place up the page
     * @param shape its shape
     * @param side before or after
     * @param title its number, time and kind
     * @param label its time, if it lies beyond the rim; else empty
     * @param labelY place of the label up the page
     */
    public record Dot(String x, String y, Symbol shape, String side, String title, String label, String labelY) {
        private static Dot of(int run, JudgedRun judged, Lap lap, double x, Scale times, int height) {
            boolean above = lap.seconds() > times.high();
            boolean below = lap.seconds() < times.low();
            double y = above ? times.end() - 8 : below ? height - 8 : times.at(lap.seconds());
            return new Dot(
                    Scale.percent(x),
                    Scale.pixels(y),
                    Symbol.of(judged.side(), lap.kind()),
                    judged.side().code(),
                    "Run %d, lap %d: %s, %s"
                            .formatted(run, lap.number(), Figures.seconds(lap.seconds()), LapInWords.kind(lap.kind())),
                    above || below ? Figures.fixed(lap.seconds(), 2) : "",
                    Scale.pixels(above ? y - 7 : y - 6));
        }
    }

    /**
     * The stretch of one run.
     *
     * @param x where it begins
     * @param width how far it goes
     * @param middle its middle
     * @param label its number and side
     * @param side before or after
     * @param paceY its pace; empty without one
     * @param heldY where the band between pace and held lap begins; empty without one
     * @param heldHeight height of that band, px
     */
    public record RunStretch(
            String x,
            String width,
            String middle,
            String label,
            String side,
            String paceY,
            String heldY,
            String heldHeight) {
        private static RunStretch of(String label, JudgedRun run, double from, double to, Scale times) {
            Stint stint = run.stint();
            double pace = times.clamped(stint.paceS().orElse(times.low()));
            double held = times.clamped(stint.heldS().orElse(times.low()));
            boolean hasBand = stint.paceS().isPresent() && stint.heldS().isPresent() && held <= pace;
            return new RunStretch(
                    Scale.percent(from),
                    Scale.percent(to - from),
                    Scale.percent((from + to) / 2),
                    label,
                    run.side().code(),
                    stint.paceS().isPresent() ? Scale.pixels(pace) : "",
                    hasBand ? Scale.pixels(held) : "",
                    Scale.pixels(Math.max(0, pace - held)));
        }

        /** Where it ends. */
        public String end() {
            double from = Double.parseDouble(x.replace("%", ""));
            return Scale.percent(from + Double.parseDouble(width.replace("%", "")));
        }
    }

    /**
     * A line of equal lap time.
     *
     * @param y place up the page
     * @param label the time
     */
    public record Tick(String y, String label) {
        private static List<Tick> of(Scale times, int count) {
            int decimals = Scale.decimals(times.step(count));
            return times.ticks(count).stream()
                    .map(value -> new Tick(Scale.pixels(times.at(value)), Figures.fixed(value, decimals)))
                    .toList();
        }
    }
}
