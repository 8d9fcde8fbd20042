package org.lapwright.core.trial.wear;

/**
 * A run of a car with a part on it.
 *
 * @param group runs of one group differ by wear and chance alone: one set-up on one lane of one track
 * @param laps that the part had run in the middle of it
 * @param cleanLaps behind the pace, at least 1
 * @param paceS its pace, s
 */
public record WearRun(String group, double laps, int cleanLaps, double paceS) {
    /** Checks the numbers. */
    public WearRun {
        if (!(laps >= 0 && laps < Double.POSITIVE_INFINITY && cleanLaps > 0 && paceS > 0)) {
            throw new IllegalArgumentException(
                    "a run of %d clean laps at %s s after %s laps cannot be".formatted(cleanLaps, paceS, laps));
        }
    }
}
