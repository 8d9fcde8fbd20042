package org.lapwright.core.trial;

import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;
import org.lapwright.core.stats.NormalTail;
import org.lapwright.core.stats.model.RunGls;
import org.lapwright.core.stats.sequential.GroupSequentialBoundary;
import org.lapwright.core.trial.session.RunPlan;

/** How many more laps would tell a difference with a power of {@value #POWER}. */
final class Forecast {
    static final double POWER = 0.8;

    private static final Plan NEW_SESSION = Plan.of(RunPlan.parse("ABBA x 10"));
    private static final Layout NOTHING = Layout.of(new double[0], new int[0], new boolean[0]);

    private final RunGls covariance;
    private final GroupSequentialBoundary boundary;
    private final double scatter;

    /**
     * A forecast for a driver.
     *
     * @param covariance how laps hang together
     * @param alpha chance of a false alarm
     * @param scatter standard deviation of a lap, in log lap time, above 0
     */
    Forecast(RunGls covariance, double alpha, double scatter) {
        this.covariance = covariance;
        this.boundary = GroupSequentialBoundary.of(alpha);
        this.scatter = scatter;
    }

    /**
     * More laps a side in the order of a plan.
     *
     * @param plan the plan
     * @param driven the laps that count so far
     * @param delta the difference, in log lap time
     * @return at least 1; empty when driving on cannot tell it within reason
     */
    OptionalInt drivingOn(Plan plan, Layout driven, double delta) {
        double planned = information(plan.layout());
        return lapsEachWay(more -> {
            double information = information(plan.extended(driven, more));
            return planned > 0 ? power(delta, information, information / planned) : 0;
        });
    }

    /**
     * Laps a side of a new session, A B B A in runs of ten, planned so from the start.
     *
     * @param delta the difference, in log lap time
     * @return at least 1; empty beyond reason
     */
    OptionalInt newSession(double delta) {
        return lapsEachWay(laps -> power(delta, information(NEW_SESSION.extended(NOTHING, laps)), 1));
    }

    /**
     * The least difference that a new session tells with a power of {@value #POWER}.
     *
     * @param lapsASide laps of each side, A B B A in runs of ten
     * @return in log lap time
     */
    double least(int lapsASide) {
        double information = information(NEW_SESSION.extended(NOTHING, 2 * lapsASide));
        return (boundary.z(1) + NormalTail.quantile(1 - POWER)) * scatter / Math.sqrt(information);
    }

    private double power(double delta, double information, double fraction) {
        return information <= 0
                ? 0
                : NormalTail.probability(boundary.z(fraction) - Math.abs(delta) * Math.sqrt(information) / scatter);
    }

    private double information(Layout layout) {
        return covariance.information(layout.runs(), layout.nuisance(), layout.effect());
    }

    /** The least number of laps with enough power, by doubling and halving; power rises with laps where it matters. */
    private static OptionalInt lapsEachWay(IntToDoubleFunction powerOfLaps) {
        int most = 2 * LapsNeeded.BEYOND_REASON;
        int enough = 2;
        while (powerOfLaps.applyAsDouble(enough) < POWER) {
            if (enough >= most) {
                return OptionalInt.empty();
            }
            enough = Math.min(most, 2 * enough);
        }
        int tooFew = enough / 2;
        while (enough - tooFew > 2) {
            int middle = (enough + tooFew) / 2;
            if (powerOfLaps.applyAsDouble(middle) < POWER) {
                tooFew = middle;
            } else {
                enough = middle;
            }
        }
        return OptionalInt.of((enough + 1) / 2);
    }
}
