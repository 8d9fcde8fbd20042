package org.lapwright.core.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Edges: few values, equal values, many values, bad values. */
class RobustEstimatesTest {
    private static final double[] NONE = {};

    @Test
    void oneValueIsItsOwnLocationAndHasNoScale() {
        double[] one = {7.1};
        assertThat(RobustLocation.hodgesLehmann(one)).isEqualTo(7.1);
        assertThat(RobustLocation.median(one)).isEqualTo(7.1);
        assertThat(RobustScale.mad(one)).isZero();
        assertThat(Quantile.type8(one, 0.8)).isEqualTo(7.1);
        assertThat(Quantile.harrellDavis(one, 0.8)).isCloseTo(7.1, within(1e-14));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RobustScale.qn(one))
                .withMessage("sample has 1 values; at least 2 are needed");
    }

    @Test
    void badValuesAreNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RobustLocation.hodgesLehmann(NONE))
                .withMessage("sample has 0 values; at least 1 are needed");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RobustScale.qn(new double[] {7.1, Double.NaN}))
                .withMessage("value 2 of sample is NaN; it must be finite and at most 1.0E150 in magnitude");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Quantile.type7(new double[] {7.1}, 1.2))
                .withMessage("share is 1.2; it must be from 0 to 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Autocorrelation.lag1(new double[] {7.1}))
                .withMessageContaining("at least 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TheilSen.fit(new double[2], new double[3]))
                .withMessage("x has 2 values and y 3; they must be as many");
    }

    @Test
    void negativeZerosDoNotConfuseTheSearch() {
        assertThat(RobustLocation.hodgesLehmann(new double[] {-0.0, 0.0, -0.0, 0.0}))
                .isZero();
        assertThat(RobustLocation.hodgesLehmann(new double[] {-1, -0.0, 0.0, 1}))
                .isZero();
        assertThat(RobustScale.qn(new double[] {-0.0, 0.0, -0.0, 5})).isZero();
    }

    /** Sums of 100 000 values would be 5 000 000 000 pairs; the answer has to come without forming them. */
    @Test
    void manyValues() {
        Random random = new Random(5);
        double[] x = IntStream.range(0, 100_000)
                .mapToDouble(i -> 7 + 0.1 * random.nextGaussian())
                .toArray();
        assertThat(RobustLocation.hodgesLehmann(x)).isCloseTo(7, within(0.002));
        assertThat(RobustScale.qn(x)).isCloseTo(0.1, within(0.002));
        assertThat(RobustScale.sn(x)).isCloseTo(0.1, within(0.002));
        double[] index = IntStream.range(0, x.length).mapToDouble(i -> i).toArray();
        double[] drifting =
                IntStream.range(0, x.length).mapToDouble(i -> x[i] + 1e-5 * i).toArray();
        assertThat(TheilSen.fit(index, drifting).orElseThrow().slope()).isCloseTo(1e-5, within(5e-8));
    }

    @Test
    void theilSenIgnoresAThirdOfNonsenseAndPairsAtOnePlace() {
        double[] x = {0, 1, 1, 2, 3, 4, 5, 6};
        double[] y = {1, 3, 3, 5, 7, 9, 99, 13};
        TrendLine line = TheilSen.fit(x, y).orElseThrow();
        assertThat(line.slope()).isEqualTo(2);
        assertThat(line.intercept()).isEqualTo(1);
        assertThat(line.at(10)).isEqualTo(21);
        assertThat(TheilSen.fit(new double[] {2, 2}, new double[] {1, 3})).isEmpty();
    }

    @Test
    void aQuantileIntervalThatDoesNotFitIntoTheSampleIsAbsent() {
        double[] five = {1, 2, 3, 4, 5};
        assertThat(Quantile.interval(five, 0.8, 0.95)).isEmpty();
        assertThat(Quantile.interval(five, 0.5, 0.5)).isPresent();
    }

    /** Marriott and Pope 1954: the expectation of r is about φ - (1 + 4 φ)/n. */
    @Test
    void correctedAutocorrelationTakesTheBiasOut() {
        Random random = new Random(11);
        double phi = 0.3;
        double raw = 0;
        double corrected = 0;
        int samples = 4000;
        for (int s = 0; s < samples; s++) {
            double[] x = new double[30];
            double last = random.nextGaussian() / Math.sqrt(1 - phi * phi);
            for (int i = 0; i < x.length; i++) {
                last = phi * last + random.nextGaussian();
                x[i] = last;
            }
            raw += Autocorrelation.lag1(x) / samples;
            corrected += Autocorrelation.lag1Corrected(x) / samples;
        }
        assertThat(raw).isBetween(0.21, 0.24);
        assertThat(corrected).isCloseTo(phi, within(0.015));
    }

    @Test
    void huberRegressionSurvivesConstantAndCollinearData() {
        int n = 12;
        double[] ones = new double[n];
        Arrays.fill(ones, 1);
        double[] index = IntStream.range(0, n).mapToDouble(i -> i).toArray();
        double[] twice = IntStream.range(0, n).mapToDouble(i -> 3 - 2 * i).toArray();
        double[] constant = new double[n];
        Arrays.fill(constant, 0.1 + 0.2);
        HuberRegression huber = HuberRegression.of(2);
        HuberRegression.Work work = new HuberRegression.Work(n, 4);

        HuberFit flat = huber.fit(constant, new double[][] {ones, index}, n, work);
        assertThat(flat.scale()).isZero();
        assertThat(flat.converged()).isTrue();
        assertThat(flat.coefficient(0)).isCloseTo(0.3, within(1e-14));
        assertThat(flat.coefficient(1)).isCloseTo(0, within(1e-14));

        double[] noisy =
                IntStream.range(0, n).mapToDouble(i -> i + (i % 3) * 0.1).toArray();
        HuberFit collinear = huber.fit(noisy, new double[][] {ones, index, twice, new double[n]}, n, work);
        assertThat(collinear.rank()).isEqualTo(2);
        assertThat(collinear.estimable(2)).isFalse();
        assertThat(collinear.estimable(3)).isFalse();
        assertThat(collinear.coefficient(2)).isZero();
        HuberFit plain = huber.fit(noisy, new double[][] {ones, index}, n, work);
        assertThat(collinear.coefficient(1)).isCloseTo(plain.coefficient(1), within(1e-12));

        HuberFit single = huber.fit(noisy, new double[][] {ones, index}, 1, work);
        assertThat(single.rank()).isEqualTo(1);
        assertThat(single.scale()).isZero();
    }

    @Test
    void huberRegressionFromANearFitEndsAtTheSamePlaceInFewerSteps() {
        Random random = new Random(2);
        int n = 60;
        double[] ones = new double[n];
        Arrays.fill(ones, 1);
        double[] index = IntStream.range(0, n).mapToDouble(i -> i / 60.0).toArray();
        double[] y = IntStream.range(0, n)
                .mapToDouble(i -> 2 + 0.01 * random.nextGaussian() + (i % 9 == 0 ? 0.3 : 0))
                .toArray();
        double[][] columns = {ones, index};
        HuberRegression huber = HuberRegression.of(2);
        HuberRegression.Work work = new HuberRegression.Work(n, 2);
        HuberFit before = huber.fit(y, columns, n - 1, work);
        HuberFit cold = huber.fit(y, columns, n, work);
        HuberFit warm = huber.refit(before, y, columns, n, work);
        assertThat(warm.iterations()).isLessThan(cold.iterations());
        assertThat(warm.coefficients()).containsExactly(cold.coefficients(), within(1e-8));
        assertThat(cold.coefficient(0)).isCloseTo(2, within(0.01));
    }

    @Test
    void huberRegressionRefusesWhatDoesNotFit() {
        HuberRegression huber = HuberRegression.of(2);
        HuberRegression.Work work = new HuberRegression.Work(3, 1);
        double[] three = {1, 2, 3};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> huber.fit(new double[4], new double[][] {new double[4]}, 4, work))
                .withMessageContaining("the room is for 3 and 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> huber.fit(three, new double[][] {{1, Double.POSITIVE_INFINITY, 1}}, 3, work))
                .withMessageContaining("value 2 of column 1 is Infinity");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HuberRegression.of(Double.NaN))
                .withMessageContaining("tuning is NaN");
    }
}
