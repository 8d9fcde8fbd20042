package org.lapwright.core.trial;

/** Something a racer should know beside a verdict; the pages turn it into a sentence. */
public enum Caveat {
    /** A side is missing or has fewer than 5 clean laps, or there are fewer than 10 in all. */
    TOO_FEW_LAPS,
    /** One run a side: how much a run differs from the next cannot be seen, a stated belief stands in for it. */
    ONE_RUN_A_SIDE,
    /** Laps timed by hand share presses: run means were judged, not laps. */
    HAND_TIMED,
    /** No plan was stated: the runs as driven were taken for it. Looking as one goes needs a plan first. */
    PLAN_AS_DRIVEN,
    /** More laps than planned: the boundary was extended. */
    BEYOND_PLAN,
    /** A live verdict would have been reached earlier and stands, though the interval has opened again since. */
    DECIDED_EARLIER,
    /** The clock's steps are coarse against the scatter of the laps. */
    COARSE_CLOCK,
    /** The first run was an after run: a track, car or driver warming up then looks like the change. */
    AFTER_FIRST,
    /** Many laps were left out on one side, so pace on clean laps may flatter it. */
    UNEVEN_EXCLUSIONS,
    /** There was nothing in the laps but one value: the scatter was taken from the clock's step. */
    NO_SCATTER
}
