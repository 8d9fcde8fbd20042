package org.lapwright.app.web.chart;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.units.Interval;

/**
 * An estimate with its interval on a scale, against the value that stands for "no difference".
 *
 * @param estimate place of the estimate
 * @param from place of the interval's lower end
 * @param width length of the interval
 * @param to place of the interval's upper end
 * @param openLow whether the interval goes on beyond the left rim
 * @param openHigh whether it goes on beyond the right rim
 * @param zero place of no difference
 * @param marginFrom place where the margin begins; empty without one
 * @param marginWidth length of the margin
 * @param ticks round values
 * @param fineTicks places of the hundredths between them; empty where they would crowd
 * @param lowLabel what values on the left mean
 * @param highLabel what values on the right mean
 * @param unit of the scale
 * @param summary the drawing in words
 */
public record IntervalChart(
        String estimate,
        String from,
        String width,
        String to,
        boolean openLow,
        boolean openHigh,
        String zero,
        String marginFrom,
        String marginWidth,
        List<Mark> ticks,
        List<String> fineTicks,
        String lowLabel,
        String highLabel,
        String unit,
        String summary) {
    private static final double LEFT = 4;
    private static final double RIGHT = 96;
    private static final int MOST_HUNDREDTHS = 40;

    /** Copies the list. */
    public IntervalChart {
        ticks = List.copyOf(ticks);
        fineTicks = List.copyOf(fineTicks);
    }

    /**
     * After minus before, s a lap.
     *
     * @param seconds the estimate
     * @param interval its interval
     * @param margin the margin that does not matter, s a lap; 0 for none
     */
    public static IntervalChart ofDifference(double seconds, Interval interval, double margin) {
        double reach = 1.25 * farthest(seconds, interval, margin, 0.01);
        Scale scale = new Scale(-reach, reach, LEFT, RIGHT);
        int decimals = Scale.decimals(scale.step(5));
        List<Mark> ticks = scale.ticks(5).stream()
                .map(value -> new Mark(Scale.percent(scale.at(value)), Figures.signed(value, decimals)))
                .toList();
        return new IntervalChart(
                Scale.percent(scale.clamped(seconds)),
                Scale.percent(scale.clamped(interval.low())),
                Scale.percent(scale.clamped(interval.high()) - scale.clamped(interval.low())),
                Scale.percent(scale.clamped(interval.high())),
                !scale.contains(interval.low()),
                !scale.contains(interval.high()),
                Scale.percent(scale.at(0)),
                margin > 0 ? Scale.percent(scale.at(-margin)) : "",
                margin > 0 ? Scale.percent(scale.at(margin) - scale.at(-margin)) : "",
                ticks,
                hundredths(scale),
                "after is faster",
                "after is slower",
                "s a lap",
                "Difference after minus before: %s s a lap, interval from %s to %s."
                        .formatted(
                                Figures.signed(seconds, 3),
                                Figures.signed(interval.low(), 3),
                                Figures.signed(interval.high(), 3)));
    }

    /** Spread after over spread before, on a scale where half and double lie equally far from 1. */
    public static IntervalChart ofRatio(double ratio, Interval interval) {
        double low = Math.log(Math.max(1e-6, interval.low()));
        double high = Math.log(Math.max(1e-6, interval.high()));
        double estimate = Math.log(Math.max(1e-6, ratio));
        double reach = Math.min(Math.log(8), 1.25 * farthest(estimate, new Interval(low, high), 0, Math.log(1.5)));
        Scale scale = new Scale(-reach, reach, LEFT, RIGHT);
        List<Mark> ticks = DoubleStream.of(0.25, 0.5, 0.75, 1, 1.33, 2, 4)
                .filter(value -> scale.contains(Math.log(value)))
                .mapToObj(value ->
                        new Mark(Scale.percent(scale.at(Math.log(value))), "×" + Figures.significant(value, 3)))
                .toList();
        return new IntervalChart(
                Scale.percent(scale.clamped(estimate)),
                Scale.percent(scale.clamped(low)),
                Scale.percent(scale.clamped(high) - scale.clamped(low)),
                Scale.percent(scale.clamped(high)),
                !scale.contains(low),
                !scale.contains(high),
                Scale.percent(scale.at(0)),
                "",
                "",
                ticks,
                List.of(),
                "after is steadier",
                "after is wilder",
                "spread after ÷ before",
                "Spread after over before: %s, interval from %s to %s."
                        .formatted(
                                Figures.fixed(ratio, 2),
                                Figures.fixed(interval.low(), 2),
                                Figures.fixed(interval.high(), 2)));
    }

    private static List<String> hundredths(Scale scale) {
        long most = (long) Math.floor(scale.high() * 100);
        return most > MOST_HUNDREDTHS
                ? List.of()
                : LongStream.rangeClosed(-most, most)
                        .mapToObj(hundredth -> Scale.percent(scale.at(hundredth / 100.0)))
                        .toList();
    }

    private static double farthest(double estimate, Interval interval, double margin, double least) {
        return DoubleStream.of(estimate, interval.low(), interval.high(), margin, least)
                .map(Math::abs)
                .filter(Double::isFinite)
                .max()
                .orElse(1);
    }

    /**
     * A round value.
     *
     * @param x place along the page
     * @param label the value
     */
    public record Mark(String x, String label) {}
}
