package org.lapwright.core.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.lapwright.core.units.Interval;

/** What holds for any computation. */
class DoubtLawTest {
    @Property(tries = 200)
    void aStraightLineIsExact(
            @ForAll @DoubleRange(min = -50, max = 50) double slope,
            @ForAll @DoubleRange(min = -50, max = 50) double other,
            @ForAll @DoubleRange(min = 0, max = 9) double u,
            @ForAll @DoubleRange(min = -0.99, max = 0.99) double r) {
        LinearDoubt sum = new LinearPropagation(
                        List.of(Input.of(3, u), Input.of(-2, 1)), new double[][] {{1, r}, {r, 1}})
                .through(x -> slope * x[0] + other * x[1]);
        double variance = slope * slope * u * u + other * other + 2 * r * slope * other * u;
        assertThat(sum.standardUncertainty()).isCloseTo(Math.sqrt(Math.max(0, variance)), within(1e-6));
        assertThat(sum.parts().get(0).sensitivity()).isCloseTo(slope, within(1e-6));
    }

    /** Fully correlated inputs cancel: the difference of a number with itself is sure. */
    @Test
    void aDifferenceOfOneThingIsSure() {
        LinearDoubt difference = new LinearPropagation(
                        List.of(Input.of(3, 1), Input.of(3, 1)), new double[][] {{1, 1}, {1, 1}})
                .through(x -> x[0] - x[1]);
        assertThat(difference.standardUncertainty()).isZero();
        assertThat(difference.interval(0.9)).isEqualTo(new Interval(0, 0));
    }

    /** At a kink the slope is the mean over the doubt; at an edge it is that of the side that is there. */
    @Test
    void kinksAndEdges() {
        LinearPropagation doubt = new LinearPropagation(List.of(Input.of(1, 0.5)));
        assertThat(doubt.through(x -> Math.max(1, x[0])).parts().get(0).sensitivity())
                .isCloseTo(0.5, within(1e-12));
        assertThat(doubt.through(x -> x[0] > 1 ? Double.NaN : 3 * x[0])
                        .parts()
                        .get(0)
                        .sensitivity())
                .isCloseTo(3, within(1e-12));
        LinearDoubt lost = doubt.through(x -> x[0] == 1 ? 7 : Double.POSITIVE_INFINITY);
        assertThat(lost.standardUncertainty()).isInfinite();
        assertThat(lost.interval(0.9).isBounded()).isFalse();
    }

    @Test
    void badInputIsRefused() {
        assertThatThrownBy(() -> Input.of(Double.NaN, 1)).hasMessageContaining("finite");
        assertThatThrownBy(() -> Input.of(1, -1)).hasMessageContaining("0 or a positive");
        List<Input> three = List.of(Input.of(0, 1), Input.of(0, 1), Input.of(0, 1));
        assertThatThrownBy(() -> new LinearPropagation(three, new double[][] {{1}}))
                .hasMessageContaining("give 3 of 3");
        double[][] impossible = {{1, 0.9, -0.9}, {0.9, 1, 0.9}, {-0.9, 0.9, 1}};
        assertThatThrownBy(() -> new LinearPropagation(three, impossible)).hasMessageContaining("hold together");
        assertThatThrownBy(() -> new LinearPropagation(three).through(x -> Double.NaN))
                .hasMessageContaining("best estimates");
        assertThatThrownBy(() -> SampledDoubt.of(new double[] {1, Double.NaN})).hasMessageContaining("at least two");
    }

    @Test
    void oneSeedOneAnswer() {
        List<InputDistribution> inputs = List.of(InputDistribution.Normal.of(0, 1));
        Interval first =
                MonteCarlo.run(x -> x[0], inputs, 500, new SplittableRandom(3)).interval(0.9);
        assertThat(MonteCarlo.run(x -> x[0], inputs, 500, new SplittableRandom(3))
                        .interval(0.9))
                .isEqualTo(first);
        assertThat(MonteCarlo.run(x -> x[0], inputs, 500, new SplittableRandom(4))
                        .interval(0.9))
                .isNotEqualTo(first);
    }

    /** Draws stay in the range and follow the cut normal distribution, wide and narrow; the ends hold at the stated error. */
    @Test
    void cutNormalDrawsFollowTheirDistribution() {
        for (double deviation : new double[] {0.3, 1.01, 40}) {
            InputDistribution cut = new InputDistribution.Normal(0.2, deviation, 0, 1);
            SampledDoubt drawn = MonteCarlo.run(x -> x[0], List.of(cut), 100_000, new SplittableRandom(8));
            NormalDistribution whole = new NormalDistribution(0.2, deviation);
            double from = whole.cumulativeProbability(0);
            double all = whole.cumulativeProbability(1) - from;
            double error = drawn.endError(0.9);
            Interval interval = drawn.interval(0.9);
            assertThat(interval.low())
                    .isCloseTo(whole.inverseCumulativeProbability(from + 0.05 * all), within(4 * error));
            assertThat(interval.high())
                    .isCloseTo(whole.inverseCumulativeProbability(from + 0.95 * all), within(4 * error));
            assertThat(error).isBetween(1e-5, 0.01);
        }
    }

    /** Against Hipparchus' t distribution. */
    @Test
    void scaledTDrawsFollowTheirDistribution() {
        SampledDoubt drawn = MonteCarlo.run(
                x -> x[0], List.of(new InputDistribution.ScaledT(5, 2, 4.5)), 200_000, new SplittableRandom(9));
        double end = 2 * new TDistribution(4.5).inverseCumulativeProbability(0.95);
        assertThat(drawn.interval(0.9).high()).isCloseTo(5 + end, within(4 * drawn.endError(0.9)));
        assertThat(drawn.interval(0.9).low()).isCloseTo(5 - end, within(4 * drawn.endError(0.9)));
    }

    /** Ranks of JCGM 101 7.7.2 for 1 to 100 at 90 %: q = 90, r = 5. */
    @Test
    void intervalByRanks() {
        double[] values = IntStream.rangeClosed(1, 100).asDoubleStream().toArray();
        assertThat(SampledDoubt.of(values).interval(0.9)).isEqualTo(new Interval(5, 95));
        assertThat(SampledDoubt.of(new double[] {2, 1}).interval(0.9)).isEqualTo(new Interval(1, 2));
    }

    @Test
    void lostDrawsAreCounted() {
        SampledDoubt drawn = SampledDoubt.of(new double[] {1, Double.POSITIVE_INFINITY, 2, Double.NaN, 3});
        assertThat(drawn.count()).isEqualTo(3);
        assertThat(drawn.lost()).isEqualTo(2);
        assertThat(drawn.mean()).isEqualTo(2);
    }
}
