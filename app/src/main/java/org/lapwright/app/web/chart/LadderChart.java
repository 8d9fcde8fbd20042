package org.lapwright.app.web.chart;

import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.trial.ladder.LadderEntry;
import org.lapwright.core.units.Interval;

/**
 * The intervals of all cars on one scale, so that what overlaps is seen to overlap.
 *
 * @param bars one a car, in the order given
 * @param ticks round paces
 */
public record LadderChart(List<Bar> bars, List<IntervalChart.Mark> ticks) {
    /** Copies the lists. */
    public LadderChart {
        bars = List.copyOf(bars);
        ticks = List.copyOf(ticks);
    }

    /** Draws the ladder. */
    public static LadderChart of(List<LadderEntry> entries) {
        double low = entries.stream().mapToDouble(LadderChart::lowest).min().orElse(0);
        double high = entries.stream().mapToDouble(LadderChart::highest).max().orElse(1);
        double room = Math.max(0.05 * (high - low), 0.01);
        Scale scale = new Scale(low - room, high + room, 2, 98);
        int decimals = Scale.decimals(scale.step(4));
        return new LadderChart(
                entries.stream().map(entry -> bar(entry, scale)).toList(),
                scale.ticks(4).stream()
                        .map(value ->
                                new IntervalChart.Mark(Scale.percent(scale.at(value)), Figures.fixed(value, decimals)))
                        .toList());
    }

    private static double lowest(LadderEntry entry) {
        return Double.isInfinite(entry.intervalS().low())
                ? entry.paceS()
                : entry.intervalS().low();
    }

    private static double highest(LadderEntry entry) {
        return Double.isInfinite(entry.intervalS().high())
                ? entry.paceS()
                : entry.intervalS().high();
    }

    private static Bar bar(LadderEntry entry, Scale scale) {
        Interval interval = entry.intervalS();
        return new Bar(
                Scale.percent(scale.at(entry.paceS())),
                Scale.percent(scale.clamped(interval.low())),
                Scale.percent(scale.clamped(interval.high())));
    }

    /**
     * One car.
     *
     * @param pace place of its pace
     * @param from place of its interval's lower end
     * @param to place of its interval's upper end
     */
    public record Bar(String pace, String from, String to) {}
}
