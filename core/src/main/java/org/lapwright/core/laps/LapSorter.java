package org.lapwright.core.laps;

import java.util.Arrays;

/**
 * Tells clean laps from faults by time alone, blind to which side of a comparison the laps are on.
 *
 * <p>Every lap is held against the running pace (the median of the plausible laps up to {@value #REACH} to either
 * side) and the scatter of all the laps given (1.4826 MAD of what is left). In order:
 *
 * <ol>
 *   <li>two successive rows that add up to about one lap, the shorter under {@value #DOUBLE_SHARE} of the pace: both
 *       {@code double}; a row under half the pace with no such neighbour: {@code double} as well;
 *   <li>near 2, 3 or 4 times the pace and not right after an off: {@code missed}; near it but on the flank, or after
 *       an off: {@code off-or-missed};
 *   <li>over the limit, pace times 1 + clamp(5 scatter / pace, 6 %, 14 %): {@code first} for the first lap of a run,
 *       {@code off} from 12 % on, {@code slow} below.
 * </ol>
 *
 * <p>Under {@value #FEW} laps only what cannot be a lap is marked. The order of magnitude of the bounds is common
 * practice; their values were chosen on labelled streams.
 */
public final class LapSorter {
    /** From this many laps on the full rules apply. */
    public static final int FEW = 6;

    /** How many laps to either side the running pace looks at. */
    public static final int REACH = 7;

    /** The shorter row of a split lap is under this share of the pace. */
    public static final double DOUBLE_SHARE = 0.6;

    /** From this share over the pace on, a long lap is an off. */
    public static final double OFF_SHARE = 0.12;

    private static final double LEAST_LIMIT = 0.06;
    private static final double GREATEST_LIMIT = 0.14;
    private static final double STOPPED_LAPS = 5;
    private static final int MOST_MISSED = 4;

    private final double[] seconds;
    private final boolean[] startsRun;
    private final double[] pace;
    private final double scatter;
    private final LapKind[] kinds;

    /**
     * Sorts laps.
     *
     * @param seconds lap times in the order driven, s, all positive; not altered and not to be altered afterwards
     * @param startsRun whether each lap is the first of its run; as long as {@code seconds}
     */
    public LapSorter(double[] seconds, boolean[] startsRun) {
        this.seconds = seconds;
        this.startsRun = startsRun;
        this.pace = runningPace(seconds);
        this.scatter = scatter(seconds, pace);
        this.kinds = new LapKind[seconds.length];
        if (seconds.length < FEW) {
            markImpossible();
        } else {
            markDoubles();
            markLong();
        }
    }

    /** What a lap was. */
    public LapKind kind(int lap) {
        return kinds[lap];
    }

    /** Pace around a lap, s. */
    public double pace(int lap) {
        return pace[lap];
    }

    /** Slowest clean time around a lap, s. */
    public double limit(int lap) {
        double share = Math.min(GREATEST_LIMIT, Math.max(LEAST_LIMIT, 5 * scatter / pace[lap]));
        return pace[lap] * (1 + share);
    }

    private void markImpossible() {
        for (int i = 0; i < seconds.length; i++) {
            if (seconds.length > 2 && seconds[i] < 0.5 * pace[i]) {
                kinds[i] = LapKind.DOUBLE;
            } else if (seconds[i] > STOPPED_LAPS * pace[i]) {
                kinds[i] = LapKind.OFF;
            } else {
                kinds[i] = LapKind.CLEAN;
            }
        }
    }

    private void markDoubles() {
        for (int i = 0; i < seconds.length; i++) {
            if (kinds[i] != null) {
                continue;
            }
            if (i + 1 < seconds.length && !startsRun[i + 1] && isSplitLap(i)) {
                kinds[i] = LapKind.DOUBLE;
                kinds[i + 1] = LapKind.DOUBLE;
            } else if (seconds[i] < 0.5 * pace[i]) {
                kinds[i] = LapKind.DOUBLE;
            }
        }
    }

    /** The bounce takes its time from the record after it, so a clean lap before a bounce must not be drawn in. */
    private boolean isSplitLap(int i) {
        double first = seconds[i];
        double second = seconds[i + 1];
        double tolerance = Math.max(5 * scatter, LEAST_LIMIT * pace[i]);
        boolean addsUp = Math.abs(first + second - pace[i]) <= tolerance;
        boolean shortOne = Math.min(first, second) < DOUBLE_SHARE * pace[i];
        boolean firstIsShort = first < second || first < pace[i] - tolerance;
        return addsUp && shortOne && firstIsShort;
    }

    private void markLong() {
        for (int i = 0; i < seconds.length; i++) {
            if (kinds[i] == null) {
                kinds[i] = kindOfLong(i);
            }
        }
    }

    private LapKind kindOfLong(int i) {
        double over = seconds[i] / pace[i];
        if (seconds[i] <= limit(i)) {
            return LapKind.CLEAN;
        }
        double laps = Math.rint(over);
        if (laps >= 2 && laps <= MOST_MISSED) {
            double from = Math.abs(seconds[i] - laps * pace[i]);
            boolean afterOff = i > 0 && !startsRun[i] && kinds[i - 1] != null && kinds[i - 1].isOff();
            if (from <= nearMultiple(i, laps)) {
                return afterOff ? LapKind.OFF_OR_MISSED : LapKind.MISSED;
            }
            if (from <= LEAST_LIMIT * laps * pace[i]) {
                return LapKind.OFF_OR_MISSED;
            }
        }
        if (startsRun[i]) {
            return LapKind.FIRST;
        }
        return over > 1 + OFF_SHARE ? LapKind.OFF : LapKind.SLOW;
    }

    private double nearMultiple(int i, double laps) {
        return Math.max(4 * scatter * Math.sqrt(laps), 0.03 * pace[i]);
    }

    private static double[] runningPace(double[] seconds) {
        double[] pace = new double[seconds.length];
        double[] window = new double[2 * REACH + 1];
        for (int i = 0; i < seconds.length; i++) {
            int from = Math.max(0, Math.min(i - REACH, seconds.length - window.length));
            int to = Math.min(seconds.length, Math.max(i + REACH + 1, window.length));
            int size = to - from;
            System.arraycopy(seconds, from, window, 0, size);
            Arrays.sort(window, 0, size);
            pace[i] = medianOfPlausible(window, size);
        }
        return pace;
    }

    /** Median of those between half and one and a half times the median. */
    private static double medianOfPlausible(double[] sorted, int size) {
        double middle = median(sorted, 0, size);
        int from = 0;
        while (sorted[from] < 0.5 * middle) {
            from++;
        }
        int to = size;
        while (sorted[to - 1] > 1.5 * middle) {
            to--;
        }
        return to > from ? median(sorted, from, to) : middle;
    }

    private static double scatter(double[] seconds, double[] pace) {
        double[] apart = new double[seconds.length];
        int n = 0;
        for (int i = 0; i < seconds.length; i++) {
            double over = seconds[i] / pace[i];
            if (over > 0.5 && over < 1.5) {
                apart[n++] = Math.abs(seconds[i] - pace[i]);
            }
        }
        Arrays.sort(apart, 0, n);
        return n == 0 ? 0 : 1.4826 * median(apart, 0, n);
    }

    private static double median(double[] sorted, int from, int to) {
        int middle = (from + to) >>> 1;
        return (to - from) % 2 == 1 ? sorted[middle] : 0.5 * (sorted[middle - 1] + sorted[middle]);
    }
}
