package org.lapwright.core.stats.model;

import java.util.Arrays;

/** Which values belong to which run, and where in it: holes are allowed, going back is not. Immutable. */
public final class RunLayout {
    private final int[] starts;
    private final int[] gaps;

    private RunLayout(int[] starts, int[] gaps) {
        this.starts = starts;
        this.gaps = gaps;
    }

    /**
     * Describes values in the order measured.
     *
     * @param run number of the run of each value; the values of a run follow each other
     * @param position place of each value in its run, ascending; a hole widens the distance of its neighbours
     * @return the layout
     * @throws IllegalArgumentException if the lengths differ, a run comes back after another one, or a place does not
     *     come after the one before it
     */
    public static RunLayout of(int[] run, int[] position) {
        if (run.length != position.length) {
            throw new IllegalArgumentException(
                    "%d run numbers and %d places; they must be as many".formatted(run.length, position.length));
        }
        int n = run.length;
        int[] gaps = new int[n];
        int[] starts = new int[n + 1];
        int runs = 0;
        for (int i = 0; i < n; i++) {
            if (i == 0 || run[i] != run[i - 1]) {
                requireNew(run, starts, runs, i);
                starts[runs++] = i;
            } else {
                gaps[i] = position[i] - position[i - 1];
                if (gaps[i] < 1) {
                    throw new IllegalArgumentException(
                            "value %d is at place %d of run %d, after place %d; places ascend"
                                    .formatted(i + 1, position[i], run[i], position[i - 1]));
                }
            }
        }
        starts[runs] = n;
        return new RunLayout(Arrays.copyOf(starts, runs + 1), gaps);
    }

    private static void requireNew(int[] run, int[] starts, int runs, int i) {
        for (int r = 0; r < runs; r++) {
            if (run[starts[r]] == run[i]) {
                throw new IllegalArgumentException(
                        "run %d comes back at value %d; its values must follow each other".formatted(run[i], i + 1));
            }
        }
    }

    /**
     * Number of values.
     *
     * @return the number, 0 or more
     */
    public int size() {
        return gaps.length;
    }

    /**
     * Number of runs.
     *
     * @return the number, 0 or more
     */
    public int runs() {
        return starts.length - 1;
    }

    /** First value of a run; for {@code run = runs()} the number of values. */
    int start(int run) {
        return starts[run];
    }

    /** Distance of a value from the one before it in its run; 0 for the first. */
    int gap(int value) {
        return gaps[value];
    }
}
