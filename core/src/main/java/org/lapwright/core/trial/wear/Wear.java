package org.lapwright.core.trial.wear;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lapwright.core.stats.StudentTail;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.units.Interval;

/**
 * What wear does to the pace: log pace = level of the group + slope · laps run, by least squares with the weights of the paces. Each group
 * has a level of its own, so a new set-up or another lane is not taken for wear. What else changes with time, as rails, weather and
 * practice, looks the same.
 *
 * @param perLap slope, a share of the pace for each lap run
 * @param interval where that lies, 95 % by Student's t
 * @param meanLaps laps run on the average of the runs
 * @param paceS pace of the runs on the average, s
 * @param points the runs
 */
public record Wear(double perLap, Interval interval, double meanLaps, double paceS, List<Point> points) {
    private static final int LEAST_FREEDOM = 2;
    private static final double TAIL = 0.025;

    /** Copies the list. */
    public Wear {
        points = List.copyOf(points);
    }

    /**
     * A run against the level of its group.
     *
     * @param laps that the part had run
     * @param off log pace less that of its group at {@code meanLaps}
     */
    public record Point(double laps, double off) {}

    /** Weighted means of a group. */
    private static final class Level {
        private double weight;
        private double laps;
        private double log;

        void add(double w, double x, double y) {
            weight += w;
            laps += w * (x - laps) / weight;
            log += w * (y - log) / weight;
        }
    }

    /**
     * The wear that runs show; empty where there are too few, or all of a group at one number of laps. A run alone in its group tells
     * nothing of wear and is left out.
     *
     * @param all runs in any order
     * @param prior what is known of the driver's noise
     */
    public static Optional<Wear> of(List<WearRun> all, NoisePrior prior) {
        Map<String, Long> sizes = all.stream().collect(Collectors.groupingBy(WearRun::group, Collectors.counting()));
        return ofGroups(
                all.stream()
                        .filter(run -> sizes.getOrDefault(run.group(), 0L) > 1)
                        .toList(),
                prior);
    }

    private static Optional<Wear> ofGroups(List<WearRun> runs, NoisePrior prior) {
        Map<String, Level> levels = new HashMap<>();
        Level all = new Level();
        List<Level> own = new ArrayList<>();
        for (WearRun run : runs) {
            double weight = weight(run, prior);
            Level level = levels.computeIfAbsent(run.group(), name -> new Level());
            level.add(weight, run.laps(), Math.log(run.paceS()));
            all.add(weight, run.laps(), Math.log(run.paceS()));
            own.add(level);
        }
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (int i = 0; i < runs.size(); i++) {
            double weight = weight(runs.get(i), prior);
            double x = runs.get(i).laps() - own.get(i).laps;
            double y = Math.log(runs.get(i).paceS()) - own.get(i).log;
            sxx += weight * x * x;
            sxy += weight * x * y;
            syy += weight * y * y;
        }
        int freedom = runs.size() - levels.size() - 1;
        if (freedom < LEAST_FREEDOM || !(sxx > 0)) {
            return Optional.empty();
        }
        double slope = sxy / sxx;
        double error = Math.sqrt(Math.max(0, syy - slope * sxy) / freedom / sxx);
        double half = StudentTail.quantile(TAIL, freedom) * error;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Level level = own.get(i);
            double off = Math.log(runs.get(i).paceS()) - level.log + slope * (level.laps - all.laps);
            points.add(new Point(runs.get(i).laps(), off));
        }
        Interval interval = new Interval(slope - half, slope + half);
        return Optional.of(new Wear(slope, interval, all.laps, Math.exp(all.log), points));
    }

    /** One over the variance of the pace, in units of the scatter of a lap: laps that hang together, and a level of each run. */
    private static double weight(WearRun run, NoisePrior prior) {
        double phi = prior.autocorrelation();
        return 1 / ((1 + phi) / ((1 - phi) * run.cleanLaps()) + prior.runShare());
    }

    /** Whether it is sure that laps make a difference. */
    public boolean isSure() {
        return !interval.contains(0);
    }
}
