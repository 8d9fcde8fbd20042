package org.lapwright.app.web.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.lapwright.core.units.Interval;

/** What holds for every drawing. */
class ChartsLawTest {
    @Property(tries = 500)
    void thereAreEnoughTicksAndNotTooMany(
            @ForAll @DoubleRange(min = -1000, max = 1000) double low,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double length,
            @ForAll @IntRange(min = 2, max = 8) int wanted) {
        Scale scale = new Scale(low, low + length, 0, 100);
        assertThat(scale.ticks(wanted))
                .hasSizeBetween(1, 2 * wanted + 1)
                .isSorted()
                .allSatisfy(tick -> assertThat(scale.at(tick)).isBetween(-1e-6, 100 + 1e-6));
        double step = scale.step(wanted);
        double lead = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
        assertThat(lead)
                .satisfiesAnyOf(
                        x -> assertThat(x).isCloseTo(1, within(1e-6)),
                        x -> assertThat(x).isCloseTo(2, within(1e-6)),
                        x -> assertThat(x).isCloseTo(5, within(1e-6)));
    }

    @Property(tries = 300)
    void nothingIsEverDrawnOutside(
            @ForAll @DoubleRange(min = -50, max = 50) double estimate,
            @ForAll @DoubleRange(min = 0, max = 100) double below,
            @ForAll @DoubleRange(min = 0, max = 100) double above,
            @ForAll @DoubleRange(min = 0, max = 1) double margin) {
        IntervalChart chart =
                IntervalChart.ofDifference(estimate, new Interval(estimate - below, estimate + above), margin);
        for (String drawn : List.of(chart.from(), chart.estimate(), chart.to(), chart.zero())) {
            assertThat(place(drawn)).isBetween(0.0, 100.0);
        }
        assertThat(chart.fineTicks()).hasSizeLessThanOrEqualTo(81);
        assertThat(chart.ticks()).hasSizeBetween(1, 9);
    }

    private static double place(String text) {
        return Double.parseDouble(text.replace("%", ""));
    }
}
