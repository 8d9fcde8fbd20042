package org.lapwright.core.stats.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.stats.ReferenceCase;
import org.lapwright.core.stats.StudentTail;
import org.lapwright.core.stats.model.RunGls;
import org.lapwright.core.stats.model.RunLayout;

/** Planning against R 4.2.2 and the formulas of Cox 1951. */
class PowerReferenceTest {
    /** The examples of R's power.t.test: 0.8689528 for n = 20, n = 22.02110 for 90 %. */
    @Test
    void powerOfTheTTest() {
        ReferenceCase c = ReferenceCase.load("power-t-test");
        TTestPower test = new TTestPower(0.05);
        c.check(test.power(20, 1), "power_n20_d1_sd1");
        c.check(test.perGroup(1, 0.9), "n_power0.9_d1_sd1");
        c.check(0.01 * test.detectable(30, 0.8), "minimum_detectable_delta_n30_sd0.01_power0.8");
    }

    @Test
    void runsNeeded() {
        ReferenceCase c = ReferenceCase.load("power-runs-needed");
        Power power = Power.ofSingleLook(c.input("alpha"), c.input("power"));
        double variance = new RunNoise(c.input("sd"), c.input("phi"), c.input("tau"))
                .meanVariance((int) c.input("m_laps_per_run"));
        c.check(power.runsPerSide(0.005, variance), "runs_per_arm_delta0.005");
        c.check(power.runsPerSide(-0.01, variance), "runs_per_arm_delta0.01");
        c.check(power.runsPerSide(0.02, variance), "runs_per_arm_delta0.02");
        assertThat(power.detectable(c.expected("runs_per_arm_delta0.01"), variance))
                .isCloseTo(0.01, within(1e-12));
    }

    /** What a straight drift costs by order of the runs (Cox 1951, Biometrika 38): information without and with it. */
    @ParameterizedTest
    @ValueSource(strings = {"AB", "ABAB", "ABBA", "ABBAAB", "ABBABAAB"})
    void costOfDrift(String order) {
        ReferenceCase c = ReferenceCase.load("drift-orders");
        int m = (int) c.input("m_laps_per_run");
        int n = m * order.length();
        double[] z = IntStream.range(0, n)
                .mapToDouble(i -> order.charAt(i / m) == 'B' ? 1 : 0)
                .toArray();
        double[] level = IntStream.range(0, n).mapToDouble(i -> 1).toArray();
        double[] drift = IntStream.range(0, n).mapToDouble(i -> i / 60.0).toArray();
        RunLayout layout = RunLayout.of(
                IntStream.range(0, n).map(i -> i / m).toArray(),
                IntStream.range(0, n).map(i -> i % m).toArray());
        RunGls gls = new RunGls(0, 0);
        double inflation = gls.information(layout, new double[][] {level}, z)
                / gls.information(layout, new double[][] {level, drift}, z);
        c.check(inflation, order, "vif_trend");
    }

    /** So much information gives an effect the critical value plus the quantile of the power: 1.96 + 0.8416 at 80 %. */
    @Test
    void informationNeeded() {
        Power power = Power.ofSingleLook(0.05, 0.8);
        double s = power.information(0.01, 0.012);
        assertThat(0.01 * Math.sqrt(s) / 0.012).isCloseTo(1.959963984540054 + 0.8416212335729143, within(1e-12));
    }

    @Test
    void noEffectIsShownAsOftenAsFalseAlarmsAndEdgesGiveNumbers() {
        TTestPower test = new TTestPower(0.05);
        assertThat(test.power(5, 0)).isCloseTo(0.025, within(1e-9));
        assertThat(test.power(2, 0)).isCloseTo(0.025, within(1e-9));
        assertThat(test.power(1e6, 0)).isCloseTo(0.025, within(1e-9));
        assertThat(test.power(30, 50)).isCloseTo(1, within(1e-9));
        assertThat(test.perGroup(1000, 0.8)).isEqualTo(2);
        assertThat(StudentTail.quantile(0.025, 2)).isCloseTo(4.302652729749464, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> test.perGroup(1e-9, 0.8))
                .withMessageContaining("too small");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Power.ofSingleLook(0.05, 0.8).information(0, 1))
                .withMessage("effect is 0.0; it must be finite and not 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RunNoise(0.01, 1, 0))
                .withMessageContaining("φ is 1.0");
    }
}
