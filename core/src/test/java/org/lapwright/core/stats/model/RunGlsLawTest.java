package org.lapwright.core.stats.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** The run-by-run estimate against the textbook formula with the covariance written out, and its symmetries. */
class RunGlsLawTest {
    /** A made-up session: runs of uneven length with holes, level, drift and warm-up, sides A B B A. */
    private static final class Session {
        private final RunLayout layout;
        private final int[] run;
        private final int[] position;
        private final double[][] x;
        private final double[] z;
        private final double[] y;

        private Session(int[] run, int[] position, double[][] x, double[] z, double[] y) {
            this.layout = RunLayout.of(run, position);
            this.run = run;
            this.position = position;
            this.x = x;
            this.z = z;
            this.y = y;
        }

        static Session random(long seed) {
            Random random = new Random(seed);
            int n = 12 + random.nextInt(30);
            int[] run = new int[n];
            int[] position = new int[n];
            double[][] x = new double[3][n];
            double[] z = new double[n];
            double[] y = new double[n];
            for (int i = 0; i < n; i++) {
                run[i] = 4 * i / n;
                boolean first = i == 0 || run[i] != run[i - 1];
                position[i] = first ? 1 : position[i - 1] + 1 + (random.nextInt(5) == 0 ? random.nextInt(4) : 0);
                x[0][i] = 1;
                x[1][i] = i / 60.0;
                x[2][i] = Math.exp(-(position[i] - 1) / 3.0);
                z[i] = run[i] == 1 || run[i] == 2 ? 1 : 0;
                y[i] = 2 - 0.01 * z[i] + 0.02 * x[2][i] + 0.01 * random.nextGaussian();
            }
            return new Session(run, position, x, z, y);
        }

        RunGlsFit.Effect fit(RunGls gls) {
            return gls.fit(layout, x, z, y).effect().orElseThrow();
        }
    }

