package org.lapwright.core.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.lapwright.core.stats.RobustScale;
import org.lapwright.core.stats.StudentTail;
import org.lapwright.core.stats.sequential.GroupSequentialBoundary;
import org.lapwright.core.stats.sequential.RepeatedInterval;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * Looks at laps that a person timed: neighbouring laps share a press, so a late press makes one lap long and the next
 * one short. In the mean of a run all presses but the first and the last cancel; so run means are judged.
 *
 * <p>The variance of a run's mean is that of its laps, autocorrelated, plus the run's own level, plus two presses over
 * the number of laps squared. The press is taken to scatter by {@value #PRESS_S} s (measured on 4304 readings: American
 * Journal of Physics 87 (2019), 110). Weighted least squares on the run means, with drift from four runs on.
 */
final class HandTimed {
    /** Standard deviation of one press, s. */
    static final double PRESS_S = 0.07;

    private static final double TAMED_AT = 3;

    /** Standard deviation of the drift over 60 laps that is reckoned with where too few runs can show it. */
    private static final double DRIFT_BELIEF = 0.01;

    private static final int RUNS_FOR_DRIFT = 4;
    /** The press is only roughly known, so most of the scatter is always taken for the laps' own. */
    private static final double LEAST_SHARE_OF_SCATTER = 0.7;

    private final NoisePrior prior;
    private final GroupSequentialBoundary boundary;
    private final double pressShare;

    /**
     * A judge of hand-timed laps.
     *
     * @param settings what the racer fixed
     * @param pressShare standard deviation of a press as a share of the lap
     */
    HandTimed(TrialSettings settings, double pressShare) {
        this.prior = settings.prior();
        this.boundary = GroupSequentialBoundary.of(settings.alpha());
        this.pressShare = pressShare;
    }

    /** One run: mean log pace, its variance in squares of the scatter, drift column, side. */
    private record RunMean(double y, double variance, double drift, boolean after) {}

    /** A weighted fit of the effect; perDrift is what a unit of drift that is not in the model adds to it. */
    private record Fit(double delta, double information, double chiSquare, int freedom, double perDrift) {}

    Optional<Look> look(Layout layout, int lapsDriven, Layout planned, Monitor.Result lapFit) {
        double[] about = Residuals.aboutRunMedians(layout, lapFit.residuals());
        double timed = RobustScale.qn(about);
        double floor = Math.max(LEAST_SHARE_OF_SCATTER * timed, 1e-6);
        double scatter = Math.sqrt(Math.max(floor * floor, timed * timed - 2 * pressShare * pressShare));
        double presses = 2 * (pressShare / scatter) * (pressShare / scatter);
        double warmUp = lapFit.fit().coefficient(Layout.WARM_UP);
        List<RunMean> runs = runMeans(layout, tamed(layout.y(), lapFit.residuals(), timed), presses, warmUp);
        Fit fit = fit(runs);
        double plannedInformation =
                fit(runMeans(planned, planned.y(), presses, 0)).information();
        if (!(fit.information() > 0 && plannedInformation > 0)) {
            return Optional.empty();
        }
        double fromRuns = fit.freedom() >= 2 ? Math.sqrt(fit.chiSquare() / fit.freedom()) : 0;
        double drift = DRIFT_BELIEF * fit.perDrift();
        double se = Math.hypot(Math.max(scatter, fromRuns) / Math.sqrt(fit.information()), drift);
        int freedom = Math.max(1, layout.rows() - runs.size() - 1);
        double fraction = fit.information() / plannedInformation;
        double half = RepeatedInterval.of(boundary, fraction, fit.delta(), se, freedom)
                .halfWidth();
        return Optional.of(new Look(
                lapsDriven,
                fit.delta(),
                se,
                freedom,
                fit.information(),
                fraction,
                StudentTail.toNormal(fit.delta() / se, freedom),
                boundary.z(fraction),
                half));
    }

    /** Log times with what is left beyond a few scatters cut off: a fault that the kinds missed must not move a mean. */
    private static double[] tamed(double[] y, double[] residuals, double scatter) {
        double most = TAMED_AT * Math.max(scatter, 1e-6);
        double[] tamed = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            tamed[i] = y[i] - residuals[i] + Math.max(-most, Math.min(most, residuals[i]));
        }
        return tamed;
    }

    /**
     * The mean of each run with the warm-up taken out, since a run just begun is all warm-up. The prior's
     * autocorrelation stands, because shared presses hide the laps' own.
     */
    private List<RunMean> runMeans(Layout layout, double[] y, double presses, double warmUp) {
        double phi = prior.autocorrelation();
        List<RunMean> means = new ArrayList<>();
        double[] warmUps = layout.allColumns()[Layout.WARM_UP];
        int[] starts = layout.runStarts();
        for (int r = 0; r + 1 < starts.length; r++) {
            int from = starts[r];
            int to = starts[r + 1];
            int n = to - from;
            double total = 0;
            for (int k = from; k < to; k++) {
                total += Math.exp(y[k] - warmUp * warmUps[k]);
            }
            double variance = (1 + phi) / ((1 - phi) * n) + prior.runShare() + presses / ((double) n * n);
            double middle = 0.5 * (from + to - 1) / Layout.DRIFT_LAPS;
            means.add(new RunMean(Math.log(total / n), variance, middle, layout.isAfter(from)));
        }
        return means;
    }

    /** Weighted least squares of the run means on level, drift (from four runs on) and side. */
    private static Fit fit(List<RunMean> runs) {
        List<double[]> before = new ArrayList<>();
        before.add(column(runs, run -> 1));
        if (runs.size() >= RUNS_FOR_DRIFT) {
            before.add(column(runs, RunMean::drift));
        }
        double[] effect = column(runs, run -> run.after() ? 1 : 0);
        double[] y = column(runs, RunMean::y);
        List<double[]> basis = new ArrayList<>();
        for (double[] column : before) {
            remove(column, basis);
            if (dot(column, column) > 1e-12) {
                basis.add(column);
            }
        }
        remove(effect, basis);
        remove(y, basis);
        double information = dot(effect, effect);
        if (information < 1e-12) {
            return new Fit(0, 0, 0, 0, 0);
        }
        double delta = dot(effect, y) / information;
        double rest = Math.max(0, dot(y, y) - delta * delta * information);
        double perDrift = runs.size() >= RUNS_FOR_DRIFT ? 0 : dot(effect, column(runs, RunMean::drift)) / information;
        return new Fit(delta, information, rest, runs.size() - basis.size() - 1, perDrift);
    }

    private static double[] column(List<RunMean> runs, ToDoubleFunction<RunMean> value) {
        return runs.stream()
                .mapToDouble(run -> value.applyAsDouble(run) / Math.sqrt(run.variance()))
                .toArray();
    }

    private static void remove(double[] column, List<double[]> basis) {
        for (double[] other : basis) {
            double along = dot(column, other) / dot(other, other);
            for (int i = 0; i < column.length; i++) {
                column[i] -= along * other[i];
            }
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
