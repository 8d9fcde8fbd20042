package org.lapwright.core.fit;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.Sorting;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.stats.RobustScale;
import org.lapwright.core.stats.design.RunNoise;
import org.lapwright.core.track.Lane;
import org.lapwright.core.trial.session.NoisePrior;

/**
 * The pace that one run held, and how far it may be off.
 *
 * @param setUp what the car was
 * @param lanes the lane, or all that it may have been
 * @param paceS pace, s
 * @param deviation standard deviation of the pace, as a share of it: the scatter of laps and that from run to run
 * @param laps how many clean laps it comes from
 */
public record HeldPace(SetUp setUp, List<Lane> lanes, double paceS, double deviation, int laps) {
    /** What a lap usually scatters, as a share of it, and how many laps that belief weighs: common practice, no source. */
    private static final double USUAL_SCATTER = 0.01;

    private static final int LAPS_OF_BELIEF = 5;

    /** Efficiency of the Hodges–Lehmann estimate for normal laps, 3/π (Hodges and Lehmann 1963). */
    private static final double EFFICIENCY = 3 / Math.PI;

    /** Checks the numbers. */
    public HeldPace {
        lanes = List.copyOf(lanes);
        if (lanes.isEmpty() || !(paceS > 0 && deviation > 0 && paceS * deviation < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a pace of %s s ± %s on %d lanes cannot be".formatted(paceS, deviation, lanes.size()));
        }
    }

    /**
     * A run, and what was driven.
     *
     * @param setUp what the car was
     * @param lanes the lane, or all that it may have been
     * @param run its laps
     */
    public record Driven(SetUp setUp, List<Lane> lanes, TimedRun run) {}

    /**
     * The paces of runs that one driver drove. Scatter is pooled over them; runs without a clean lap are left out.
     *
     * @param runs in the order driven
     * @param noise what is known of the driver's noise
     */
    public static List<HeldPace> of(List<Driven> runs, NoisePrior noise) {
        List<List<Lap>> sorted = new ArrayList<>();
        for (Driven run : runs) {
            sorted.addAll(Sorting.sort(List.of(run.run())));
        }
        double scatter = scatter(sorted);
        RunNoise within = new RunNoise(scatter, noise.autocorrelation(), scatter * Math.sqrt(noise.runShare()));
        List<HeldPace> paces = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Stint stint = Stint.of(sorted.get(i));
            if (stint.paceS().isPresent()) {
                paces.add(new HeldPace(
                        runs.get(i).setUp(),
                        runs.get(i).lanes(),
                        stint.paceS().getAsDouble(),
                        Math.sqrt(within.meanVariance(stint.cleanLaps()) / EFFICIENCY),
                        stint.cleanLaps()));
            }
        }
        return List.copyOf(paces);
    }

    /** Scatter of a lap about its run's pace, as a share of it. */
    private static double scatter(List<List<Lap>> runs) {
        List<Double> off = new ArrayList<>();
        for (List<Lap> run : runs) {
            Stint stint = Stint.of(run);
            if (stint.cleanLaps() >= 2) {
                double pace = stint.paceS().orElseThrow();
                run.stream().filter(Lap::counts).forEach(lap -> off.add(Math.log(lap.seconds() / pace)));
            }
        }
        double found = off.size() < 2
                ? USUAL_SCATTER
                : RobustScale.qn(off.stream().mapToDouble(Double::doubleValue).toArray());
        int weight = off.size();
        double square =
                (weight * found * found + LAPS_OF_BELIEF * USUAL_SCATTER * USUAL_SCATTER) / (weight + LAPS_OF_BELIEF);
        return Math.sqrt(square);
    }
}
