package org.lapwright.core.trial.ladder;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.laps.ClockStep;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.Sorting;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.stats.many.ShrunkMeans;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.units.Interval;

/**
 * Ranks the cars on one track by pace, with how sure the order is.
 *
 * <p>A car with eight lucky laps must not sit on top of one with eighty: log paces are drawn towards their common centre
 * by as much as each is uncertain, and cars whose order is less than nine in ten sure share a place.
 *
 * <p>Sources: Laird and Louis 1989, Journal of Educational Statistics 14; Goldstein and Spiegelhalter 1996, Journal of
 * the Royal Statistical Society A 159. The standard error of a pace allows for autocorrelation and for the level that
 * every run has of its own.
 */
public final class Ladder {
    private static final double SURE = 0.9;
    private static final double NORMAL_95 = 1.959963984540054;
    private static final int LEAST_LAPS = 2;

    private Ladder() {}

    /** A car's log pace and its standard error. */
    private record Measured(String car, int laps, double paceS, double standardError) {}

    /**
     * The ladder, fastest first.
     *
     * @param cars the cars with their runs on one track; those with fewer than 2 clean laps are left out
     * @param prior what is known of the driver's noise
     */
    public static List<LadderEntry> rank(List<CarLaps> cars, NoisePrior prior) {
        List<Measured> measured = new ArrayList<>();
        for (CarLaps car : cars) {
            Stint stint = Stint.of(
                    Sorting.sort(car.runs()).stream().flatMap(List::stream).toList());
            if (stint.cleanLaps() >= LEAST_LAPS) {
                measured.add(new Measured(
                        car.car(),
                        stint.cleanLaps(),
                        stint.paceS().orElseThrow(),
                        standardError(stint, car.runs().size(), prior)));
            }
        }
        return measured.isEmpty() ? List.of() : entries(measured);
    }

    /** Standard error of a log pace: laps that hang together, runs that each have a level of their own. */
    private static double standardError(Stint stint, int runs, NoisePrior prior) {
        double pace = stint.paceS().orElseThrow();
        double[] seconds = stint.laps().stream().mapToDouble(Lap::seconds).toArray();
        double scatter = Math.max(stint.spreadS().orElseThrow() / pace, ClockStep.leastScatter(seconds));
        double phi = prior.autocorrelation();
        return scatter * Math.sqrt((1 + phi) / ((1 - phi) * stint.cleanLaps()) + prior.runShare() / Math.max(1, runs));
    }

    private static List<LadderEntry> entries(List<Measured> cars) {
        double[] logPaces =
                cars.stream().mapToDouble(car -> Math.log(car.paceS())).toArray();
        double[] errors = cars.stream().mapToDouble(Measured::standardError).toArray();
        ShrunkMeans shrunk = ShrunkMeans.of(logPaces, errors);
        List<LadderEntry> entries = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        for (List<Integer> group : shrunk.groups(SURE)) {
            int place = order.size() + 1;
            order.addAll(group);
            group.forEach(car -> places.add(place));
        }
        for (int i = 0; i < order.size(); i++) {
            int car = order.get(i);
            double half = NORMAL_95 * shrunk.se(car);
            entries.add(new LadderEntry(
                    cars.get(car).car(),
                    places.get(i),
                    cars.get(car).laps(),
                    cars.get(car).paceS(),
                    Math.exp(shrunk.mean(car)),
                    new Interval(Math.exp(shrunk.mean(car) - half), Math.exp(shrunk.mean(car) + half)),
                    i + 1 < order.size() ? shrunk.chanceLower(car, order.get(i + 1)) : 1));
        }
        return entries;
    }
}
