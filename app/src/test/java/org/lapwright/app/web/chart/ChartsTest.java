package org.lapwright.app.web.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.trial.JudgedRun;
import org.lapwright.core.trial.Look;
import org.lapwright.core.trial.ladder.LadderEntry;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.units.Interval;

class ChartsTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    @Test
    void everyLapIsDrawnAndOddOnesStandOnTheRimWithTheirTime() {
        LapChart chart =
                LapChart.of(List.of(run(Side.BEFORE, 6.2, 6.3, -12.4, 6.25), run(Side.AFTER, 6.1, 6.15, -3.0, 6.12)));
        assertThat(chart.dots()).hasSize(8);
        assertThat(chart.dots())
                .extracting(LapChart.Dot::label)
                .containsExactly("", "", "12.40", "", "", "", "3.00", "");
        assertThat(chart.dots()).extracting(LapChart.Dot::shape).contains(Symbol.BEFORE, Symbol.AFTER, Symbol.OFF);
        assertThat(chart.shapes()).containsExactlyInAnyOrder(Symbol.BEFORE, Symbol.AFTER, Symbol.OFF);
        assertThat(chart.runs()).extracting(LapChart.RunStretch::label).containsExactly("1 · before", "2 · after");
        assertThat(chart.summary())
                .isEqualTo("Lap times, run after run. Run 1, before: 4 laps, pace 6.250 s, 1 left out. Run 2, after: 4 "
                        + "laps, pace 6.120 s, 1 left out.");
        assertThat(chart.dots()).allSatisfy(dot -> assertThat(place(dot.x())).isBetween(0.0, 100.0));
        assertThat(chart.dots()).extracting(dot -> place(dot.x())).isSorted();
        assertThat(chart.dots()).allSatisfy(dot -> assertThat(place(dot.y())).isBetween(0.0, (double) chart.height()));
    }

    @Test
    void aSlowerLapStandsHigher() {
        LapChart chart = LapChart.of(List.of(run(Side.BEFORE, 6.2, 6.3)));
        assertThat(place(chart.dots().get(1).y()))
                .isLessThan(place(chart.dots().get(0).y()));
    }

    @Test
    void noLapsAndEqualLapsAreDrawnToo() {
        assertThat(LapChart.of(List.of()).dots()).isEmpty();
        assertThat(LapChart.of(List.of(run(Side.AFTER))).runs()).isEmpty();
        LapChart flat = LapChart.strip(List.of(run(Side.AFTER, 6.2, 6.2, 6.2)));
        assertThat(flat.dots()).extracting(LapChart.Dot::label).containsOnly("");
        LapChart odd = LapChart.of(List.of(run(Side.AFTER, -6.2, -12.4)));
        assertThat(odd.dots()).extracting(LapChart.Dot::label).containsOnly("");
    }

    @Test
    void theDifferenceLiesOnTheSideItsSignSays() {
        IntervalChart chart = IntervalChart.ofDifference(-0.07, new Interval(-0.12, -0.02), 0.02);
        assertThat(place(chart.from())).isLessThan(place(chart.estimate()));
        assertThat(place(chart.estimate())).isLessThan(place(chart.to()));
        assertThat(place(chart.to())).isLessThan(place(chart.zero()));
        assertThat(chart.zero()).isEqualTo("50%");
        assertThat(chart.openLow() || chart.openHigh()).isFalse();
        assertThat(place(chart.marginFrom()) + place(chart.marginWidth()) / 2)
                .as("the margin lies about zero")
                .isCloseTo(50, org.assertj.core.api.Assertions.within(0.02));
        assertThat(chart.ticks())
                .extracting(IntervalChart.Mark::label)
                .containsExactly("−0.15", "−0.10", "−0.05", "0.00", "+0.05", "+0.10", "+0.15");
        assertThat(chart.fineTicks()).as("a tick each hundredth").hasSizeGreaterThanOrEqualTo(25);
        assertThat(chart.summary())
                .isEqualTo("Difference after minus before: −0.070 s a lap, interval from −0.120 to −0.020.");
    }

    @Test
    void openEndsGetAnArrowAndNoMarginNoShade() {
        IntervalChart chart = IntervalChart.ofDifference(-0.07, new Interval(-INFINITE, INFINITE), 0);
        assertThat(chart.openLow()).isTrue();
        assertThat(chart.openHigh()).isTrue();
        assertThat(chart.marginFrom()).isEmpty();
        assertThat(chart.summary()).contains("from −∞ to ∞");
    }

    @Test
    void halfAndDoubleLieEquallyFarFromOne() {
        IntervalChart chart = IntervalChart.ofRatio(1, new Interval(0.5, 2));
        assertThat(place(chart.from()) + place(chart.to()))
                .isCloseTo(100, org.assertj.core.api.Assertions.within(0.02));
        assertThat(chart.ticks()).extracting(IntervalChart.Mark::label).contains("×0.5", "×1", "×2");
        assertThat(IntervalChart.ofRatio(0, new Interval(0, INFINITE)).openHigh())
                .isTrue();
    }

    @Test
    void theIntervalClosesInLookByLook() {
        List<Look> looks = new ArrayList<>();
        looks.add(look(9, INFINITE));
        for (int lap = 10; lap <= 300; lap++) {
            looks.add(look(lap, 0.3 / Math.sqrt(lap)));
        }
        LooksChart chart = LooksChart.of(looks, 6.2, 0.02);
        assertThat(chart.bars()).hasSize(80);
        assertThat(chart.bars().get(79).crossed()).isFalse();
        assertThat(chart.bars()).allSatisfy(bar -> {
            assertThat(place(bar.highY())).isLessThanOrEqualTo(place(bar.estimateY()));
            assertThat(place(bar.lowY())).isBetween(0.0, (double) chart.height());
        });
        assertThat(chart.summary()).contains("After lap 10", "after lap 300");
        assertThat(chart.laps()).extracting(IntervalChart.Mark::label).contains("100", "200", "300");
    }

    @Test
    void theLadderHasOneScaleForAll() {
        LadderChart chart = LadderChart.of(List.of(
                new LadderEntry("Dunlin", 1, 20, 6.3, 6.3, new Interval(6.25, 6.35), 0.9),
                new LadderEntry("Curlew", 2, 2, 6.7, 6.7, new Interval(-INFINITE, INFINITE), 1)));
        assertThat(place(chart.bars().get(0).pace()))
                .isLessThan(place(chart.bars().get(1).pace()));
        assertThat(place(chart.bars().get(1).from())).isEqualTo(2);
        assertThat(place(chart.bars().get(1).to())).isEqualTo(98);
        assertThat(LadderChart.of(List.of()).bars()).isEmpty();
    }

    private static Look look(int lap, double halfWidth) {
        return new Look(lap, -0.004, halfWidth / 2.4, lap - 4.0, lap, lap / 300.0, 1, 2.4, halfWidth);
    }

    private static double place(String text) {
        return Double.parseDouble(text.replace("%", ""));
    }

    /** A run; negative times stand for laps that came off. */
    private static JudgedRun run(Side side, double... seconds) {
        List<Lap> laps = new ArrayList<>();
        double[] clean =
                java.util.Arrays.stream(seconds).filter(x -> x > 0).sorted().toArray();
        for (int i = 0; i < seconds.length; i++) {
            LapKind kind = seconds[i] > 0 ? LapKind.CLEAN : LapKind.OFF;
            laps.add(new Lap(new TimedLap(i + 1, Math.abs(seconds[i])), kind, kind, 6.2, 6.6, Optional.empty()));
        }
        OptionalDouble pace = clean.length > 0 ? OptionalDouble.of(clean[clean.length / 2]) : OptionalDouble.empty();
        OptionalDouble held = clean.length > 1 ? OptionalDouble.of(clean[clean.length - 1]) : OptionalDouble.empty();
        OptionalDouble none = OptionalDouble.empty();
        return new JudgedRun(
                side,
                new Stint(laps, clean.length, pace, none, none, none, held, Optional.empty(), none, none, none, none));
    }
}
