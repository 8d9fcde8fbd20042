package org.lapwright.core.trial;

import java.util.OptionalInt;
import org.lapwright.core.stats.NormalTail;
import org.lapwright.core.stats.model.RunGls;
import org.lapwright.core.stats.sequential.GroupSequentialBoundary;

/** How many more laps, in the order of the plan, would tell a difference with a power of {@value #POWER}. */
final class Forecast {
    static final double POWER = 0.8;

    private final Plan plan;
    private final Layout driven;
    private final RunGls covariance;
    private final GroupSequentialBoundary boundary;
    private final double planned;

    Forecast(Plan plan, Layout driven, RunGls covariance, double alpha) {
        this.plan = plan;
        this.driven = driven;
        this.covariance = covariance;
        this.boundary = GroupSequentialBoundary.of(alpha);
        this.planned = information(plan.layout());
    }

    /**
     * More laps a side for a difference.
     *
     * @param delta the difference, in log lap time
     * @param scatter standard deviation of a lap, in log lap time, above 0
     * @return at least 1; empty when it is beyond reason
     */
    OptionalInt lapsEachWay(double delta, double scatter) {
        int most = 2 * LapsNeeded.BEYOND_REASON;
        int enough = 2;
        while (power(enough, delta, scatter) < POWER) {
            if (enough >= most) {
                return OptionalInt.empty();
            }
            enough = Math.min(most, 2 * enough);
        }
        int tooFew = enough / 2;
        while (enough - tooFew > 2) {
            int middle = (enough + tooFew) / 2;
            if (power(middle, delta, scatter) < POWER) {
                tooFew = middle;
            } else {
                enough = middle;
            }
        }
        return OptionalInt.of((enough + 1) / 2);
    }

    private double power(int moreLaps, double delta, double scatter) {
        double information = information(plan.extended(driven, moreLaps));
        if (information <= 0 || planned <= 0) {
            return 0;
        }
        double needed = boundary.z(information / planned);
        return NormalTail.probability(needed - Math.abs(delta) * Math.sqrt(information) / scatter);
    }

    private double information(Layout layout) {
        return covariance.information(layout.runs(), layout.nuisance(), layout.effect());
    }
}
