package org.lapwright.core.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.lapwright.core.stats.ReferenceCase;

/** Sampler and Laplace's method where the answer is known. */
final class SamplerReferenceTest {
    private static final int STEPS = 20_000;

    /** Observations that are straight lines of the unknowns: the posterior is normal, in closed form. */
    private record Straight(double[][] slopes, double[] observed, double[] variances) implements Target {
        @Override
        public int size() {
            return slopes[0].length;
        }

        @Override
        public double[] residuals(double[] z) {
            double[] residuals = observed.clone();
            for (int i = 0; i < residuals.length; i++) {
                for (int k = 0; k < z.length; k++) {
                    residuals[i] -= slopes[i][k] * z[k];
                }
            }
            return residuals;
        }

        @Override
        public double[][] slopes(double[] z) {
            return slopes;
        }

        @Override
        public double[][] precision() {
            double[][] precision = new double[variances.length][variances.length];
            for (int i = 0; i < variances.length; i++) {
                precision[i][i] = 1 / variances[i];
            }
            return precision;
        }
    }

    private static Chains chains(Target target, Laplace near) {
        EllipticalSlice slice = new EllipticalSlice(target::lnDensity, near);
        SplittableRandom chance = new SplittableRandom(11);
        double[][][] draws = new double[4][][];
        Arrays.setAll(draws, c -> slice.chain(500, STEPS, chance));
        return new Chains(draws);
    }

    private static double mean(Chains chains, int unknown) {
        double sum = 0;
        for (int i = 0; i < chains.count(); i++) {
            sum += chains.draw(i)[unknown];
        }
        return sum / chains.count();
    }

    private static double deviation(Chains chains, int unknown) {
        double mean = mean(chains, unknown);
        double squares = 0;
        for (int i = 0; i < chains.count(); i++) {
            double off = chains.draw(i)[unknown] - mean;
            squares += off * off;
        }
        return Math.sqrt(squares / (chains.count() - 1));
    }

    /**
     * Rubin 1981, J. Educational Statistics 6, table 1: with no variance between schools, the common effect by metafor. The belief,
     * ± 10,000, is so wide that it does not matter.
     */
    @Test
    void eightSchools() {
        ReferenceCase c = ReferenceCase.load("shrinkage-eight-schools");
        double[] se = c.inputs("se");
        double[][] slopes = new double[se.length][1];
        Arrays.setAll(slopes, i -> new double[] {1e4});
        Target target = new Straight(
                slopes, c.inputs("y"), Arrays.stream(se).map(s -> s * s).toArray());
        Laplace laplace = Laplace.of(target);
        c.check(1e4 * laplace.mode()[0], "reml", "mu");
        c.check(1e4 * laplace.root()[0][0], "reml", "se_mu");
        Chains chains = chains(target, laplace);
        double error = 4 * 4.07 / Math.sqrt(chains.effectiveSize(0));
        assertThat(1e4 * mean(chains, 0)).isCloseTo(c.expected("reml", "mu"), within(error));
        assertThat(1e4 * deviation(chains, 0)).isCloseTo(c.expected("reml", "se_mu"), within(error));
    }

    /** Davies and Goldsmith 1972 (dyestuff): with the published variances the batches' effects are lme4's predictions. */
    @Test
    void dyestuffBatches() {
        ReferenceCase c = ReferenceCase.load("mixed-dyestuff");
        double[] y = c.inputs("y");
        double between = Math.sqrt(c.expected("tau2_exact"));
        double[] variances = new double[y.length];
        Arrays.fill(variances, c.expected("sigma2_exact"));
        double[][] slopes = new double[y.length][7];
        for (int i = 0; i < y.length; i++) {
            slopes[i][0] = 1e5;
            slopes[i][1 + i / 5] = between;
        }
        Target target = new Straight(slopes, y, variances);
        Laplace laplace = Laplace.of(target);
        Chains chains = chains(target, laplace);
        double[] published = c.expectedAll("blup");
        for (int b = 0; b < 6; b++) {
            assertThat(between * laplace.mode()[1 + b]).isCloseTo(published[b], within(0.02));
            double error = 4 * between / Math.sqrt(chains.effectiveSize(1 + b));
            assertThat(between * mean(chains, 1 + b)).isCloseTo(published[b], within(error));
        }
        assertThat(1e5 * laplace.mode()[0]).isCloseTo(c.expected("mean"), within(0.01));
    }

    /** Even when started from a normal distribution that is off by a deviation and half as wide, the draws find the right one. */
    @Test
    void aPoorStartIsForgotten() {
        Target target = new Straight(new double[][] {{1, 1}}, new double[] {2}, new double[] {0.01});
        Laplace right = Laplace.of(target);
        double[][] narrow = new double[2][2];
        for (int i = 0; i < 2; i++) {
            for (int k = 0; k < 2; k++) {
                narrow[i][k] = right.covariance()[i][k] / 4;
            }
        }
        Laplace poor = new Laplace(new double[] {right.mode()[0] + 0.7, right.mode()[1] - 0.7}, narrow);
        Chains chains = chains(target, poor);
        // Conjugate normal: mean 2/2.01 each, variance 1 − 1/2.01.
        double error = 4 / Math.sqrt(chains.effectiveSize(0));
        assertThat(mean(chains, 0)).isCloseTo(2 / 2.01, within(error));
        assertThat(deviation(chains, 0)).isCloseTo(Math.sqrt(1 - 1 / 2.01), within(error));
        assertThat(chains.splitRHat(0)).isLessThan(1.05);
    }

    /** A density with a bend, 1 = z₀ + 0.2 z₀² + z₁ ± 0.1, against quadrature on a fine grid. */
    @Test
    void aBentDensityAgainstQuadrature() {
        Target bent = new Target() {
            @Override
            public int size() {
                return 2;
            }

            @Override
            public double[] residuals(double[] z) {
                return new double[] {1 - z[0] - 0.2 * z[0] * z[0] - z[1]};
            }

            @Override
            public double[][] slopes(double[] z) {
                return new double[][] {{1 + 0.4 * z[0], 1}};
            }

            @Override
            public double[][] precision() {
                return new double[][] {{100}};
            }
        };
        double sum = 0;
        double first = 0;
        double second = 0;
        double step = 0.005;
        for (double a = -5; a <= 5; a += step) {
            for (double b = -5; b <= 5; b += step) {
                double density = Math.exp(bent.lnDensity(new double[] {a, b}));
                sum += density;
                first += density * a;
                second += density * b;
            }
        }
        Chains chains = chains(bent, Laplace.fromDraws(chains(bent, Laplace.of(bent))));
        assertThat(mean(chains, 0))
                .isCloseTo(first / sum, within(5 * deviation(chains, 0) / Math.sqrt(chains.effectiveSize(0))));
        assertThat(mean(chains, 1))
                .isCloseTo(second / sum, within(5 * deviation(chains, 1) / Math.sqrt(chains.effectiveSize(1))));
    }
}
