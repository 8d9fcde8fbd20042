package org.lapwright.core.track.rails;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.lapwright.core.track.Power;

/** The guided measurement of rails, against Ohm's law on a ring worked forwards, and its doubt against many simulated tests. */
final class RailTestReferenceTest {
    private static final double SOURCE = 0.6;
    private static final double RAIL = 0.08;
    private static final double LAP = 15;
    private static final double LOAD = 12;

    private static Power fedAt(double... taps) {
        List<Double> places = new ArrayList<>();
        for (double tap : taps) {
            places.add(tap);
        }
        return new Power(12, 0.5, 0.1, places, OptionalDouble.empty());
    }

    /** A place half-way round a ring fed once has two halves of the lap in parallel before it: a quarter of the lap. */
    private static RailTest.Load load(double noiseV, SplittableRandom chance) {
        double near = 12 / (SOURCE + LOAD);
        double far = 12 / (SOURCE + RAIL * LAP / 4 + LOAD);
        return new RailTest.Load(
                12 + noiseV * chance.nextGaussian(),
                near * LOAD + noiseV * chance.nextGaussian(),
                near,
                far * LOAD + noiseV * chance.nextGaussian(),
                far);
    }

    @Test
    void ohmsLawOnARing() {
        RailTest.Result result = new RailTest(List.of(load(0, new SplittableRandom(1))), 0.5).result(fedAt(0), LAP);
        assertThat(result.sourceOhm().value()).isCloseTo(SOURCE, within(1e-12));
        assertThat(result.railOhmPerM().value()).isCloseTo(RAIL, within(1e-12));
        assertThat(result.railOhmPerM().plusMinus()).isBetween(0.001, 0.01);
    }

    /** With 10 mV of scatter and three rounds, the truth lies within two deviations about as often as it should. */
    @Test
    void theDoubtIsThatOfManyTests() {
        SplittableRandom chance = new SplittableRandom(5);
        int inside = 0;
        int tests = 1000;
        for (int i = 0; i < tests; i++) {
            List<RailTest.Load> rounds = List.of(load(0.01, chance), load(0.01, chance), load(0.01, chance));
            RailTest.Result result = new RailTest(rounds, 0.5).result(fedAt(0), LAP);
            double off = Math.abs(result.railOhmPerM().value() - RAIL);
            inside += off <= 2 * result.railOhmPerM().plusMinus() ? 1 : 0;
        }
        assertThat(inside / (double) tests).isBetween(0.85, 0.98);
    }

    @Test
    void whatCannotBeIsSaid() {
        assertThatThrownBy(() -> new RailTest.Load(12, 12.5, 1, 11, 1)).hasMessageContaining("it must be less");
        assertThatThrownBy(() -> new RailTest(List.of(), 0.5)).hasMessageContaining("no reading is complete");
        RailTest swapped = new RailTest(List.of(new RailTest.Load(12, 11, 1, 11.5, 1)), 0.5);
        assertThatThrownBy(() -> swapped.result(fedAt(0), LAP)).hasMessageContaining("swapped");
        RailTest fed = new RailTest(List.of(new RailTest.Load(12, 11.5, 1, 11, 1)), 0.5);
        assertThatThrownBy(() -> fed.result(fedAt(0, 0.5), LAP)).hasMessageContaining("fed itself");
    }
}
