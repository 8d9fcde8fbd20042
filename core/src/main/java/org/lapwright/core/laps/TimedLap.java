package org.lapwright.core.laps;

import org.lapwright.core.units.Check;

/**
 * One lap as it was timed. Never altered: kinds and exclusions are derived from it.
 *
 * @param number place in its run as the racer counts, from 1
 * @param seconds lap time, s, from {@value #SHORTEST_S} to {@value #LONGEST_S}
 */
public record TimedLap(int number, double seconds) {
    /** Shorter than any gate bounces, s. */
    public static final double SHORTEST_S = 0.001;

    /** Nobody leaves a lap open longer than an hour, s. */
    public static final double LONGEST_S = 3600;

    /** Checks both numbers. */
    public TimedLap {
        Check.inRange(number, 1, Integer.MAX_VALUE, "lap number");
        Check.inRange(seconds, SHORTEST_S, LONGEST_S, "lap time", "s");
    }
}
