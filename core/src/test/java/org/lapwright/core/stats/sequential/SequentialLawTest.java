package org.lapwright.core.stats.sequential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.lapwright.core.stats.StudentTail;

/** What boundaries and evidence promise. */
class SequentialLawTest {
    /** A Brownian score watched 200 times up to twice the plan; the continuous promise is 5 %, discrete looks give less. */
    @Test
    void theBoundaryIsCrossedAsSeldomAsPromised() {
        GroupSequentialBoundary boundary = GroupSequentialBoundary.of(0.05);
        Random random = new Random(20);
        int paths = 20_000;
        int looks = 200;
        double step = 2.0 / looks;
        double[] bounds = new double[looks];
        for (int k = 0; k < looks; k++) {
            bounds[k] = boundary.z((k + 1) * step) * Math.sqrt((k + 1) * step);
        }
        int crossed = 0;
        for (int path = 0; path < paths; path++) {
            double score = 0;
            for (int k = 0; k < looks; k++) {
                score += random.nextGaussian() * Math.sqrt(step);
                if (Math.abs(score) >= bounds[k]) {
                    crossed++;
                    break;
                }
            }
        }
        assertThat((double) crossed / paths).isBetween(0.03, 0.05);
    }

    @Test
    void theBoundaryMeetsItselfAtTheEndOfThePlan() {
        GroupSequentialBoundary boundary = GroupSequentialBoundary.of(0.05);
        assertThat(boundary.z(1)).isEqualTo(boundary.c());
        assertThat(boundary.z(Math.nextUp(1.0))).isCloseTo(boundary.c(), within(1e-12));
        assertThat(boundary.z(0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(boundary.tail(0)).isPositive();
        assertThat(boundary.isCrossed(-2.4, 1)).isTrue();
        assertThat(boundary.isCrossed(2.3, 1)).isFalse();
    }

    @Property(tries = 300)
    void theIntervalLeavesZeroOutExactlyWhenTheBoundaryIsCrossed(
            @ForAll @DoubleRange(min = -8, max = 8) double t,
            @ForAll @DoubleRange(min = 0.05, max = 3) double fraction,
            @ForAll @DoubleRange(min = 5, max = 200) double nu) {
        GroupSequentialBoundary boundary = GroupSequentialBoundary.of(0.05);
        double z = StudentTail.toNormal(t, nu);
        RepeatedInterval interval = RepeatedInterval.of(boundary, fraction, t * 0.004, 0.004, nu);
        boolean excludesZero = interval.low() > 0 || interval.high() < 0;
        if (Math.abs(Math.abs(z) - boundary.z(fraction)) > 1e-9) {
            assertThat(excludesZero).isEqualTo(boundary.isCrossed(z, fraction));
        }
    }

    @Property(tries = 300)
    void evidenceAtTheEndOfTheConfidenceSequenceIsOneOverAlpha(
            @ForAll @DoubleRange(min = 0.1, max = 100) double s,
            @ForAll @DoubleRange(min = 30, max = 300) double nu,
            @ForAll @DoubleRange(min = 0.1, max = 10) double g) {
        TMixtureEvidence evidence = new TMixtureEvidence(g);
        double halfWidth = evidence.halfWidth(s, nu, 0.05);
        if (Double.isFinite(halfWidth)) {
            assertThat(evidence.logE(halfWidth, s, nu)).isCloseTo(Math.log(20), within(1e-8));
            assertThat(evidence.logE(-halfWidth, s, nu)).isCloseTo(Math.log(20), within(1e-8));
        }
    }

    @Test
    void extremesStayNumbers() {
        TMixtureEvidence evidence = new TMixtureEvidence(1);
        double k = 1 / (1 + 4.0);
        assertThat(evidence.logE(Double.POSITIVE_INFINITY, 4, 10))
                .isCloseTo(0.5 * Math.log(k) - 5.5 * Math.log(k), within(1e-12));
        RepeatedInterval first = RepeatedInterval.of(GroupSequentialBoundary.of(0.05), 0, 0.01, 0.002, 6);
        assertThat(first.halfWidth()).isFinite().isGreaterThan(1e6);
        RepeatedInterval exact = RepeatedInterval.of(GroupSequentialBoundary.of(0.05), 0, 0.01, 0, 6);
        assertThat(exact.halfWidth()).isZero();
    }

    @Test
    void badArgumentsAreNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GroupSequentialBoundary.of(0))
                .withMessage("α is 0.0; it must be from 1.0E-6 to 0.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GroupSequentialBoundary.of(0.05).z(Double.NaN))
                .withMessageContaining("information fraction is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TMixtureEvidence(1).logE(1, 0, 5))
                .withMessage("information is 0.0; it must be finite and above 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TMixtureEvidence(Double.NaN))
                .withMessageContaining("precision of the mixture is NaN");
    }
}
