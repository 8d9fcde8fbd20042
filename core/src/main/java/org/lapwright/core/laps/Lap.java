package org.lapwright.core.laps;

import java.util.Optional;

/**
 * A timed lap with its kind and the numbers the rule went by.
 *
 * @param timed the lap as timed
 * @param kind what it was: the racer's word if there is one, else the rule's
 * @param ruledKind what the rule alone says
 * @param localPaceS pace of the laps around it, s; 0 when there were too few laps to say
 * @param limitS slowest time that would still be clean there, s; 0 when there were too few laps to say
 * @param overrule the racer's word, if given
 */
public record Lap(
        TimedLap timed,
        LapKind kind,
        LapKind ruledKind,
        double localPaceS,
        double limitS,
        Optional<Overrule> overrule) {

    /** Place in its run, from 1. */
    public int number() {
        return timed.number();
    }

    /** Lap time, s. */
    public double seconds() {
        return timed.seconds();
    }

    /** Whether it counts for pace and spread. */
    public boolean counts() {
        return kind.counts();
    }

    /** The same lap under the racer's word. */
    public Lap overruledBy(Overrule word) {
        return new Lap(timed, word.kind(), ruledKind, localPaceS, limitS, Optional.of(word));
    }
}
