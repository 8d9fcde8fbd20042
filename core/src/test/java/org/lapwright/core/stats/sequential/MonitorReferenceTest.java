package org.lapwright.core.stats.sequential;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.stats.ReferenceCase;
import org.lapwright.core.stats.StudentTail;
import org.lapwright.core.stats.model.RunGls;
import org.lapwright.core.stats.model.RunGlsFit;
import org.lapwright.core.stats.model.RunLayout;

/**
 * The steps of one look, with numbers: R 4.2.2 with explicit inverses of the covariance; effect and standard error
 * without a run effect agree with nlme::gls 3.1-162 to 1e-10.
 */
class MonitorReferenceTest {
    private static final ReferenceCase CASE = ReferenceCase.load("monitor-gls-steps");
    private static final double[] RUN = CASE.inputs("run");
    private static final double[] LAP_IN_RUN = CASE.inputs("lap_in_run");
    private static final String[] ARM = CASE.inputTexts("arm");

    /** The design of some of the 32 laps: level, drift, warm-up, and 1 on the laps after the change. */
    private static final class Design {
        private final RunLayout layout;
        private final double[][] x;
        private final double[] z;

        private Design(RunLayout layout, double[][] x, double[] z) {
            this.layout = layout;
            this.x = x;
            this.z = z;
        }

        static Design of(int[] laps) {
            int[] run = Arrays.stream(laps).map(i -> (int) RUN[i]).toArray();
            int[] position = Arrays.stream(laps).map(i -> (int) LAP_IN_RUN[i]).toArray();
            double[][] x = {
                Arrays.stream(laps).mapToDouble(i -> 1).toArray(),
                Arrays.stream(laps).mapToDouble(i -> i / 60.0).toArray(),
                Arrays.stream(laps)
                        .mapToDouble(i -> Math.exp(-(LAP_IN_RUN[i] - 1) / 3))
                        .toArray()
            };
            double[] z = Arrays.stream(laps)
                    .mapToDouble(i -> ARM[i].equals("B") ? 1 : 0)
                    .toArray();
            return new Design(RunLayout.of(run, position), x, z);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "look_24_phi0.3_gamma0.1, 24, 0.3, 0.1, false",
        "look_32_phi0.3_gamma0.1, 32, 0.3, 0.1, false",
        "look_32_phi0_gamma0, 32, 0, 0, false",
        "look_32_phi0.3_gamma0, 32, 0.3, 0, false",
        "look_32_excluding_laps_11_12_27_phi0.3_gamma0.1, 32, 0.3, 0.1, true",
    })
    void everyStepOfALook(String look, int driven, double phi, double gamma, boolean holes) {
        int[] laps = IntStream.range(0, driven)
                .filter(i -> !holes || (i != 10 && i != 11 && i != 26))
                .toArray();
        Design design = Design.of(laps);
        Design plan = Design.of(IntStream.range(0, 32).toArray());
        double[] seconds = CASE.inputs("lap_s");
        double[] y = Arrays.stream(laps).mapToDouble(i -> Math.log(seconds[i])).toArray();
        RunGls gls = new RunGls(phi, gamma);
        RunGlsFit.Effect fit =
                gls.fit(design.layout, design.x, design.z, y).effect().orElseThrow();
        CASE.check(fit.n(), look, "n");
        CASE.check(fit.p(), look, "p");
        CASE.check(fit.nu(), look, "nu");
        CASE.check(fit.s(), look, "s");
        CASE.check(fit.delta(), look, "delta");
        CASE.check(fit.rss1(), look, "rss1");
        CASE.check(fit.sigma(), look, "sigma");
        CASE.check(fit.se(), look, "se");
        CASE.check(fit.t(), look, "t");
        assertThat(gls.information(design.layout, design.x, design.z)).isEqualTo(fit.s());
        double planned = gls.information(plan.layout, plan.x, plan.z);
        CASE.check(planned, look, "s_plan");
        checkDecision(look, fit, fit.s() / planned);
    }

    private static void checkDecision(String look, RunGlsFit.Effect fit, double fraction) {
        double alpha = CASE.input("alpha");
        GroupSequentialBoundary boundary = GroupSequentialBoundary.of(alpha);
        CASE.check(fraction, look, "info_fraction");
        double z = StudentTail.toNormal(fit.t(), fit.nu());
        CASE.check(z, look, "z");
        CASE.check(boundary.z(fraction), look, "boundary_z_extendable");
        assertThat(boundary.isCrossed(z, fraction)).isFalse();
        RepeatedInterval interval = RepeatedInterval.of(boundary, fraction, fit.delta(), fit.se(), fit.nu());
        CASE.check(interval.halfWidth(), look, "rci_half_width");
        CASE.check(100 * Math.expm1(interval.low()), look, "rci_low_percent");
        CASE.check(100 * Math.expm1(interval.high()), look, "rci_high_percent");
        TMixtureEvidence evidence = new TMixtureEvidence(CASE.input("g"));
        CASE.check(evidence.logE(fit.t(), fit.s(), fit.nu()), look, "log_e_tmixture_g1");
        CASE.check(evidence.halfWidth(fit.s(), fit.nu(), alpha) * fit.se(), look, "tmixture_cs_half_width");
    }
}
