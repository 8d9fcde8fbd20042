package org.lapwright.core.stats.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.lapwright.core.stats.Autocorrelation;
import org.lapwright.core.stats.ReferenceCase;

/** Run effects and autoregression against lme4 1.1-31, nlme 3.1-162 and R 4.2.2's arima. */
class RunCovarianceReferenceTest {
    private static final RunCovariance RESTRICTED = new RunCovariance(true);

    private static RunLayout layout(String[] group) {
        int[] run = new int[group.length];
        for (int i = 1; i < group.length; i++) {
            run[i] = run[i - 1] + (group[i].equals(group[i - 1]) ? 0 : 1);
        }
        return RunLayout.of(run, IntStream.range(0, group.length).toArray());
    }

    private static double[] ones(int n) {
        double[] ones = new double[n];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static RunGlsFit.Effect fit(RunGls gls, RunLayout layout, double[][] x, double[] z, double[] y) {
        return gls.fit(layout, x, z, y).effect().orElseThrow();
    }

    /** Davies and Goldsmith 1972 (dyestuff): batch deviation 42.001, residual 49.510, mean 1527.5. */
    @Test
    void dyestuff() {
        ReferenceCase c = ReferenceCase.load("mixed-dyestuff");
        RunLayout layout = layout(c.inputTexts("batch"));
        double[] y = c.inputs("y");
        double[] ones = ones(y.length);
        List<RunData> data = List.of(RunData.of(layout, new double[][] {ones}, y));
        RunGls gls = RESTRICTED.estimateGamma(data, 0);
        RunGlsFit.Effect mean = fit(gls, layout, new double[0][], ones, y);
        c.check(mean.delta(), "mean");
        c.check(mean.se(), "se_mean");
        c.check(mean.sigma(), "sd_residual_lmer");
        c.check(mean.sigma() * Math.sqrt(gls.gamma()), "sd_batch_lmer");
        c.check(mean.sigma() * mean.sigma() * gls.gamma(), "tau2_exact");
        c.check(mean.sigma() * mean.sigma(), "sigma2_exact");
        c.check(RESTRICTED.deviance(data, gls), "reml_criterion");
    }

    /** Belenky et al. 2003 (sleep deprivation), random intercept; a random slope is not in the model. */
    @Test
    void sleepStudy() {
        ReferenceCase c = ReferenceCase.load("mixed-sleepstudy");
        RunLayout layout = layout(c.inputTexts("subject"));
        assertThat(layout.runs()).isEqualTo(18);
        double[] y = c.inputs("reaction");
        double[] days = c.inputs("days");
        double[] ones = ones(y.length);
        List<RunData> data = List.of(RunData.of(layout, new double[][] {ones, days}, y));
        RunGls gls = RESTRICTED.estimateGamma(data, 0);
        RunGlsFit.Effect slope = fit(gls, layout, new double[][] {ones}, days, y);
        c.check(slope.delta(), "random_intercept", "days");
        c.check(slope.se(), "random_intercept", "se_days");
        c.check(slope.sigma(), "random_intercept", "sd_residual");
        c.check(slope.sigma() * Math.sqrt(gls.gamma()), "random_intercept", "sd_intercept");
        c.check(fit(gls, layout, new double[][] {days}, ones, y).delta(), "random_intercept", "intercept");
        c.check(RESTRICTED.deviance(data, gls), "random_intercept", "reml_criterion");
    }

    /** Level of Lake Huron (Brockwell and Davis 1991): trend with autoregressive errors. */
    @Test
    void lakeHuron() {
        ReferenceCase c = ReferenceCase.load("ar1-lakehuron-trend");
        double[] y = c.inputs("y");
        double[] t = c.inputs("t");
        double[] ones = ones(y.length);
        RunLayout layout =
                RunLayout.of(new int[y.length], IntStream.range(0, y.length).toArray());
        RunGls estimated = RESTRICTED.estimatePhi(List.of(RunData.of(layout, new double[][] {ones, t}, y)), 0);
        c.check(estimated.phi(), "reml", "phi");
        checkTrend(c, "reml", estimated, layout, t, y);
        checkTrend(c.within(1e-9), "phi_fixed_half", new RunGls(0.5, 0), layout, t, y);
        RunGlsFit.Effect level = fit(new RunGls(0.5, 0), layout, new double[][] {t}, ones, y);
        c.within(1e-9).check(level.se(), "phi_fixed_half", "se_intercept");
    }

    private static void checkTrend(ReferenceCase c, String name, RunGls gls, RunLayout layout, double[] t, double[] y) {
        double[] ones = ones(y.length);
        RunGlsFit.Effect slope = fit(gls, layout, new double[][] {ones}, t, y);
        c.check(fit(gls, layout, new double[][] {t}, ones, y).delta(), name, "intercept");
        c.check(slope.delta(), name, "slope");
        c.check(slope.se(), name, "se_slope");
        c.check(slope.sigma(), name, "sigma");
    }

    /** Luteinizing hormone (Diggle 1990, table A.1), full likelihood; standard errors by Hessian are not ours. */
    @Test
    void luteinizingHormone() {
        ReferenceCase c = ReferenceCase.load("ar1-lh");
        double[] x = c.inputs("x");
        int n = x.length;
        double[] ones = ones(n);
        RunLayout layout = RunLayout.of(new int[n], IntStream.range(0, n).toArray());
        RunCovariance full = new RunCovariance(false);
        List<RunData> data = List.of(RunData.of(layout, new double[][] {ones}, x));
        RunGls gls = full.estimatePhi(data, 0);
        RunGlsFit.Effect mean = fit(gls, layout, new double[0][], ones, x);
        c.check(gls.phi(), "ar1_ml");
        c.check(mean.delta(), "mean_ml");
        c.check(mean.rss1() / n * (1 - gls.phi() * gls.phi()), "sigma2_ml");
        c.check(-full.deviance(data, gls) / 2, "loglik");
        c.check(Autocorrelation.lag1(x), "ar1_yule_walker");
        c.checkAll(
                IntStream.rangeClosed(1, 5)
                        .mapToDouble(lag -> Autocorrelation.atLag(x, lag))
                        .toArray(),
                "acf_lag1_to_5");
        c.check(Autocorrelation.effectiveSampleSize(n, Autocorrelation.lag1(x)), "n_eff_ar1_from_r1");
    }

    /** NIST/ITL Statistical Reference Datasets, linear regression, Norris (US Government work). */
    @Test
    void norrisStraightLine() {
        ReferenceCase c = ReferenceCase.load("nist-linreg-norris");
        double[] x = c.inputs("x");
        double[] y = c.inputs("y");
        double[] ones = ones(x.length);
        RunLayout layout =
                RunLayout.of(new int[x.length], IntStream.range(0, x.length).toArray());
        RunGls plain = new RunGls(0, 0);
        RunGlsFit.Effect slope = fit(plain, layout, new double[][] {ones}, x, y);
        RunGlsFit.Effect intercept = fit(plain, layout, new double[][] {x}, ones, y);
        c.check(slope.delta(), "slope");
        c.check(slope.se(), "se_slope");
        c.check(slope.sigma(), "residual_sd");
        c.check(slope.t() * slope.t(), "F");
        c.check(intercept.delta(), "intercept");
        c.check(intercept.se(), "se_intercept");
        SimpleRegression hipparchus = new SimpleRegression();
        for (int i = 0; i < x.length; i++) {
            hipparchus.addData(x[i], y[i]);
        }
        c.check(hipparchus.getRSquare(), "r_squared");
    }

    /** Sessions made with φ = 0.5 and γ = 0.5: forty together give both back. */
    @Test
    void bothAreFoundFromManySessions() {
        Random random = new Random(6);
        List<RunData> sessions = new ArrayList<>();
        for (int s = 0; s < 40; s++) {
            int n = 60;
            double[] y = new double[n];
            double level = 0;
            double last = 0;
            for (int i = 0; i < n; i++) {
                boolean first = i % 10 == 0;
                level = first ? Math.sqrt(0.5) * random.nextGaussian() : level;
                last = first ? random.nextGaussian() : 0.5 * last + Math.sqrt(0.75) * random.nextGaussian();
                y[i] = 100 * s + level + last;
            }
            RunLayout layout = RunLayout.of(
                    IntStream.range(0, n).map(i -> i / 10).toArray(),
                    IntStream.range(0, n).map(i -> i % 10).toArray());
            sessions.add(RunData.of(layout, new double[][] {ones(n)}, y));
        }
        RunGls found = RESTRICTED.estimate(sessions);
        assertThat(found.phi()).isCloseTo(0.5, within(0.06));
        assertThat(found.gamma()).isCloseTo(0.5, within(0.25));
    }

    @Test
    void dataThatSayNothingGiveNoCorrelation() {
        RunLayout layout = RunLayout.of(new int[] {1, 1, 1}, new int[] {1, 2, 3});
        RunData flat = RunData.of(layout, new double[][] {ones(3)}, new double[] {7, 7, 7});
        assertThat(RESTRICTED.estimate(List.of(flat))).isEqualTo(new RunGls(0, 0));
        assertThat(RESTRICTED.estimate(List.of())).isEqualTo(new RunGls(0, 0));
        RunData oneRun = RunData.of(layout, new double[][] {ones(3)}, new double[] {7, 7.2, 7.1});
        assertThat(RESTRICTED.estimateGamma(List.of(oneRun), 0.3).gamma()).isZero();
    }
}
