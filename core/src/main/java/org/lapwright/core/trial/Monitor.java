package org.lapwright.core.trial;

import java.util.Optional;
import org.lapwright.core.stats.HuberFit;
import org.lapwright.core.stats.HuberRegression;
import org.lapwright.core.stats.StudentTail;
import org.lapwright.core.stats.model.RunGls;
import org.lapwright.core.stats.model.RunGlsFit;
import org.lapwright.core.stats.sequential.GroupSequentialBoundary;
import org.lapwright.core.stats.sequential.RepeatedInterval;
import org.lapwright.core.trial.session.NoisePrior;

/**
 * One look at a before/after comparison: a robust fit, its scatter, and the boundary that makes looking again and again
 * honest.
 *
 * <p>Huber's regression (two scales) on level, drift, warm-up and effect; pseudo-values; the autocorrelation of what is
 * left, steadied by the prior; generalised least squares with that autocorrelation and the prior's run-to-run share;
 * the statistic against the extendable O'Brien–Fleming boundary on the share of the plan's information.
 *
 * <p>Sources: Huber and Ronchetti 2009, Robust Statistics, sections 7.8 and 7.10; Marriott and Pope 1954, Biometrika 41;
 * O'Brien and Fleming 1979, Biometrics 35; Lan and DeMets 1983, Biometrika 70; Jennison and Turnbull 2000, Group
 * Sequential Methods, chapters 7, 9 and 11.
 */
final class Monitor {
    private static final double TUNING = 2;
    private static final double MOST_AUTOCORRELATION = 0.8;
    /** Laps that count before a first look. */
    static final int LEAST_LAPS = 10;

    /** Laps that count on either side before a first look. */
    static final int LEAST_LAPS_A_SIDE = 5;

    private static final int LEAST_FREEDOM = 5;
    private static final int MOST_STEPS = 50;

    /** Residuals that change by less than this share are settled; the last look is fitted to the last digit. */
    private static final double SETTLED = 1e-4;

    private final GroupSequentialBoundary boundary;
    private final NoisePrior prior;
    private final boolean independent;
    private final double leastScatter;
    private final HuberRegression regression = new HuberRegression(TUNING, MOST_STEPS, SETTLED);
    private final HuberRegression finest = HuberRegression.of(TUNING);
    private final HuberRegression.Work work;
    private Optional<HuberFit> last = Optional.empty();
    private double plannedWhenIndependent = Double.NaN;

    /**
     * A monitor for one session, asked look after look.
     *
     * @param alpha chance of a false alarm over all looks
     * @param prior what is believed of the noise
     * @param independent whether neighbouring values and runs share nothing, as the residuals of a fit do
     * @param leastScatter standard deviation below which a scatter is that of the clock
     * @param mostLaps as many rows as will ever be looked at
     */
    Monitor(double alpha, NoisePrior prior, boolean independent, double leastScatter, int mostLaps) {
        this.boundary = GroupSequentialBoundary.of(alpha);
        this.prior = prior;
        this.independent = independent;
        this.leastScatter = leastScatter;
        this.work = new HuberRegression.Work(Math.max(1, mostLaps), 4);
    }

    /** What a look found beside its numbers. */
    record Result(
            Look look, double autocorrelation, double runShare, double scatter, HuberFit fit, double[] residuals) {}

    /**
     * Looks.
     *
     * @param layout the laps that count so far
     * @param lapsDriven how many laps have been driven, for the record
     * @param plan the plan's laps
     * @return the look; empty while there are too few laps or the sides cannot be told apart
     */
    Optional<Result> look(Layout layout, int lapsDriven, Layout plan) {
        int n = layout.rows();
        if (isTooSmall(layout)) {
            return Optional.empty();
        }
        HuberFit fit = last.isPresent()
                ? regression.refit(last.get(), layout.y(), layout.allColumns(), n, work)
                : regression.fit(layout.y(), layout.allColumns(), n, work);
        last = Optional.of(fit);
        return result(fit, layout, lapsDriven, plan);
    }

    /** The same look from scratch and to the last digit, so that the numbers shown do not depend on earlier looks. */
    Optional<Result> finestLook(Layout layout, int lapsDriven, Layout plan) {
        return isTooSmall(layout)
                ? Optional.empty()
                : result(finest.fit(layout.y(), layout.allColumns(), layout.rows(), work), layout, lapsDriven, plan);
    }

