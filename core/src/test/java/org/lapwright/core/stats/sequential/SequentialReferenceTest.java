package org.lapwright.core.stats.sequential;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.stats.ReferenceCase;

/** Boundaries and e-values against R 4.2.2. */
class SequentialReferenceTest {
    /** c and b from the equation of the class, solved by R's uniroot, and the boundary at 13 information fractions. */
    @ParameterizedTest
    @CsvSource({"0.05, alpha_0.05", "0.10, alpha_0.10", "0.01, alpha_0.01"})
    void extendableBoundary(double alpha, String name) {
        ReferenceCase c = ReferenceCase.load("sequential-extendable-boundary");
        GroupSequentialBoundary boundary = GroupSequentialBoundary.of(alpha);
        c.check(boundary.c(), name, "c");
        c.check(boundary.b(), name, "b");
        c.checkAll(Arrays.stream(c.inputs("t")).map(boundary::z).toArray(), name, "z_extendable");
    }

    /** Lindon, Ham, Tingley and Bojinov 2022 (arXiv 2210.08589), scalar case, at 60 points. */
    @Test
    void tMixtureEvidence() {
        ReferenceCase c = ReferenceCase.load("sequential-t-mixture-evalue");
        double[] t = c.inputs("t");
        double[] nu = c.inputs("nu");
        double[] s = c.inputs("s");
        double[] g = c.inputs("g");
        double[] logE = new double[t.length];
        double[] halfWidth = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            TMixtureEvidence evidence = new TMixtureEvidence(g[i]);
            logE[i] = evidence.logE(t[i], s[i], nu[i]);
            halfWidth[i] = evidence.halfWidth(s[i], nu[i], c.input("alpha"));
        }
        assertThat(t).hasSize(60);
        c.checkAll(logE, "log_e");
        c.checkAll(halfWidth, "cs_half_width_in_se");
    }

    /**
     * Howard, Ramdas, McAuliffe and Sekhon 2021, Annals of Statistics 49(2), eq. (14); the values agree to 1e-12 with
     * normal_mixture_bound of the authors' confseq library.
     */
    @ParameterizedTest
    @CsvSource({"0.05, bound_alpha_0.05", "0.10, bound_alpha_0.10", "0.01, bound_alpha_0.01"})
    void robbinsMixture(double alpha, String name) {
        ReferenceCase c = ReferenceCase.load("sequential-robbins-mixture");
        RobbinsMixture mixture = RobbinsMixture.tightAt(c.input("v_opt"), c.input("alpha_opt"));
        c.check(mixture.rho(), "rho");
        c.checkAll(
                Arrays.stream(c.inputs("v")).map(v -> mixture.bound(v, alpha)).toArray(), name);
    }

    /** Waudby-Smith, Arbour, Sinha, Kennedy and Ramdas 2024 (arXiv 2103.06476), theorem 2.2. */
    @Test
    void asymptoticConfidenceSequence() {
        ReferenceCase c = ReferenceCase.load("sequential-asymptotic-cs");
        double alpha = c.input("alpha");
        RobbinsMixture mixture = RobbinsMixture.tightAt(c.input("t_opt"), alpha);
        c.check(1 / mixture.rho(), "rho2");
        c.checkAll(
                Arrays.stream(c.inputs("t"))
                        .map(t -> mixture.halfWidth((int) t, c.input("sigma"), alpha))
                        .toArray(),
                "margin");
    }
}
