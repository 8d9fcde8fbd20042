package org.lapwright.core.stats;

import static org.assertj.core.api.Assertions.assertThat;

import org.hipparchus.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Robust estimates of four published samples against R 4.2.2, robustbase 0.95-0 and MASS 7.3-58.2: Michelson 1879
 * (R datasets::morley), Newcomb (Stigler 1977, Annals of Statistics 5, table 5), copper in flour (Analytical Methods
 * Committee 1989, The Analyst 114) and nickel in rock (Abbey 1988). The Huber M-location in the same files is not
 * something that we compute.
 */
class RobustReferenceTest {
    private static final String[] SHARES = {"p10", "p50", "p80", "p90"};

    @ParameterizedTest
    @ValueSource(strings = {"robust-morley-1", "robust-newcomb", "robust-chem", "robust-abbey"})
    void locationAndScale(String id) {
        ReferenceCase c = ReferenceCase.load(id);
        double[] x = c.inputs("x");
        c.check(x.length, "n");
        c.check(StatUtils.mean(x), "mean");
        c.check(Math.sqrt(StatUtils.variance(x)), "sd");
        c.check(RobustLocation.median(x), "median");
        c.check(RobustLocation.trimmedMean(x, 0.1), "trimmed_mean_10pct");
        c.check(RobustLocation.trimmedMean(x, 0.2), "trimmed_mean_20pct");
        c.check(RobustLocation.hodgesLehmann(x), "hodges_lehmann");
        c.check(RobustScale.mad(x), "mad_scaled_1.4826");
        c.check(RobustScale.rawMad(x), "mad_raw");
        double[] sorted = Samples.sorted(x, 2, "x");
        c.check(RobustScale.rawQnOfSorted(sorted), "qn_raw_order_statistic");
        c.check(RobustScale.rawQnOfSorted(sorted) * RobustScale.QN_CONSISTENCY, "qn_no_finite_correction");
        c.check(RobustScale.qn(x), "qn");
        c.check(RobustScale.sn(x), "sn");
        double oddFactor = x.length % 2 == 1 ? x.length / (x.length - 0.9) : 1;
        c.check(RobustScale.sn(x) / oddFactor, "sn_no_finite_correction");
        c.check(Autocorrelation.lag1(x), "lag1_autocorrelation");
        c.check(Autocorrelation.effectiveSampleSize(x.length, Autocorrelation.lag1(x)), "n_eff_ar1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"robust-morley-1", "robust-newcomb", "robust-chem", "robust-abbey"})
    void quantiles(String id) {
        ReferenceCase c = ReferenceCase.load(id);
        double[] x = c.inputs("x");
        for (String share : SHARES) {
            double p = Integer.parseInt(share.substring(1)) / 100.0;
            c.check(Quantile.type7(x, p), "quantile_type7", share);
            c.check(Quantile.type8(x, p), "quantile_type8", share);
        }
        c.check(Quantile.type7(x, 0.75) - Quantile.type7(x, 0.25), "iqr_type7");
        c.check(Quantile.type8(x, 0.75) - Quantile.type8(x, 0.25), "iqr_type8");
        c.check(Quantile.harrellDavis(x, 0.5), "harrell_davis", "p50");
        c.check(Quantile.harrellDavis(x, 0.8), "harrell_davis", "p80");
        checkInterval(c, x, 0.5, "median_ci95_order_statistics");
        checkInterval(c, x, 0.8, "p80_ci95_order_statistics");
    }

    private static void checkInterval(ReferenceCase c, double[] x, double p, String name) {
        OrderStatisticInterval interval = Quantile.interval(x, p, 0.95).orElseThrow();
        c.check(interval.lowerRank(), name, "lower_rank");
        c.check(interval.upperRank(), name, "upper_rank");
        c.check(interval.lower(), name, "lower");
        c.check(interval.upper(), name, "upper");
        c.check(interval.coverage(), name, "coverage");
    }

    /** Stack loss (Brownlee 1960), fitted by MASS::rlm with psi.huber, k = 2, MAD scale. */
    @Test
    void huberRegressionOfStackLoss() {
        ReferenceCase c = ReferenceCase.load("robust-rlm-stackloss");
        double[] y = c.inputs("y");
        double[] ones = new double[y.length];
        java.util.Arrays.fill(ones, 1);
        double[][] columns = {ones, c.inputs("air"), c.inputs("water"), c.inputs("acid")};
        HuberRegression.Work work = new HuberRegression.Work(y.length, columns.length);
        HuberFit fit = new HuberRegression(2, 500, 1e-11).fit(y, columns, y.length, work);
        assertThat(fit.converged()).isTrue();
        assertThat(fit.rank()).isEqualTo(4);
        c.checkAll(fit.coefficients(), "coef");
        c.check(fit.scale(), "scale");
        double[] weights = c.expectedAll("weights");
        for (int i = 0; i < y.length; i++) {
            c.compare(work.weight(i), weights[i], "weights[" + i + "]");
        }
    }
}
