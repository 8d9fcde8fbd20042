package org.lapwright.core.trial.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.lapwright.core.laps.ClockStep;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.Sorting;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.stats.many.ShrunkMeans;
import org.lapwright.core.trial.ladder.LaneCorrection.Cell;
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
 * every run has of its own. Laps on a fast lane are no merit of the car: paces are those on the average of the lanes
 * ({@link LaneCorrection}).
 */
public final class Ladder {
    private static final double SURE = 0.9;
    private static final double NORMAL_95 = 1.959963984540054;
    private static final int LEAST_LAPS = 2;

    private Ladder() {}

    /** A car that is ranked. */
    private record Ranked(String car, int laps) {}

    /**
     * The ladder, fastest first.
     *
     * @param cars the cars with their runs on one track; those without 2 clean laps on any lane are left out
     * @param prior what is known of the driver's noise
     */
    public static Ranking rank(List<CarLaps> cars, NoisePrior prior) {
        List<Ranked> ranked = new ArrayList<>();
        List<String> lanes = new ArrayList<>();
        List<Cell> cells = new ArrayList<>();
        for (CarLaps car : cars) {
            int before = cells.size();
            int laps = 0;
            for (Map.Entry<String, List<TimedRun>> onLane : byLane(car).entrySet()) {
                Optional<Stint> stint = stint(onLane.getValue());
                if (stint.isPresent()) {
                    if (!lanes.contains(onLane.getKey())) {
                        lanes.add(onLane.getKey());
                    }
                    cells.add(new Cell(
                            ranked.size(),
                            lanes.indexOf(onLane.getKey()),
                            Math.log(stint.get().paceS().orElseThrow()),
                            standardError(stint.get(), onLane.getValue().size(), prior)));
                    laps += stint.get().cleanLaps();
                }
            }
            if (cells.size() > before) {
                ranked.add(new Ranked(car.car(), laps));
            }
        }
        if (ranked.isEmpty()) {
            return Ranking.NONE;
        }
        LaneCorrection corrected = new LaneCorrection(cells, ranked.size(), lanes.size());
        return new Ranking(entries(ranked, corrected), effects(lanes, corrected));
    }

    private static Map<String, List<TimedRun>> byLane(CarLaps car) {
        Map<String, List<TimedRun>> lanes = new LinkedHashMap<>();
        for (LaneRun each : car.runs()) {
            lanes.computeIfAbsent(each.lane(), lane -> new ArrayList<>()).add(each.run());
        }
        return lanes;
    }

    private static Optional<Stint> stint(List<TimedRun> runs) {
        Stint stint = Stint.of(Sorting.sort(runs).stream().flatMap(List::stream).toList());
        return stint.cleanLaps() >= LEAST_LAPS ? Optional.of(stint) : Optional.empty();
    }

    private static List<LaneEffect> effects(List<String> lanes, LaneCorrection corrected) {
        return IntStream.range(0, lanes.size())
                .mapToObj(lane -> new LaneEffect(
                        lanes.get(lane), corrected.lane(lane), corrected.laneError(lane), corrected.isTold(lane)))
                .sorted(Comparator.comparingDouble(LaneEffect::log))
                .toList();
    }

    /** Standard error of a log pace: laps that hang together, runs that each have a level of their own. */
    private static double standardError(Stint stint, int runs, NoisePrior prior) {
        double pace = stint.paceS().orElseThrow();
        double[] seconds = stint.laps().stream().mapToDouble(Lap::seconds).toArray();
        double scatter = Math.max(stint.spreadS().orElseThrow() / pace, ClockStep.leastScatter(seconds));
        double phi = prior.autocorrelation();
        return scatter * Math.sqrt((1 + phi) / ((1 - phi) * stint.cleanLaps()) + prior.runShare() / Math.max(1, runs));
    }

    private static List<LadderEntry> entries(List<Ranked> cars, LaneCorrection corrected) {
        double[] logPaces =
                IntStream.range(0, cars.size()).mapToDouble(corrected::car).toArray();
        double[] errors =
                IntStream.range(0, cars.size()).mapToDouble(corrected::ownError).toArray();
        double[][] laneParts =
                IntStream.range(0, cars.size()).mapToObj(corrected::lanePart).toArray(double[][]::new);
        ShrunkMeans shrunk = ShrunkMeans.of(logPaces, errors).withShared(laneParts, errors);
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
                    Math.exp(logPaces[car]),
                    Math.exp(shrunk.mean(car)),
                    new Interval(Math.exp(shrunk.mean(car) - half), Math.exp(shrunk.mean(car) + half)),
                    i + 1 < order.size() ? shrunk.chanceLower(car, order.get(i + 1)) : 1));
        }
        return entries;
    }
}