    private static boolean isTooSmall(Layout layout) {
        int after = layout.rowsAfter();
        return layout.rows() < LEAST_LAPS || after < LEAST_LAPS_A_SIDE || layout.rows() - after < LEAST_LAPS_A_SIDE;
    }

    private Optional<Result> result(HuberFit fit, Layout layout, int lapsDriven, Layout plan) {
        int n = layout.rows();
        if (!fit.estimable(3) || n - fit.rank() < LEAST_FREEDOM) {
            return Optional.empty();
        }
        double scale = Math.max(fit.scale() * Math.sqrt(n / (double) (n - fit.rank())), leastScatter);
        double[] clipped = clippedResiduals(n, scale);
        double[] pseudo = pseudoValues(layout, clipped);
        double phi = independent ? 0 : autocorrelation(layout, clipped);
        double gamma = independent ? 0 : prior.runShare();
        RunGls gls = new RunGls(phi, gamma);
        Optional<RunGlsFit.Effect> effect = gls.fit(layout.runs(), layout.nuisance(), layout.effect(), pseudo)
                .effect();
        double planned = plannedInformation(gls, plan);
        return effect.filter(found -> planned > 0)
                .map(found -> new Result(
                        lookAt(found, lapsDriven, planned), phi, gamma, scatterOf(found), fit, residuals(n)));
    }

    /** Of independent values the plan's information is always the same. */
    private double plannedInformation(RunGls gls, Layout plan) {
        if (!independent || Double.isNaN(plannedWhenIndependent)) {
            plannedWhenIndependent = gls.information(plan.runs(), plan.nuisance(), plan.effect());
        }
        return plannedWhenIndependent;
    }

    private Look lookAt(RunGlsFit.Effect effect, int lapsDriven, double planned) {
        double se = scatterOf(effect) / Math.sqrt(effect.s());
        double fraction = effect.s() / planned;
        double z = StudentTail.toNormal(effect.delta() / se, effect.nu());
        // Of the scatter only the decision is wanted, and the interval's quantile takes as long as all the rest.
        double halfWidth = independent
                ? Double.POSITIVE_INFINITY
                : RepeatedInterval.of(boundary, fraction, effect.delta(), se, effect.nu())
                        .halfWidth();
        return new Look(
                lapsDriven, effect.delta(), se, effect.nu(), effect.s(), fraction, z, boundary.z(fraction), halfWidth);
    }

    private double scatterOf(RunGlsFit.Effect effect) {
        return Math.max(effect.sigma(), leastScatter);
    }

    private double[] residuals(int n) {
        double[] residuals = new double[n];
        for (int i = 0; i < n; i++) {
            residuals[i] = work.residual(i);
        }
        return residuals;
    }

    private double[] clippedResiduals(int n, double scale) {
        double[] clipped = new double[n];
        for (int i = 0; i < n; i++) {
            clipped[i] = Math.max(-TUNING * scale, Math.min(TUNING * scale, work.residual(i)));
        }
        return clipped;
    }

    /** The fit plus what is left after clipping, stretched by the share that was not clipped. */
    private double[] pseudoValues(Layout layout, double[] clipped) {
        int n = clipped.length;
        int whole = 0;
        for (int i = 0; i < n; i++) {
            whole += clipped[i] == work.residual(i) ? 1 : 0;
        }
        double stretch = n / (double) Math.max(1, whole);
        double[] pseudo = new double[n];
        for (int i = 0; i < n; i++) {
            pseudo[i] = layout.y()[i] - work.residual(i) + stretch * clipped[i];
        }
        return pseudo;
    }

    /** Lag-1 within runs, corrected for the few laps, drawn towards the prior. */
    private double autocorrelation(Layout layout, double[] residuals) {
        double products = 0;
        double squares = 0;
        int n = residuals.length;
        for (int i = 0; i < n; i++) {
            squares += residuals[i] * residuals[i];
            if (i > 0 && layout.run(i) == layout.run(i - 1)) {
                products += residuals[i] * residuals[i - 1];
            }
        }
        double raw = squares > 0 ? products / squares : 0;
        double corrected = raw + (1 + 4 * raw) / n;
        double weight = prior.autocorrelationLaps();
        double drawn = (n * corrected + weight * prior.autocorrelation()) / (n + weight);
        return Math.max(0, Math.min(MOST_AUTOCORRELATION, drawn));
    }
}
