package org.lapwright.core.trial;

import java.util.Optional;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.stats.RobustScale;
import org.lapwright.core.units.Interval;

/** Puts together what a session says on consistency. */
final class SpreadComparison {
    private static final int LEAST_LAPS_A_SIDE = 5;

    private SpreadComparison() {}

    static Consistency of(SessionWatch watch, Stint before, Stint after, double alpha) {
        Layout layout = watch.layout();
        double[] about =
                Residuals.aboutRunMedians(layout, watch.latest().orElseThrow().residuals());
        double[] residualsBefore = Residuals.ofSide(layout, about, false);
        double[] residualsAfter = Residuals.ofSide(layout, about, true);
        return new Consistency(
                decision(watch.spread().decision()),
                ratio(residualsBefore, residualsAfter, watch.leastScatter()),
                Optional.empty(),
                new OffRates(rate(before), rate(after), alpha));
    }

    private static SteadyDecision decision(Decision onRoots) {
        return switch (onRoots) {
            case FASTER -> SteadyDecision.STEADIER;
            case SLOWER -> SteadyDecision.WILDER;
            case LEVEL, MORE_LAPS -> SteadyDecision.MORE_LAPS;
        };
    }

    private static Optional<Double> ratio(double[] before, double[] after, double leastScatter) {
        if (before.length < LEAST_LAPS_A_SIDE || after.length < LEAST_LAPS_A_SIDE) {
            return Optional.empty();
        }
        double spreadBefore = RobustScale.qn(before);
        double spreadAfter = RobustScale.qn(after);
        return spreadBefore < leastScatter || spreadAfter < leastScatter
                ? Optional.empty()
                : Optional.of(spreadAfter / spreadBefore);
    }

    private static OffRates.Rate rate(Stint stint) {
        return new OffRates.Rate(stint.offs(), stint.lapsDriven(), new Interval(0, 1));
    }
}