    @Property(tries = 200)
    void agreesWithTheCovarianceWrittenOut(
            @ForAll long seed,
            @ForAll @DoubleRange(min = -0.5, max = 0.95) double phi,
            @ForAll @DoubleRange(min = 0, max = 3) double gamma) {
        Session session = Session.random(seed);
        RunGlsFit.Effect fit = session.fit(new RunGls(phi, gamma));
        int n = session.y.length;
        RealMatrix omega = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                int apart = Math.abs(session.position[i] - session.position[j]);
                omega.setEntry(
                        i, j, session.run[i] == session.run[j] ? (i == j ? 1 : Math.pow(phi, apart)) + gamma : 0);
            }
        }
        double[][] columns = {session.x[0], session.x[1], session.x[2], session.z};
        RealMatrix design = new Array2DRowRealMatrix(columns).transpose();
        RealMatrix inverse = new LUDecomposition(omega).getSolver().getInverse();
        RealMatrix normal = design.transpose().multiply(inverse).multiply(design);
        RealMatrix normalInverse = new LUDecomposition(normal).getSolver().getInverse();
        double[] beta =
                normalInverse.multiply(design.transpose()).multiply(inverse).operate(session.y);
        double[] rest = session.y.clone();
        double[] fitted = design.operate(beta);
        Arrays.setAll(rest, i -> rest[i] - fitted[i]);
        double[] weighted = inverse.operate(rest);
        double rss = 0;
        for (int i = 0; i < n; i++) {
            rss += rest[i] * weighted[i];
        }
        assertThat(fit.delta()).isCloseTo(beta[3], within(1e-9));
        assertThat(fit.s() * normalInverse.getEntry(3, 3)).isCloseTo(1, within(1e-8));
        assertThat(fit.rss1() / rss).isCloseTo(1, within(1e-8));
        assertThat(fit.nu()).isEqualTo(n - 4);
        double logDeterminant = Math.log(new LUDecomposition(omega).getDeterminant());
        assertThat(new RunWhitening(phi, gamma, session.layout).logDeterminant())
                .isCloseTo(logDeterminant, within(1e-8));
    }

    @Property(tries = 100)
    void whatTheOtherColumnsExplainDoesNotTouchTheEffect(@ForAll long seed) {
        Session session = Session.random(seed);
        RunGls gls = new RunGls(0.3, 0.1);
        RunGlsFit.Effect fit = session.fit(gls);
        double[] moved = session.y.clone();
        Arrays.setAll(moved, i -> moved[i] + 0.5 - 3 * session.x[1][i] + 2 * session.x[2][i]);
        RunGlsFit.Effect same =
                gls.fit(session.layout, session.x, session.z, moved).effect().orElseThrow();
        assertThat(same.delta()).isCloseTo(fit.delta(), within(1e-12));
        assertThat(same.se()).isCloseTo(fit.se(), within(1e-12));
        double[] known = session.y.clone();
        Arrays.setAll(known, i -> 2 * (known[i] + 0.03 * session.z[i]));
        RunGlsFit.Effect shifted =
                gls.fit(session.layout, session.x, session.z, known).effect().orElseThrow();
        assertThat(shifted.delta()).isCloseTo(2 * (fit.delta() + 0.03), within(1e-12));
        assertThat(shifted.se()).isCloseTo(2 * fit.se(), within(1e-12));
    }

    @Property(tries = 100)
    void swappingTheSidesMirrorsTheEffect(@ForAll long seed) {
        Session session = Session.random(seed);
        RunGls gls = new RunGls(0.3, 0.1);
        double[] swapped = Arrays.stream(session.z).map(v -> 1 - v).toArray();
        RunGlsFit.Effect fit = session.fit(gls);
        RunGlsFit.Effect mirror =
                gls.fit(session.layout, session.x, swapped, session.y).effect().orElseThrow();
        assertThat(mirror.delta()).isCloseTo(-fit.delta(), within(1e-12));
        assertThat(mirror.se()).isCloseTo(fit.se(), within(1e-12));
        assertThat(mirror.s()).isCloseTo(fit.s(), within(1e-9));
    }

    @Test
    void explainedColumnsAreLeftOut() {
        Session session = Session.random(1);
        double[] twice = Arrays.stream(session.x[1]).map(v -> 2 * v - 1).toArray();
        double[][] x = {session.x[0], session.x[1], twice, session.x[2], new double[twice.length]};
        RunGls gls = new RunGls(0.3, 0.1);
        RunGlsFit.Effect fit =
                gls.fit(session.layout, x, session.z, session.y).effect().orElseThrow();
        assertThat(fit.p()).isEqualTo(3);
        assertThat(fit.delta()).isCloseTo(session.fit(gls).delta(), within(1e-12));
    }

    @Test
    void anEffectThatCannotBeToldIsSaidSo() {
        Session session = Session.random(1);
        RunGls gls = new RunGls(0.3, 0.1);
        double[] oneSide = new double[session.y.length];
        assertThat(gls.fit(session.layout, session.x, oneSide, session.y))
                .isEqualTo(new RunGlsFit.NoEffect(oneSide.length, 3, RunGlsFit.Reason.CONFOUNDED));
        assertThat(gls.information(session.layout, session.x, oneSide)).isZero();
        RunLayout two = RunLayout.of(new int[] {1, 2}, new int[] {1, 1});
        double[][] level = {{1, 1}};
        double[] z = {0, 1};
        assertThat(gls.fit(two, level, z, new double[] {7, 6}))
                .isEqualTo(new RunGlsFit.NoEffect(2, 1, RunGlsFit.Reason.TOO_FEW_VALUES));
        RunLayout none = RunLayout.of(new int[0], new int[0]);
        assertThat(gls.fit(none, new double[1][0], new double[0], new double[0]).effect())
                .isEmpty();
    }

    @Test
    void equalValuesHaveNoEffectAndNoScatter() {
        Session session = Session.random(3);
        double[] equal = new double[session.y.length];
        Arrays.fill(equal, Math.log(7.123));
        RunGlsFit.Effect fit = new RunGls(0.3, 0.1)
                .fit(session.layout, session.x, session.z, equal)
                .effect()
                .orElseThrow();
        assertThat(fit.delta()).isZero();
        assertThat(fit.se()).isZero();
        assertThat(fit.t()).isZero();
        double[] step = Arrays.stream(session.z).map(v -> 2 + v).toArray();
        RunGlsFit.Effect exact = new RunGls(0.3, 0.1)
                .fit(session.layout, session.x, session.z, step)
                .effect()
                .orElseThrow();
        assertThat(exact.delta()).isCloseTo(1, within(1e-12));
        assertThat(exact.t()).isGreaterThan(1e6);
    }

    @Test
    void badInputIsNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RunGls(1, 0))
                .withMessage("φ is 1.0; it must be above -1 and below 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RunGls(0, -0.1))
                .withMessageContaining("γ is -0.1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RunLayout.of(new int[] {1, 2, 1}, new int[] {1, 1, 2}))
                .withMessage("run 1 comes back at value 3; its values must follow each other");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RunLayout.of(new int[] {1, 1}, new int[] {2, 2}))
                .withMessage("value 2 is at place 2 of run 1, after place 2; places ascend");
        Session session = Session.random(1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RunGls(0, 0).fit(session.layout, session.x, session.z, new double[1]))
                .withMessageContaining("y has 1 values and the layout");
    }
}
