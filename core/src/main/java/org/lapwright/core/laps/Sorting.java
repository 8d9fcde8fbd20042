package org.lapwright.core.laps;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Gives every lap of some runs its kind: by the rules of {@link LapSorter}, or by the racer's word where there is one. */
public final class Sorting {
    private Sorting() {}

    /**
     * Sorts the laps of runs that were driven with one set-up, so that their scatter can be pooled.
     *
     * <p>Laps that the racer left out take no part in the rules, so adding one never moves another lap's kind.
     *
     * @param runs in the order driven
     * @return the laps of each run with their kinds, in the same order
     */
    public static List<List<Lap>> sort(List<TimedRun> runs) {
        LapSorter ruled = sorter(runs, false);
        boolean leftOut = runs.stream()
                .anyMatch(run ->
                        run.overrules().stream().anyMatch(word -> !word.kind().counts()));
        LapSorter counted = leftOut ? sorter(runs, true) : ruled;
        List<List<Lap>> sorted = new ArrayList<>();
        int all = 0;
        int kept = 0;
        for (TimedRun run : runs) {
            List<Lap> laps = new ArrayList<>(run.laps().size());
            for (TimedLap timed : run.laps()) {
                Optional<Overrule> word = run.wordOn(timed.number());
                boolean out = word.isPresent() && !word.get().kind().counts();
                Lap lap = out ? lap(timed, ruled, all) : lap(timed, counted, kept);
                laps.add(word.map(lap::overruledBy).orElse(lap));
                all++;
                kept += out ? 0 : 1;
            }
            sorted.add(laps);
        }
        return sorted;
    }

    private static Lap lap(TimedLap timed, LapSorter sorter, int index) {
        LapKind kind = sorter.kind(index);
        return new Lap(timed, kind, kind, sorter.pace(index), sorter.limit(index), Optional.empty());
    }

    private static LapSorter sorter(List<TimedRun> runs, boolean withoutLeftOut) {
        int count = runs.stream().mapToInt(run -> run.laps().size()).sum();
        double[] seconds = new double[count];
        boolean[] startsRun = new boolean[count];
        int n = 0;
        for (TimedRun run : runs) {
            boolean start = true;
            for (TimedLap lap : run.laps()) {
                Optional<Overrule> word = run.wordOn(lap.number());
                if (withoutLeftOut && word.isPresent() && !word.get().kind().counts()) {
                    continue;
                }
                startsRun[n] = start;
                seconds[n++] = lap.seconds();
                start = false;
            }
        }
        return new LapSorter(Arrays.copyOf(seconds, n), Arrays.copyOf(startsRun, n));
    }
}
