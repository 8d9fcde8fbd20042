package org.lapwright.core.laps.pass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.lapwright.core.laps.pass.PassCounter.CountedLap;

final class PassCounterTest {
    private static final double HOLD_OFF_S = 0.5;
    private final PassCounter counter = new PassCounter(1, HOLD_OFF_S);

    private static Pass pass(String boot, long sequence, int lane, double s) {
        long ns = Math.round(s * 1e9);
        return new Pass("gate", boot, sequence, lane, 0, new PassStamp(PassClock.DEVICE, ns, 0, 0));
    }

    private void add(Pass... passes) {
        for (Pass pass : passes) {
            counter.add(pass);
        }
    }

    private List<Double> seconds() {
        return counter.laps().stream().map(CountedLap::seconds).toList();
    }

    @Test
    void aLapIsTheDifferenceOfTwoStamps() {
        add(pass("a", 0, 1, 10), pass("a", 1, 1, 16.25), pass("a", 2, 1, 22.5));
        assertThat(seconds()).containsExactly(6.25, 6.25);
    }

    @Test
    void anotherLaneOrASectionGateIsNoLap() {
        add(pass("a", 0, 1, 10), pass("a", 1, 2, 12), pass("a", 2, 1, 16));
        counter.add(new Pass("gate", "a", 3, 1, 4, new PassStamp(PassClock.DEVICE, 18_000_000_000L, 0, 0)));
        add(pass("a", 4, 1, 22));
        assertThat(seconds()).containsExactly(6.0, 6.0);
        assertThat(counter.laps()).noneMatch(CountedLap::passesLost);
    }

    @Test
    void aBounceARepeatAndAStepBackAddNothing() {
        add(pass("a", 0, 1, 10), pass("a", 1, 1, 10.2), pass("a", 2, 1, 16), pass("a", 2, 1, 16), pass("a", 3, 1, 12));
        add(pass("a", 4, 1, 22));
        assertThat(seconds()).containsExactly(6.0, 6.0);
        assertThat(counter.bounces()).isEqualTo(1);
        assertThat(counter.backwards()).isEqualTo(1);
    }

    @Test
    void noLapGoesOverARestartOfTheClock() {
        add(pass("a", 0, 1, 10), pass("b", 0, 1, 3), pass("b", 1, 1, 9));
        assertThat(seconds()).containsExactly(6.0);
    }

    /** Set back by an hour: one stray stamp may be a fault, two are a clock that was set. */
    @Test
    void aClockThatIsSetBackCostsTwoLaps() {
        add(
                pass("a", 0, 1, 4000),
                pass("a", 1, 1, 4006),
                pass("a", 2, 1, 412),
                pass("a", 3, 1, 418),
                pass("a", 4, 1, 424));
        assertThat(seconds()).containsExactly(6.0, 6.0);
        assertThat(counter.backwards()).isEqualTo(2);
    }

    @Test
    void aGapInTheCountIsMarked() {
        add(pass("a", 0, 1, 10), pass("a", 2, 1, 22), pass("a", 3, 1, 28));
        assertThat(counter.laps()).extracting(CountedLap::passesLost).containsExactly(true, false);
    }

    @Test
    void nobodyLeavesALapOpenForMoreThanAnHour() {
        add(pass("a", 0, 1, 0), pass("a", 1, 1, 4000), pass("a", 2, 1, 4006));
        assertThat(seconds()).containsExactly(6.0);
    }

    /** Passes of a random evening, some sent twice: the laps are those of the evening, however it was sent. */
    @Test
    void whatIsSentTwiceMakesNoLapTwice() {
        Random random = new Random(3);
        List<Pass> passes = new ArrayList<>();
        List<Double> expected = new ArrayList<>();
        double at = 0;
        for (int i = 0; i <= 500; i++) {
            passes.add(pass("a", i, 1, at));
            double lap = 5 + random.nextDouble();
            at += lap;
            expected.add(lap);
        }
        for (int i = 0; i < passes.size(); i++) {
            counter.add(passes.get(i));
            if (random.nextInt(3) == 0) {
                counter.add(passes.get(random.nextInt(i + 1)));
            }
        }
        assertThat(seconds()).hasSize(500);
        for (int i = 0; i < 500; i++) {
            assertThat(seconds().get(i)).isCloseTo(expected.get(i), within(2e-9));
        }
        assertThat(counter.laps()).noneMatch(CountedLap::passesLost);
    }

    private static Pass at(long sequence, int lane, int gate, double s) {
        return new Pass("gate", "a", sequence, lane, gate, new PassStamp(PassClock.DEVICE, Math.round(s * 1e9), 0, 0));
    }

    @Test
    void sectionGatesSplitTheLap() {
        add(at(0, 1, 0, 10), at(1, 1, 1, 12), at(2, 2, 2, 13), at(3, 1, 2, 14.5), at(4, 1, 0, 16));
        LapSplits splits = counter.lastLap().splits();
        assertThat(splits.lastGate()).isEqualTo(2);
        assertThat(List.of(splits.sectionS(1, 2), splits.sectionS(2, 2), splits.sectionS(3, 2)))
                .containsExactly(OptionalDouble.of(2), OptionalDouble.of(2.5), OptionalDouble.of(1.5));
    }

    /** A gate that sees the car twice, before its turn, or not at all. */
    @Test
    void whatASectionGateSeesOutOfTurnIsNoSplit() {
        add(at(0, 1, 1, 9), at(1, 1, 0, 10), at(2, 1, 2, 12), at(3, 1, 2, 12.3), at(4, 1, 1, 13), at(5, 1, 0, 16));
        LapSplits splits = counter.lastLap().splits();
        assertThat(splits.atS()).containsExactly(entry(2, 2.0));
        assertThat(splits.sectionS(1, 2)).isEmpty();
        assertThat(splits.sectionS(2, 2)).isEmpty();
        assertThat(splits.sectionS(3, 2)).hasValue(4);
        add(at(6, 1, 0, 22));
        assertThat(counter.lastLap().splits().atS()).isEmpty();
    }
}
