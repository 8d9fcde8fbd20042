package org.lapwright.core.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.stat.descriptive.rank.Percentile;

/** What holds for every sample: agreement with the definition, and what shifting, stretching and shuffling do. */
class RobustLawTest {
    /** Continuous values, values with many ties, and values over many orders of magnitude with both signs. */
    @Provide
    Arbitrary<double[]> samples() {
        Arbitrary<Double> laps = Arbitraries.doubles().between(4, 12).ofScale(9);
        Arbitrary<Double> ticks = Arbitraries.integers().between(-3, 6).map(k -> k * 0.01);
        Arbitrary<Double> wide = Arbitraries.doubles().between(-1e12, 1e12);
        Arbitrary<Double> tiny = Arbitraries.doubles().between(-1, 1).ofScale(9).map(v -> v * 1e-9);
        return Arbitraries.oneOf(laps, ticks, wide, Arbitraries.oneOf(wide, tiny, ticks))
                .array(double[].class)
                .ofMinSize(2)
                .ofMaxSize(60);
    }

    @Property(tries = 400)
    void hodgesLehmannIsTheMedianOfWalshAverages(@ForAll("samples") double[] x) {
        int n = x.length;
        double[] averages = new double[n * (n + 1) / 2];
        int count = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                averages[count++] = (x[i] + x[j]) / 2;
            }
        }
        Arrays.sort(averages);
        double expected = Samples.medianOfSorted(averages);
        assertThat(RobustLocation.hodgesLehmann(x)).isCloseTo(expected, within(Math.ulp(expected)));
    }

    @Property(tries = 400)
    void rawQnIsTheOrderStatisticOfAllDistances(@ForAll("samples") double[] x) {
        double[] sorted = Samples.sorted(x, 2, "x");
        double[] distances = distances(sorted);
        int h = x.length / 2 + 1;
        assertThat(RobustScale.rawQnOfSorted(sorted)).isEqualTo(distances[h * (h - 1) / 2 - 1]);
    }

    @Property(tries = 400)
    void snIsTheLowMedianOfHighMedians(@ForAll("samples") double[] x) {
        int n = x.length;
        double[] highMedians = new double[n];
        for (int i = 0; i < n; i++) {
            double from = x[i];
            double[] distances =
                    Arrays.stream(x).map(v -> Math.abs(v - from)).sorted().toArray();
            highMedians[i] = distances[n / 2];
        }
        Arrays.sort(highMedians);
        double raw = highMedians[(n + 1) / 2 - 1];
        double[] small = {.743, 1.851, .954, 1.351, .993, 1.198, 1.005, 1.131};
        double factor = n <= 9 ? small[n - 2] : n % 2 == 1 ? n / (n - 0.9) : 1;
        assertThat(RobustScale.sn(x)).isCloseTo(1.1926 * factor * raw, within(1e-14 * raw));
    }

    private static double[] distances(double[] sorted) {
        int n = sorted.length;
        double[] distances = new double[n * (n - 1) / 2];
        int count = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                distances[count++] = sorted[j] - sorted[i];
            }
        }
        Arrays.sort(distances);
        return distances;
    }

    @Property(tries = 200)
    void shiftingAndStretching(
            @ForAll("samples") double[] x,
            @ForAll @DoubleRange(min = -100, max = 100) double shift,
            @ForAll @DoubleRange(min = 0.01, max = 100) double stretch) {
        double largest = Arrays.stream(x).map(Math::abs).max().orElseThrow();
        double allowed = 1e-13 * (Math.abs(shift) + stretch * largest);
        double[] moved = Arrays.stream(x).map(v -> shift + stretch * v).toArray();
        assertThat(RobustLocation.hodgesLehmann(moved))
                .isCloseTo(shift + stretch * RobustLocation.hodgesLehmann(x), within(allowed));
        assertThat(RobustScale.qn(moved)).isCloseTo(stretch * RobustScale.qn(x), within(3 * allowed));
        assertThat(RobustScale.sn(moved)).isCloseTo(stretch * RobustScale.sn(x), within(3 * allowed));
        assertThat(RobustScale.mad(moved)).isCloseTo(stretch * RobustScale.mad(x), within(3 * allowed));
        assertThat(Quantile.type8(moved, 0.8)).isCloseTo(shift + stretch * Quantile.type8(x, 0.8), within(allowed));
    }

    @Property(tries = 200)
    void mirroring(@ForAll("samples") double[] x) {
        double[] mirrored = Arrays.stream(x).map(v -> -v).toArray();
        assertThat(RobustLocation.hodgesLehmann(mirrored)).isEqualTo(-RobustLocation.hodgesLehmann(x));
        assertThat(RobustScale.qn(mirrored)).isEqualTo(RobustScale.qn(x));
        assertThat(RobustScale.mad(mirrored)).isEqualTo(RobustScale.mad(x));
    }

    @Property(tries = 200)
    void orderDoesNotMatterAndTheSampleIsLeftAlone(@ForAll("samples") double[] x, @ForAll long seed) {
        double[] before = x.clone();
        double[] shuffled = x.clone();
        Random random = new Random(seed);
        for (int i = shuffled.length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            double swap = shuffled[i];
            shuffled[i] = shuffled[j];
            shuffled[j] = swap;
        }
        assertThat(RobustLocation.hodgesLehmann(shuffled)).isEqualTo(RobustLocation.hodgesLehmann(x));
        assertThat(RobustLocation.median(shuffled)).isEqualTo(RobustLocation.median(x));
        assertThat(RobustScale.qn(shuffled)).isEqualTo(RobustScale.qn(x));
        assertThat(RobustScale.sn(shuffled)).isEqualTo(RobustScale.sn(x));
        assertThat(RobustScale.mad(shuffled)).isEqualTo(RobustScale.mad(x));
        assertThat(Quantile.type7(shuffled, 0.8)).isEqualTo(Quantile.type7(x, 0.8));
        assertThat(x).isEqualTo(before);
    }

    @Property(tries = 200)
    void equalValuesHaveNoScatter(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        double[] x = new double[17];
        Arrays.fill(x, value);
        assertThat(RobustLocation.hodgesLehmann(x)).isEqualTo(value);
        assertThat(RobustScale.qn(x)).isZero();
        assertThat(RobustScale.sn(x)).isZero();
        assertThat(RobustScale.mad(x)).isZero();
        assertThat(Autocorrelation.lag1(x)).isZero();
    }

    /** Hipparchus has the interpolated quantiles too, but neither p = 0 nor a sorted sample without a copy. */
    @Property(tries = 200)
    void quantilesAgreeWithHipparchus(
            @ForAll("samples") double[] x, @ForAll @DoubleRange(min = 0.01, max = 1) double p) {
        double allowed = 1e-12 * Arrays.stream(x).map(Math::abs).max().orElseThrow();
        Percentile percentile = new Percentile();
        assertThat(Quantile.type7(x, p))
                .isCloseTo(
                        percentile
                                .withEstimationType(Percentile.EstimationType.R_7)
                                .evaluate(x, 100 * p),
                        within(allowed));
        assertThat(Quantile.type8(x, p))
                .isCloseTo(
                        percentile
                                .withEstimationType(Percentile.EstimationType.R_8)
                                .evaluate(x, 100 * p),
                        within(allowed));
    }

    @Property(tries = 40)
    void theLargeSampleMethodOfTheilSenAgreesWithAllPairs(@ForAll long seed) {
        Random random = new Random(seed);
        int n = 1001 + random.nextInt(40);
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = random.nextBoolean() ? i : random.nextInt(n);
            y[i] = 0.3 * x[i] + random.nextGaussian() * (random.nextInt(10) == 0 ? 1000 : 1);
        }
        double[] slopes = new double[n * (n - 1) / 2];
        int count = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (x[i] != x[j]) {
                    slopes[count++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        double lower = Selection.kth(slopes, count, (count - 1) / 2);
        double upper = Selection.kth(slopes, count, count / 2);
        assertThat(TheilSen.fit(x, y).orElseThrow().slope()).isBetween(lower - 1e-8, upper + 1e-8);
    }
}
