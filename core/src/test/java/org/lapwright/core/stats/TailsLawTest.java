package org.lapwright.core.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Tails and their inverses, near and far. */
class TailsLawTest {
    @Property(tries = 300)
    void normalQuantileUndoesTheTail(@ForAll @DoubleRange(min = -5, max = 37) double z) {
        // Below the middle the tail is close to 1 and a double cannot say more.
        double allowed = Math.max(1e-13, 1e-16 * Math.exp(z < 0 ? z * z / 2 : 0) * 3);
        assertThat(NormalTail.quantile(NormalTail.probability(z))).isCloseTo(z, within(allowed));
    }

    @Property(tries = 300)
    void studentQuantileUndoesTheTail(
            @ForAll @DoubleRange(min = 1, max = 500) double nu,
            @ForAll @DoubleRange(min = 0.31, max = 99) double decades) {
        double tail = Math.pow(10, -decades);
        double t = StudentTail.quantile(tail, nu);
        assertThat(StudentTail.probability(t, nu) / tail).isCloseTo(1, within(1e-11));
    }

    /** With two degrees of freedom the upper tail is (1 - t/√(2 + t²))/2 in closed form. */
    @Test
    void twoDegreesOfFreedomInClosedForm() {
        for (double t : new double[] {0, 0.5, 2, 10, 1000}) {
            double closed = 1 / (2 + t * t + t * Math.sqrt(2 + t * t));
            assertThat(StudentTail.probability(t, 2) / closed).isCloseTo(1, within(1e-12));
            assertThat(StudentTail.quantile(closed, 2)).isCloseTo(t, within(1e-12 * Math.max(1, t)));
        }
    }

    @Property(tries = 200)
    void normalEquivalentKeepsTheTailAndTheSign(
            @ForAll @DoubleRange(min = -30, max = 30) double t, @ForAll @DoubleRange(min = 1, max = 500) double nu) {
        double z = StudentTail.toNormal(t, nu);
        assertThat(Math.signum(z)).isIn(Math.signum(t), 0.0);
        assertThat(Math.abs(z)).isLessThanOrEqualTo(Math.abs(t) + 1e-12);
        assertThat(NormalTail.probability(z) / StudentTail.probability(t, nu)).isCloseTo(1, within(1e-10));
    }

    @Test
    void endsAndBadArguments() {
        assertThat(NormalTail.quantile(0)).isCloseTo(37.5, within(0.05));
        assertThat(NormalTail.quantile(1)).isCloseTo(-37.5, within(0.05));
        assertThat(NormalTail.quantile(0.5)).isZero();
        assertThat(NormalTail.probability(100)).isEqualTo(Double.MIN_NORMAL);
        assertThat(StudentTail.toNormal(Double.POSITIVE_INFINITY, 9)).isCloseTo(37.5, within(0.05));
        assertThat(StudentTail.quantile(0, 1)).isFinite();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NormalTail.quantile(Double.NaN))
                .withMessage("probability is NaN; it must be from 0 to 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StudentTail.quantile(0.1, 0))
                .withMessageContaining("degrees of freedom 0.0");
    }
}
