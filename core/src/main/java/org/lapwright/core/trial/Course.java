package org.lapwright.core.trial;

import java.util.Arrays;
import java.util.Optional;
import org.lapwright.core.laps.ClockStep;
import org.lapwright.core.laps.LapSorter;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.stats.RobustLocation;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;

/**
 * The laps of a session in the order driven, as plain arrays, and which of them count after any number of laps.
 *
 * <p>A live verdict after lap 20 knows 20 laps: kinds are decided from those alone, side by side.
 */
final class Course {
    private final double[] seconds;
    private final int[] run;
    private final boolean[] after;
    private final Word[] words;

    /** The racer's word on a lap. */
    private enum Word {
        NONE,
        COUNTS,
        LEFT_OUT
    }

    Course(Session session) {
        int n = session.laps();
        seconds = new double[n];
        run = new int[n];
        after = new boolean[n];
        words = new Word[n];
        int i = 0;
        int r = 0;
        for (DrivenRun driven : session.runs()) {
            for (TimedLap lap : driven.run().laps()) {
                seconds[i] = lap.seconds();
                run[i] = r;
                after[i] = driven.side() == Side.AFTER;
                words[i] = word(driven.run().wordOn(lap.number()));
                i++;
            }
            r++;
        }
    }

    private static Word word(Optional<Overrule> overrule) {
        if (overrule.isEmpty()) {
            return Word.NONE;
        }
        return overrule.get().kind().counts() ? Word.COUNTS : Word.LEFT_OUT;
    }

    int laps() {
        return seconds.length;
    }

    boolean isAfter(int lap) {
        return after[lap];
    }

    /**
     * Which of the first {@code laps} laps count, filled in for one side.
     *
     * @param laps how many have been driven
     * @param afterSide the side to fill in
     * @param counts where to write; entries of the other side stay as they are
     */
    void count(int laps, boolean afterSide, boolean[] counts) {
        double[] times = new double[laps];
        boolean[] startsRun = new boolean[laps];
        int[] lapOf = new int[laps];
        int n = 0;
        int lastRun = -1;
        for (int i = 0; i < laps; i++) {
            if (after[i] != afterSide) {
                continue;
            }
            counts[i] = false;
            if (words[i] != Word.LEFT_OUT) {
                times[n] = seconds[i];
                startsRun[n] = run[i] != lastRun;
                lastRun = run[i];
                lapOf[n++] = i;
            }
        }
        LapSorter sorter = new LapSorter(Arrays.copyOf(times, n), Arrays.copyOf(startsRun, n));
        for (int k = 0; k < n; k++) {
            counts[lapOf[k]] = words[lapOf[k]] == Word.COUNTS || sorter.kind(k).counts();
        }
    }

    /** Which of the first {@code laps} laps count, filled in for both sides. */
    void count(int laps, boolean[] counts) {
        count(laps, false, counts);
        count(laps, true, counts);
    }

    /**
     * The laps that count, laid out with their log times.
     *
     * @param laps how many have been driven
     * @param counts which of them count
     */
    Layout layOut(int laps, boolean[] counts) {
        int n = 0;
        for (int i = 0; i < laps; i++) {
            n += counts[i] ? 1 : 0;
        }
        double[] y = new double[n];
        int[] runs = new int[n];
        boolean[] sides = new boolean[n];
        n = 0;
        for (int i = 0; i < laps; i++) {
            if (counts[i]) {
                y[n] = Math.log(seconds[i]);
                runs[n] = run[i];
                sides[n++] = after[i];
            }
        }
        return Layout.of(y, runs, sides);
    }

    /** The laps that count once all have been driven. */
    Layout layOut() {
        boolean[] counts = new boolean[laps()];
        count(laps(), counts);
        return layOut(laps(), counts);
    }

    /** Scatter that the clock's step alone gives, as a share of the lap; above 0. */
    double leastScatter() {
        return ClockStep.leastScatter(seconds);
    }

    /** Scatter of one press of a button, as a share of the lap. */
    double handNoise() {
        return HandTimed.PRESS_S / (seconds.length == 0 ? 1 : RobustLocation.median(seconds));
    }
}
