package org.lapwright.core.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Diagnostics against what is known of autoregressive chains: n (1 − φ)/(1 + φ) independent draws for the mean. */
final class ChainsReferenceTest {
    private static final int STEPS = 20_000;

    private static double[][][] autoregressive(double phi, double[] shifts) {
        SplittableRandom chance = new SplittableRandom(7);
        double[][][] draws = new double[shifts.length][STEPS][1];
        for (int c = 0; c < draws.length; c++) {
            double x = chance.nextGaussian();
            for (int i = 0; i < STEPS; i++) {
                x = phi * x + Math.sqrt(1 - phi * phi) * chance.nextGaussian();
                draws[c][i][0] = x + shifts[c];
            }
        }
        return draws;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 0.6, 0.9})
    void effectiveSizeOfAnAutoregressiveChain(double phi) {
        Chains chains = new Chains(autoregressive(phi, new double[4]));
        assertThat(chains.effectiveSize(0)).isCloseTo(4 * STEPS * (1 - phi) / (1 + phi), Percentage.withPercentage(10));
        assertThat(chains.splitRHat(0)).isCloseTo(1, within(0.002));
    }

    /** Unit variance within; the eight halves have means ±1, whose variance is 8/7. */
    @Test
    void chainsThatDisagreeAreSeen() {
        Chains chains = new Chains(autoregressive(0, new double[] {1, -1, 1, -1}));
        assertThat(chains.splitRHat(0)).isCloseTo(Math.sqrt(1 + 8.0 / 7), within(0.01));
    }

    /** A chain that wanders off looks settled in itself; its halves do not. */
    @Test
    void oneChainThatDriftsIsSeen() {
        double[][][] draws = autoregressive(0, new double[1]);
        for (int i = 0; i < STEPS; i++) {
            draws[0][i][0] += 4.0 * i / STEPS;
        }
        assertThat(new Chains(draws).splitRHat(0)).isGreaterThan(1.3);
    }

    @Test
    void refusesChainsThatSayNothing() {
        assertThatThrownBy(() -> new Chains(new double[2][4][1])).hasMessageContaining("at least 8");
        assertThatThrownBy(() -> new Chains(new double[][][] {new double[10][1], new double[9][1]}))
                .hasMessageContaining("equally long");
    }
}
