package org.lapwright.app.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.chart.IntervalChart;
import org.lapwright.app.web.chart.LadderChart;
import org.lapwright.core.trial.ladder.LadderEntry;

/**
 * The cars on one track.
 *
 * @param shell around it
 * @param tracks the tracks to choose from
 * @param track the one shown; empty if there is none
 * @param lanes of it
 * @param rows the cars, fastest first
 * @param ticks round paces of the scale
 * @param example what there is of the example garage
 */
public record LadderPage(
        Shell shell,
        List<String> tracks,
        String track,
        LaneView lanes,
        List<Row> rows,
        List<IntervalChart.Mark> ticks,
        ExampleView example) {
    /** Copies the lists. */
    public LadderPage {
        tracks = List.copyOf(tracks);
        rows = List.copyOf(rows);
        ticks = List.copyOf(ticks);
    }

    /** The rows of a ladder. */
    public static List<Row> rows(
            List<LadderEntry> entries, List<LadderEntry> earlier, String then, LadderChart chart, boolean example) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            LadderEntry entry = entries.get(i);
            String next = i + 1 < entries.size() ? entries.get(i + 1).car() : "";
            boolean shared = entries.stream()
                            .filter(other -> other.place() == entry.place())
                            .count()
                    > 1;
            rows.add(new Row(
                    entry.place() + (shared ? " =" : ""),
                    shared,
                    entry.car(),
                    example,
                    Figures.seconds(entry.paceS()),
                    "somewhere between %s and %s s"
                            .formatted(
                                    Figures.fixed(entry.intervalS().low(), 3),
                                    Figures.fixed(entry.intervalS().high(), 3)),
                    Figures.laps(entry.laps()),
                    next.isEmpty() ? "" : ahead(entry.chanceAheadOfNext(), next),
                    earlier.isEmpty() ? "" : since(entry, earlier, then),
                    chart.bars().get(i)));
        }
        return rows;
    }

    /** Whether two cars share a place. */
    public boolean hasTies() {
        return rows.stream().anyMatch(Row::shared);
    }

    /** The pace is in the set-up of then and in that of now; only a difference beyond both intervals is called one. */
    private static String since(LadderEntry entry, List<LadderEntry> earlier, String then) {
        Optional<LadderEntry> was = earlier.stream()
                .filter(other -> other.car().equals(entry.car()))
                .findFirst();
        if (was.isEmpty()) {
            return "new since " + then;
        }
        LadderEntry before = was.get();
        int up = before.place() - entry.place();
        String moved = up == 0
                ? "same place as on " + then
                : "%s %s since %s".formatted(up > 0 ? "up" : "down", Figures.count(Math.abs(up)), then);
        double less = before.paceS() - entry.paceS();
        boolean apart = entry.intervalS().high() < before.intervalS().low()
                || entry.intervalS().low() > before.intervalS().high();
        return apart
                ? "%s, %s s %s".formatted(moved, Figures.fixed(Math.abs(less), 3), less > 0 ? "faster" : "slower")
                : moved;
    }

    private static String ahead(double chance, String next) {
        long percent = Math.round(100 * chance);
        if (percent <= 50) {
            return "as likely ahead of %s as not".formatted(next);
        }
        return "%s %% chance to be ahead of %s".formatted(percent > 99 ? "over 99" : percent, next);
    }

    /**
     * One car.
     *
     * @param place its place, marked when shared
     * @param shared whether others share it
     * @param car its name
     * @param example whether it belongs to the example garage
     * @param pace what to expect of it
     * @param interval where that lies
     * @param laps how many laps are behind it
     * @param ahead chance to be ahead of the next; empty for the last
     * @param since what has changed since a month ago; empty when there was no ladder then
     * @param bar its interval drawn
     */
    public record Row(
            String place,
            boolean shared,
            String car,
            boolean example,
            String pace,
            String interval,
            String laps,
            String ahead,
            String since,
            LadderChart.Bar bar) {}
}
