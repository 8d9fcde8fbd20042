package org.lapwright.core.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.lapwright.core.units.Interval;

/** Two samples: agreement with the definitions, symmetries, edges. */
class TwoSampleLawTest {
    private static double[] sample(Random random, int n) {
        boolean ticks = random.nextBoolean();
        return random.doubles(n, 6, 8)
                .map(v -> ticks ? Math.rint(10 * v) / 10 : v)
                .toArray();
    }

    @Property(tries = 200)
    void shiftIsTheMedianDifference(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 70) int m, @ForAll @IntRange(min = 1, max = 30) int n) {
        Random random = new Random(seed);
        double[] a = sample(random, m);
        double[] b = sample(random, n);
        double[] differences = Arrays.stream(b)
                .flatMap(to -> Arrays.stream(a).map(from -> to - from))
                .sorted()
                .toArray();
        ShiftEstimate estimate = RankShift.estimate(a, b, 0.95);
        assertThat(estimate.shift()).isCloseTo(Samples.medianOfSorted(differences), within(1e-15));
        assertThat(Arrays.binarySearch(differences, estimate.interval().low())).isNotNegative();
        assertThat(Arrays.binarySearch(differences, estimate.interval().high())).isNotNegative();
        assertThat(estimate.interval().contains(estimate.shift())).isTrue();
        ShiftEstimate back = RankShift.estimate(b, a, 0.95);
        assertThat(back.shift()).isEqualTo(-estimate.shift());
        assertThat(back.interval().low()).isEqualTo(-estimate.interval().high());
        assertThat(back.coverage()).isCloseTo(estimate.coverage(), within(1e-12));
    }

    /** Hollander, Wolfe and Chicken 2014, section 4.1: with two values a side U = 0 has probability 1/6. */
    @Test
    void tooFewValuesForTheLevelAreSaidSo() {
        ShiftEstimate estimate = RankShift.estimate(new double[] {1, 2}, new double[] {4, 7}, 0.95);
        assertThat(estimate.coverage()).isCloseTo(1 - 2.0 / 6, within(1e-12));
        assertThat(estimate.interval()).isEqualTo(new Interval(2, 6));
    }

    /** The normal approximation takes over at 51 values a side; there both agree. */
    @Test
    void exactAndNormalIntervalsMeet() {
        Random random = new Random(7);
        double[] a = random.doubles(50).toArray();
        double[] b = random.doubles(50).toArray();
        ShiftEstimate exact = RankShift.estimate(a, b, 0.95);
        double[] more = Arrays.copyOf(b, 51);
        more[50] = exact.shift() + 0.5;
        ShiftEstimate normal = RankShift.estimate(a, more, 0.95);
        assertThat(normal.interval().low()).isCloseTo(exact.interval().low(), within(0.03));
        assertThat(normal.interval().high()).isCloseTo(exact.interval().high(), within(0.03));
        assertThat(normal.coverage()).isBetween(0.95, 0.952);
    }

    @Test
    void groupsWithoutScatterGiveNumbers() {
        OneWayAnova flat = OneWayAnova.of(List.of(new double[] {7, 7}, new double[] {7, 7, 7}));
        assertThat(flat.f()).isZero();
        assertThat(flat.p()).isEqualTo(1);
        assertThat(flat.rSquared()).isZero();
        OneWayAnova apart = OneWayAnova.of(List.of(new double[] {7, 7}, new double[] {8, 8}));
        assertThat(apart.f()).isInfinite();
        assertThat(apart.p()).isZero();
        ScaleTest.ChiSquared fligner = ScaleTest.flignerKilleen(List.of(new double[] {7, 7}, new double[] {8, 8}));
        assertThat(fligner.statistic()).isZero();
        assertThat(fligner.p()).isEqualTo(1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OneWayAnova.of(List.of(new double[] {7}, new double[] {8})))
                .withMessage("2 values in 2 groups; more values than groups are needed");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ScaleTest.brownForsythe(List.of(new double[] {7, 8})))
                .withMessage("1 groups; at least two are needed");
    }

    @Property(tries = 150)
    void ratesAreComparedAlikeFromBothSides(
            @ForAll @IntRange(min = 0, max = 400) int trialsA,
            @ForAll @IntRange(min = 0, max = 400) int trialsB,
            @ForAll long seed) {
        Random random = new Random(seed);
        Proportion a = new Proportion(random.nextInt(trialsA + 1), trialsA);
        Proportion b = new Proportion(random.nextInt(trialsB + 1), trialsB);
        assertThat(a.chanceHigherThan(b) + b.chanceHigherThan(a)).isCloseTo(1, within(1e-7));
        assertThat(a.fisherExact(b)).isCloseTo(b.fisherExact(a), within(1e-9)).isBetween(0.0, 1.0);
        for (Interval interval : List.of(a.wilson(0.95), a.jeffreys(0.95))) {
            assertThat(interval.low()).isBetween(0.0, 1.0);
            assertThat(interval.high()).isBetween(interval.low(), 1.0);
        }
    }

    @Test
    void ratesWithoutTrials() {
        Proportion none = new Proportion(0, 0);
        assertThat(none.wilson(0.95)).isEqualTo(new Interval(0, 1));
        assertThat(none.fisherExact(none)).isEqualTo(1);
        assertThat(none.chanceHigherThan(none)).isCloseTo(0.5, within(1e-6));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Proportion(4, 3))
                .withMessage("count is 4 of 3; it must be from 0 to the number of trials");
    }
}
