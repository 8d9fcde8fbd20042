package org.lapwright.core.laps;

import java.util.List;
import java.util.Optional;

/**
 * Laps of one set-up on one lane, hands off the car, with the racer's word on single laps.
 *
 * @param laps in the order driven
 * @param overrules the racer's word on some of them; at most one a lap
 */
public record TimedRun(List<TimedLap> laps, List<Overrule> overrules) {
    /** Copies both lists. */
    public TimedRun {
        laps = List.copyOf(laps);
        overrules = List.copyOf(overrules);
    }

    /** A run from bare times, numbered from 1. */
    public static TimedRun of(double... seconds) {
        TimedLap[] laps = new TimedLap[seconds.length];
        for (int i = 0; i < seconds.length; i++) {
            laps[i] = new TimedLap(i + 1, seconds[i]);
        }
        return new TimedRun(List.of(laps), List.of());
    }

    /** The racer's word on a lap, if there is one; the last one if there are several. */
    public Optional<Overrule> wordOn(int lap) {
        for (int i = overrules.size() - 1; i >= 0; i--) {
            if (overrules.get(i).lap() == lap) {
                return Optional.of(overrules.get(i));
            }
        }
        return Optional.empty();
    }

    /** The first {@code count} laps of this run. */
    public TimedRun upTo(int count) {
        return count >= laps.size() ? this : new TimedRun(laps.subList(0, count), overrules);
    }
}
