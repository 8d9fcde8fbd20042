package org.lapwright.core.trial;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.stats.Proportion;
import org.lapwright.core.stats.RobustScale;
import org.lapwright.core.stats.resampling.RunBootstrap;
import org.lapwright.core.stats.resampling.RunSample;

/** Puts together what a session says on consistency. */
final class SpreadComparison {
    /** The same laps always give the same interval. */
    private static final long SEED = 20_240_229;

    private static final int REPLICATES = 599;

    private SpreadComparison() {}

    static Consistency of(SessionWatch watch, Stint before, Stint after, double alpha) {
        Layout layout = watch.layout();
        double[] about =
                Residuals.aboutRunMedians(layout, watch.latest().orElseThrow().residuals());
        double[][] runsBefore = Residuals.runsOfSide(layout, about, false);
        double[][] runsAfter = Residuals.runsOfSide(layout, about, true);
        Optional<RunBootstrap.ScaleRatio> ratio = ratio(runsBefore, runsAfter, watch.leastScatter(), alpha);
        return new Consistency(
                decision(watch.spread().decision()),
                ratio.map(RunBootstrap.ScaleRatio::ratio),
                ratio.map(RunBootstrap.ScaleRatio::interval),
                offs(before, after));
    }

    private static SteadyDecision decision(Decision onRoots) {
        return switch (onRoots) {
            case FASTER -> SteadyDecision.STEADIER;
            case SLOWER -> SteadyDecision.WILDER;
            case LEVEL, MORE_LAPS -> SteadyDecision.MORE_LAPS;
        };
    }

    /** Absent where a side has too few laps, or scatters no more than its clock. */
    private static Optional<RunBootstrap.ScaleRatio> ratio(
            double[][] before, double[][] after, double leastScatter, double alpha) {
        for (double[][] side : List.of(before, after)) {
            double[] all = Arrays.stream(side).flatMapToDouble(Arrays::stream).toArray();
            if (all.length < Monitor.LEAST_LAPS_A_SIDE || RobustScale.qn(all) <= leastScatter) {
                return Optional.empty();
            }
        }
        RunBootstrap bootstrap = new RunBootstrap(REPLICATES, 1 - alpha);
        return Optional.of(bootstrap.scaleRatio(
                RunSample.of(before), RunSample.of(after), leastScatter, new SplittableRandom(SEED)));
    }

    private static OffRates offs(Stint before, Stint after) {
        Proportion earlier = new Proportion(before.offs(), before.lapsDriven());
        Proportion later = new Proportion(after.offs(), after.lapsDriven());
        return new OffRates(rate(earlier), rate(later), earlier.fisherExact(later));
    }

    private static OffRates.Rate rate(Proportion offs) {
        return new OffRates.Rate(offs.count(), offs.trials(), offs.wilson(0.95));
    }
}
