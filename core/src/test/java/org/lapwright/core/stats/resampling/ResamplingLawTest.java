package org.lapwright.core.stats.resampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.lapwright.core.stats.RobustScale;

/** Quick redraws against plain ones, seeds, symmetry, coverage, edges. */
class ResamplingLawTest {
    private static double[][] runs(Random random, int runs, double sigma, boolean ticks) {
        double[][] values = new double[runs][];
        for (int r = 0; r < runs; r++) {
            values[r] = new double[1 + random.nextInt(12)];
            for (int i = 0; i < values[r].length; i++) {
                double value = 7 + sigma * random.nextGaussian();
                values[r][i] = ticks ? Math.rint(100 * value) / 100 : value;
            }
        }
        return values;
    }

    @Property(tries = 150)
    void redrawnScaleIsTheScaleOfTheRedrawnValues(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int count, @ForAll boolean ticks) {
        RunSample sample = RunSample.of(runs(new Random(seed), count, 0.1, ticks));
        RedrawnQn quick = new RedrawnQn(sample);
        int[] times = new int[sample.size()];
        SplittableRandom one = new SplittableRandom(seed);
        SplittableRandom other = new SplittableRandom(seed);
        for (int k = 0; k < 20; k++) {
            int drawn = sample.redraw(times, other);
            assertThat(Arrays.stream(times).sum()).isEqualTo(drawn);
            double[] values = sample.expand(times, drawn);
            assertThat(values).isSorted();
            double expected = drawn < 2 ? 0 : RobustScale.qn(values);
            assertThat(quick.redraw(one)).isEqualTo(expected);
        }
    }

    @Test
    void oneSeedGivesOneAnswerAndSwappedSidesTheReciprocal() {
        Random random = new Random(3);
        RunSample before = RunSample.of(runs(random, 6, 0.1, false));
        RunSample after = RunSample.of(runs(random, 6, 0.1, false));
        RunBootstrap bootstrap = new RunBootstrap(999, 0.95);
        RunBootstrap.ScaleRatio ratio = bootstrap.scaleRatio(before, after, 1e-4, new SplittableRandom(9));
        assertThat(bootstrap.scaleRatio(before, after, 1e-4, new SplittableRandom(9)))
                .isEqualTo(ratio);
        RunBootstrap.ScaleRatio swapped = bootstrap.scaleRatio(after, before, 1e-4, new SplittableRandom(9));
        assertThat(swapped.ratio() * ratio.ratio()).isCloseTo(1, within(1e-12));
        assertThat(swapped.interval().low() * ratio.interval().high()).isCloseTo(1, within(0.25));
    }

    /** Nominal 90 %, true ratio 2, 8 runs of 8 values a side: covered at least so often, see the class. */
    @Test
    void theIntervalOfTheScaleRatioCovers() {
        Random random = new Random(8);
        RunBootstrap bootstrap = new RunBootstrap(199, 0.9);
        int covered = 0;
        int sessions = 300;
        for (int s = 0; s < sessions; s++) {
            double[][] before = new double[8][8];
            double[][] after = new double[8][8];
            for (int r = 0; r < 8; r++) {
                Arrays.setAll(before[r], i -> random.nextGaussian());
                Arrays.setAll(after[r], i -> 2 * random.nextGaussian());
            }
            covered += bootstrap
                            .scaleRatio(RunSample.of(before), RunSample.of(after), 1e-9, new SplittableRandom(s))
                            .interval()
                            .contains(2)
                    ? 1
                    : 0;
        }
        assertThat((double) covered / sessions).isBetween(0.90, 0.99);
    }

    @Test
    void equalValuesCountAsTheLeastScale() {
        RunSample flat = RunSample.of(new double[] {7, 7, 7}, new double[] {7, 7});
        RunBootstrap.ScaleRatio ratio =
                new RunBootstrap(99, 0.95).scaleRatio(flat, flat, 0.003, new SplittableRandom(1));
        assertThat(ratio.ratio()).isEqualTo(1);
        assertThat(ratio.interval().low()).isCloseTo(1, within(1e-15));
        assertThat(ratio.interval().high()).isCloseTo(1, within(1e-15));
    }

    @Test
    void manyRunsAreDrawnAtRandomAndAgreeWithTheNormalTail() {
        Random random = new Random(4);
        double[] a = random.doubles(40).toArray();
        double[] b = random.doubles(40).map(v -> v + 0.15).toArray();
        RunPermutation test = RunPermutation.of(a, b, new SplittableRandom(5));
        assertThat(test.labellings()).isEqualTo(RunPermutation.ALL_UP_TO);
        double p = new org.hipparchus.stat.inference.TTest().homoscedasticTTest(a, b);
        assertThat(test.twoSided()).isCloseTo(p, within(0.15 * p + 0.001));
        assertThat(test.leastTwoSided()).isPositive().isLessThan(1e-20);
    }

    @Test
    void swappingTheSidesMirrorsThePermutation() {
        double[] a = {7.2, 7.1, 7.3};
        double[] b = {7.0, 6.9, 7.05, 7.11};
        RunPermutation one = RunPermutation.of(a, b, new SplittableRandom(1));
        RunPermutation other = RunPermutation.of(b, a, new SplittableRandom(1));
        assertThat(one.labellings()).isEqualTo(35);
        assertThat(other.difference()).isCloseTo(-one.difference(), within(1e-14));
        assertThat(other.twoSided()).isEqualTo(one.twoSided());
        assertThat(one.leastTwoSided()).isCloseTo(1.0 / 35, within(1e-15));
    }

    @Test
    void badInputIsNamed() {
        assertThatIllegalArgumentException().isThrownBy(RunSample::of).withMessage("no runs; at least one is needed");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RunSample.of(new double[] {1}, new double[0]))
                .withMessage("run 2 has 0 values; at least 1 are needed");
        RunSample two = RunSample.of(new double[] {1, 2});
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RunBootstrap(9, 0.9).scaleRatio(two, two, 0, new SplittableRandom(1)))
                .withMessage("least scale is 0.0; it must be finite and above 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RunBootstrap(0, 0.9))
                .withMessageContaining("0 replicates");
    }
}
