package org.lapwright.core.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against the closed moments of a normal distribution cut off on both sides (Johnson, Kotz and Balakrishnan, Continuous Univariate
 * Distributions, volume 1, 2nd edition, section 13.10.1; formula from memory).
 */
final class BeliefReferenceTest {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    @ParameterizedTest
    @CsvSource({"0.94, 0.04, 0.5, 1", "0, 0.15, 0, 20", "1.05, 0.12, 0.05, 5", "0.02, 0.008, 0, 0.5"})
    void momentsOfACutNormal(double middle, double deviation, double low, double high) {
        double a = (low - middle) / deviation;
        double b = (high - middle) / deviation;
        double inside = NORMAL.probability(a, b);
        double shift = (NORMAL.density(a) - NORMAL.density(b)) / inside;
        double squares = 1
                + ((Double.isInfinite(a) ? 0 : a * NORMAL.density(a)) - b * NORMAL.density(b)) / inside
                - shift * shift;
        Belief belief = new Belief(middle, deviation, low, high);
        assertThat(belief.mean()).isCloseTo(middle + deviation * shift, within(2e-3 * deviation));
        assertThat(belief.spread()).isCloseTo(deviation * Math.sqrt(squares), within(8e-3 * deviation));
    }

    @Test
    void quantilesAreThoseOfTheCutNormal() {
        Belief belief = new Belief(0.94, 0.04, 0.5, 1);
        double below = NORMAL.cumulativeProbability((0.5 - 0.94) / 0.04);
        double inside = NORMAL.cumulativeProbability((1 - 0.94) / 0.04) - below;
        for (double z = -4; z <= 4; z += 0.5) {
            double value = belief.at(z);
            double share = (NORMAL.cumulativeProbability((value - 0.94) / 0.04) - below) / inside;
            assertThat(share).isCloseTo(NORMAL.cumulativeProbability(z), within(1e-9));
        }
    }

    @Test
    void staysInTheRangeAtAnyPoint() {
        Belief belief = new Belief(0, 0.15, 0, 20);
        assertThat(belief.at(-40)).isBetween(0.0, 1e-9);
        assertThat(belief.at(40)).isBetween(1.0, 20.0);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new Belief(2, 0.1, 0, 1)).hasMessageContaining("the middle must lie in the range");
        assertThatThrownBy(() -> new Belief(0.5, 0, 0, 1)).hasMessageContaining("deviation");
    }
}
