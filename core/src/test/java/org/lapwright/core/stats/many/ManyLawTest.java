package org.lapwright.core.stats.many;

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

/** What shrinkage, ladders and discoveries promise whatever the numbers. */
class ManyLawTest {
    private static ShrunkMeans random(long seed, int n, double scale, double shift) {
        Random random = new Random(seed);
        double[] y = random.doubles(n).map(v -> shift + scale * v).toArray();
        double[] se = random.doubles(n).map(v -> scale * (0.02 + 0.5 * v)).toArray();
        return ShrunkMeans.of(y, se);
    }

    @Property(tries = 200)
    void chancesAndRanksAddUp(@ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int n) {
        ShrunkMeans shrunk = random(seed, n, 1, 7);
        double ranks = 0;
        for (int i = 0; i < n; i++) {
            ranks += shrunk.expectedRank(i);
            assertThat(shrunk.weight(i)).isBetween(0.0, 1.0);
            for (int j = 0; j < n; j++) {
                assertThat(shrunk.chanceLower(i, j) + shrunk.chanceLower(j, i)).isCloseTo(1, within(1e-12));
            }
        }
        assertThat(ranks).isCloseTo(n * (n + 1) / 2.0, within(1e-9));
        List<Integer> listed = shrunk.groups(0.9).stream().flatMap(List::stream).toList();
        assertThat(listed).hasSize(n).doesNotHaveDuplicates();
        for (int k = 1; k < n; k++) {
            assertThat(shrunk.mean(listed.get(k))).isGreaterThanOrEqualTo(shrunk.mean(listed.get(k - 1)));
        }
    }

    @Property(tries = 100)
    void shiftAndScaleCarryOver(@ForAll long seed, @ForAll @IntRange(min = 2, max = 12) int n) {
        ShrunkMeans one = random(seed, n, 1, 0);
        ShrunkMeans other = random(seed, n, 3, 20);
        assertThat(other.tau2()).isCloseTo(9 * one.tau2(), within(1e-8));
        for (int i = 0; i < n; i++) {
            assertThat(other.mean(i)).isCloseTo(20 + 3 * one.mean(i), within(1e-8));
            assertThat(other.se(i)).isCloseTo(3 * one.se(i), within(1e-8));
        }
    }

    /** No other τ² has a greater restricted likelihood: the balanced case has it in closed form. */
    @Property(tries = 100)
    void equalPrecisionHasAClosedForm(@ForAll long seed, @ForAll @IntRange(min = 2, max = 12) int n) {
        double[] y = new Random(seed).doubles(n).toArray();
        double[] se = new double[n];
        Arrays.fill(se, 0.2);
        double mean = Arrays.stream(y).average().orElseThrow();
        double variance = Arrays.stream(y).map(v -> (v - mean) * (v - mean)).sum() / (n - 1);
        assertThat(ShrunkMeans.of(y, se).tau2()).isCloseTo(Math.max(0, variance - 0.04), within(1e-10));
    }

    @Test
    void edges() {
        ShrunkMeans one = ShrunkMeans.of(new double[] {7.1}, new double[] {0.02});
        assertThat(one.mean(0)).isEqualTo(7.1);
        assertThat(one.se(0)).isCloseTo(0.02, within(1e-15));
        assertThat(one.groups(0.9)).containsExactly(List.of(0));
        ShrunkMeans apart = ShrunkMeans.of(new double[] {9, 7, 8}, new double[] {0.01, 0.01, 0.01});
        assertThat(apart.groups(0.95)).containsExactly(List.of(1), List.of(2), List.of(0));
        assertThat(JamesStein.of(new double[] {7, 7, 7, 7}, 0.1).shrunk(8)).isEqualTo(7);
        assertThat(FalseDiscovery.adjusted(new double[0])).isEmpty();
        assertThat(FalseDiscovery.finished(new double[0], 0.1)).isEmpty();
        assertThat(FalseDiscovery.running(new double[] {700, 0}, 0.1)).containsExactly(0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShrunkMeans.of(new double[] {7}, new double[] {0}))
                .withMessage("standard error 1 is 0.0; it must be above 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FalseDiscovery.adjusted(new double[] {0.1, Double.NaN}))
                .withMessage("p-value 2 is NaN; it must be from 0 to 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> JamesStein.of(new double[] {7, 8, 9}, 1))
                .withMessage("means has 3 values; at least 4 are needed");
    }
}
