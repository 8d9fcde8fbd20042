package org.lapwright.core.trial.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.lapwright.core.trial.session.NoisePrior;

/** The fit by group means, against a regression by Hipparchus that has a column for each group. */
class WearTest {
    private static final NoisePrior PRIOR = NoisePrior.DEFAULT;

    private static List<WearRun> runs(double slope, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        List<WearRun> runs = new ArrayList<>();
        double laps = 0;
        for (int i = 0; i < 18; i++) {
            int clean = 6 + chance.nextInt(15);
            int group = i / 6;
            double pace = (6.2 - 0.1 * group) * Math.exp(slope * laps + 0.003 * chance.nextGaussian());
            runs.add(new WearRun("set-up " + group, laps, clean, pace));
            laps += clean + 2;
        }
        return runs;
    }

    private static double weight(WearRun run) {
        double phi = PRIOR.autocorrelation();
        return 1 / ((1 + phi) / ((1 - phi) * run.cleanLaps()) + PRIOR.runShare());
    }

    @Test
    void theSameAsARegressionWithAColumnForEachGroup() {
        List<WearRun> runs = runs(4e-5, 7);
        Wear wear = Wear.of(runs, PRIOR).orElseThrow();
        double[] y = new double[runs.size()];
        double[][] x = new double[runs.size()][4];
        for (int i = 0; i < y.length; i++) {
            double root = Math.sqrt(weight(runs.get(i)));
            y[i] = root * Math.log(runs.get(i).paceS());
            x[i][i / 6] = root;
            x[i][3] = root * runs.get(i).laps();
        }
        OLSMultipleLinearRegression full = new OLSMultipleLinearRegression();
        full.setNoIntercept(true);
        full.newSampleData(y, x);
        double slope = full.estimateRegressionParameters()[3];
        double error = full.estimateRegressionParametersStandardErrors()[3];
        assertThat(wear.perLap()).isCloseTo(slope, within(1e-12));
        double half = error * new TDistribution(14).inverseCumulativeProbability(0.975);
        assertThat(wear.interval().high() - wear.perLap()).isCloseTo(half, within(1e-9));
        assertThat(wear.isSure()).isTrue();
        assertThat(wear.interval().contains(4e-5)).isTrue();
    }

    /** Each set-up is faster than the one before; without levels of their own that would pass for tyres that get better. */
    @Test
    void aBetterSetUpIsNoWear() {
        Wear wear = Wear.of(runs(0, 3), PRIOR).orElseThrow();
        assertThat(wear.isSure()).isFalse();
    }

    @Test
    void theIntervalHoldsTheTruthAsOftenAsItSays() {
        int held = 0;
        for (int seed = 0; seed < 400; seed++) {
            held += Wear.of(runs(5e-5, seed), PRIOR).orElseThrow().interval().contains(5e-5) ? 1 : 0;
        }
        assertThat(held).isBetween(366, 396);
    }

    @Test
    void pointsLieOnOneLineWhereThereIsNoChance() {
        List<WearRun> runs = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            runs.add(new WearRun(i < 4 ? "a" : "b", 20 * i, 10, (i < 4 ? 6 : 7) * Math.exp(1e-4 * 20 * i)));
        }
        Wear wear = Wear.of(runs, PRIOR).orElseThrow();
        assertThat(wear.perLap()).isCloseTo(1e-4, within(1e-12));
        assertThat(wear.points())
                .allSatisfy(point -> assertThat(point.off()).isCloseTo(1e-4 * (point.laps() - 70), within(1e-9)));
    }

    @Test
    void aRunAloneInItsGroupTellsNothing() {
        List<WearRun> runs = runs(4e-5, 7);
        List<WearRun> more = new ArrayList<>(runs);
        more.add(new WearRun("alone", 400, 20, 5.1));
        assertThat(Wear.of(more, PRIOR)).isEqualTo(Wear.of(runs, PRIOR));
    }

    @Test
    void tooFewRunsOrOneNumberOfLapsShowNothing() {
        assertThat(Wear.of(List.of(), PRIOR)).isEmpty();
        assertThat(Wear.of(runs(0, 1).subList(0, 3), PRIOR)).isEmpty();
        WearRun same = new WearRun("a", 50, 10, 6.2);
        assertThat(Wear.of(List.of(same, same, same, same, same), PRIOR)).isEmpty();
        assertThatThrownBy(() -> new WearRun("a", -1, 10, 6.2)).isInstanceOf(IllegalArgumentException.class);
    }
}
