package org.lapwright.core.trial.ladder;

import org.lapwright.core.units.Interval;

/**
 * One car's place on the ladder.
 *
 * @param car its name
 * @param place its place; cars that cannot be told apart share one
 * @param laps clean laps behind its pace
 * @param measuredS pace of its own laps alone, s
 * @param paceS pace after shrinkage towards the others, s: what to expect of it
 * @param intervalS 95 % interval of {@code paceS}, s
 * @param chanceAheadOfNext chance that it is really faster than the car listed next; 1 for the last
 */
public record LadderEntry(
        String car,
        int place,
        int laps,
        double measuredS,
        double paceS,
        Interval intervalS,
        double chanceAheadOfNext) {}
