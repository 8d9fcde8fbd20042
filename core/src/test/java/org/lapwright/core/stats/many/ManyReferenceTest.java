package org.lapwright.core.stats.many;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.stats.ReferenceCase;

/** Shrinkage, league tables and false discovery rates against published examples and metafor 3.8-1. */
class ManyReferenceTest {
    /** Rubin 1981, J. Educ. Statist. 6, table 1, where τ² is 0; metafor::rma(method = "REML") and blup(). */
    @Test
    void eightSchools() {
        ReferenceCase c = ReferenceCase.load("shrinkage-eight-schools");
        ShrunkMeans shrunk = ShrunkMeans.of(c.inputs("y"), c.inputs("se"));
        c.check(shrunk.tau2(), "reml", "tau2");
        c.check(shrunk.centre(), "reml", "mu");
        c.check(shrunk.centreSe(), "reml", "se_mu");
        int n = shrunk.size();
        c.checkAll(IntStream.range(0, n).mapToDouble(shrunk::mean).toArray(), "reml", "blup");
        c.checkAll(IntStream.range(0, n).mapToDouble(shrunk::se).toArray(), "reml", "blup_se");
        assertThat(shrunk.groups(0.9)).hasSize(1);
        assertThat(shrunk.expectedRank(0)).isEqualTo(4.5);
    }

    /** Formulas of Goldstein and Spiegelhalter 1996 and Laird and Louis 1989 on metafor's REML estimate. */
    @Test
    void ladderOfSixCars() {
        ReferenceCase c = ReferenceCase.load("ladder-six-cars");
        ShrunkMeans shrunk = ShrunkMeans.of(c.inputs("pace_s"), c.inputs("se_s"));
        c.check(shrunk.tau2(), "tau2");
        c.check(shrunk.centre(), "mu");
        c.check(shrunk.centreSe(), "se_mu");
        int n = shrunk.size();
        c.checkAll(IntStream.range(0, n).mapToDouble(shrunk::weight).toArray(), "shrink_weight");
        c.checkAll(IntStream.range(0, n).mapToDouble(shrunk::mean).toArray(), "shrunk");
        c.checkAll(IntStream.range(0, n).mapToDouble(shrunk::se).toArray(), "shrunk_se");
        c.checkAll(IntStream.range(0, n).mapToDouble(shrunk::expectedRank).toArray(), "expected_rank");
        double[][] faster = c.expectedRows("prob_row_faster_than_col");
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                c.compare(shrunk.chanceLower(i, j), faster[i][j], "P(%d faster than %d)".formatted(i, j));
            }
        }
    }

    /**
     * Davies and Goldsmith 1972 (dyestuff) by lme4 1.1-31: with the published variances, the predictions of the batches
     * are the shrunk batch means.
     */
    @Test
    void dyestuffBatches() {
        ReferenceCase c = ReferenceCase.load("mixed-dyestuff");
        double[] y = c.inputs("y");
        double[] batch = IntStream.range(0, 6)
                .mapToDouble(b -> Arrays.stream(y, 5 * b, 5 * b + 5).average().orElseThrow())
                .toArray();
        double[] se = new double[6];
        Arrays.fill(se, Math.sqrt(c.expected("sigma2_exact") / 5));
        ShrunkMeans shrunk = ShrunkMeans.of(batch, se, c.expected("tau2_exact"));
        c.check(shrunk.centre(), "mean");
        c.check(shrunk.centreSe(), "se_mean");
        c.checkAll(
                IntStream.range(0, 6)
                        .mapToDouble(b -> shrunk.mean(b) - shrunk.centre())
                        .toArray(),
                "blup");
        c.check(ShrunkMeans.of(batch, se).tau2(), "tau2_exact");
    }

    /** Efron and Morris 1975, JASA 70, table 1: batting averages after the arcsine transformation. */
    @Test
    void battingAverages() {
        ReferenceCase c = ReferenceCase.load("shrinkage-efron-morris-baseball");
        double[] x = DoubleStream.of(c.inputs("y"))
                .map(y -> Math.sqrt(c.input("at_bats")) * Math.asin(2 * y - 1))
                .toArray();
        JamesStein estimator = JamesStein.of(x, 1);
        c.check(estimator.centre(), "mean_x");
        c.check(estimator.factor(), "shrink_factor");
        c.checkAll(DoubleStream.of(x).map(estimator::shrunk).toArray(), "shrunk_x");
    }

    /** Benjamini and Hochberg 1995, section 3.2, as R's p.adjust gives it; other adjustments are not ours. */
    @Test
    void benjaminiHochberg() {
        ReferenceCase c = ReferenceCase.load("multiple-bh1995");
        double[] adjusted = FalseDiscovery.adjusted(c.inputs("p"));
        c.checkAll(adjusted, "bh");
        c.check((double) DoubleStream.of(adjusted).filter(p -> p <= 0.05).count(), "rejected_bh_0.05");
    }

    /** Wang and Ramdas 2022 (e-BH) and Xu and Ramdas 2024 (e-LOND). */
    @ParameterizedTest
    @CsvSource({"0.05, alpha_0.05", "0.10, alpha_0.10"})
    void eValues(double alpha, String name) {
        ReferenceCase c = ReferenceCase.load("multiple-ebh-elond");
        double[] logE = DoubleStream.of(c.inputs("e")).map(Math::log).toArray();
        c.checkAll(
                FalseDiscovery.finished(logE, alpha).stream()
                        .mapToDouble(i -> i + 1)
                        .toArray(),
                name,
                "ebh_rejected_1based");
        c.checkAll(
                FalseDiscovery.running(logE, alpha).stream()
                        .mapToDouble(i -> i + 1)
                        .toArray(),
                name,
                "elond_rejected_1based");
    }
}
