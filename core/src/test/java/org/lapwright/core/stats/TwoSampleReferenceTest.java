package org.lapwright.core.stats;

import static org.assertj.core.api.Assertions.assertThat;

import org.hipparchus.stat.inference.MannWhitneyUTest;
import org.hipparchus.stat.inference.TTest;
import org.hipparchus.stat.inference.WilcoxonSignedRankTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Two samples and pairs against R 4.2.2: t tests and rank tests are those of Hipparchus, shifts and rank intervals ours.
 * Interval ends of t tests, the sign-flip permutation and the signed-rank interval in the same files are not something
 * that we compute.
 */
class TwoSampleReferenceTest {
    /** Student 1908 (sleep, two groups) and Michelson's experiments 1 and 4, both with ties. */
    @ParameterizedTest
    @ValueSource(strings = {"two-sample-sleep", "two-sample-morley-1-4"})
    void twoSamplesWithTies(String id) {
        ReferenceCase c = ReferenceCase.load(id);
        double[] a = c.inputs("a");
        double[] b = c.inputs("b");
        TTest test = new TTest();
        c.check(test.t(b, a), "welch", "t");
        c.check(test.tTest(b, a), "welch", "p");
        c.check(test.homoscedasticT(b, a), "student", "t");
        c.check(test.homoscedasticTTest(b, a), "student", "p");
        c.check(RankShift.estimate(a, b, 0.95).shift(), "hl_shift_b_minus_a");
        c.check(
                new MannWhitneyUTest().mannWhitneyUTest(a, b, false),
                "mann_whitney_normal_approx",
                "p_two_sided_continuity_ties");
    }

    /** Hollander and Wolfe 1973, p. 69: permeability of the human placenta at term and early; no ties. */
    @Test
    void exactRankSumOfPermeability() {
        ReferenceCase c = ReferenceCase.load("two-sample-hollander-wolfe-permeability");
        double[] early = c.inputs("early");
        double[] atTerm = c.inputs("at_term");
        int u = 0;
        for (double e : early) {
            for (double t : atTerm) {
                u += t > e ? 1 : 0;
            }
        }
        c.check(u, "W");
        RankSumDistribution distribution = new RankSumDistribution(early.length, atTerm.length);
        double greater = 1 - distribution.lowerTail(u - 1);
        c.check(greater, "p_greater_exact");
        c.check(2 * greater, "p_two_sided_exact");
        ShiftEstimate shift = RankShift.estimate(early, atTerm, 0.95);
        c.check(shift.shift(), "hl_shift");
        c.check(shift.interval().low(), "ci95_low");
        c.check(shift.interval().high(), "ci95_high");
        assertThat(shift.coverage()).isBetween(0.95, 0.97);
    }

    /** Student 1908 (sleep, t = 4.06, p = .0028) and Box, Hunter and Hunter 1978, p. 97 (shoes, t = 3.35). */
    @ParameterizedTest
    @ValueSource(strings = {"paired-sleep", "paired-shoes"})
    void pairs(String id) {
        ReferenceCase c = ReferenceCase.load(id);
        double[] a = c.inputs("a");
        double[] b = c.inputs("b");
        double[] differences = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            differences[i] = b[i] - a[i];
        }
        TTest test = new TTest();
        c.check(org.hipparchus.stat.StatUtils.mean(differences), "mean_diff");
        c.check(test.pairedT(b, a), "t");
        c.check(test.pairedTTest(b, a), "p");
        c.check(RobustLocation.hodgesLehmann(differences), "hodges_lehmann_of_differences");
    }

    /** Hollander and Wolfe 1973, p. 29: depression scale before and after (V = 40, one-sided p = 0.01953). */
    @Test
    void exactSignedRank() {
        ReferenceCase c = ReferenceCase.load("paired-hollander-wolfe-depression");
        double[] x = c.inputs("x");
        double[] y = c.inputs("y");
        double[] differences = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            differences[i] = x[i] - y[i];
        }
        WilcoxonSignedRankTest test = new WilcoxonSignedRankTest();
        c.check(test.wilcoxonSignedRank(y, x), "V");
        c.check(test.wilcoxonSignedRankTest(y, x, true), "p_two_sided_exact");
        c.check(RobustLocation.hodgesLehmann(differences), "hodges_lehmann_x_minus_y");
    }
}
