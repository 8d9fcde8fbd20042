package org.lapwright.core.laps;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.lapwright.core.units.Interval;

/**
 * What a list of laps amounts to. Numbers that the laps are too few for are absent, never NaN.
 *
 * @param laps every lap with its kind, in the order driven
 * @param cleanLaps how many count
 * @param paceS pace: Hodges–Lehmann estimate of the clean laps, s
 * @param spreadS spread: Q_n of the clean laps, s; from 2 clean laps
 * @param madS spread by 1.4826 times the median absolute deviation, s, beside it; from 2 clean laps
 * @param bestS best clean lap, s; falls with the number of laps, so nothing is judged by it
 * @param heldS the lap that four in five clean laps meet, s; from 2 clean laps
 * @param heldIntervalS 95 % interval of {@code heldS} by order statistics, s; absent when there are too few laps
 * @param driftSPerLap Theil–Sen slope of the clean laps over their order, s a lap; from 3 clean laps
 * @param autocorrelation lag-1 autocorrelation, corrected for the number of laps; from 5 clean laps
 * @param effectiveLaps how many independent laps these are worth; from 5 clean laps
 * @param timePerLapS all the time of the run over all its laps, incidents included, s
 */
public record Stint(
        List<Lap> laps,
        int cleanLaps,
        OptionalDouble paceS,
        OptionalDouble spreadS,
        OptionalDouble madS,
        OptionalDouble bestS,
        OptionalDouble heldS,
        Optional<Interval> heldIntervalS,
        OptionalDouble driftSPerLap,
        OptionalDouble autocorrelation,
        OptionalDouble effectiveLaps,
        OptionalDouble timePerLapS) {
    /** Copies the list. */
    public Stint {
        laps = List.copyOf(laps);
    }

    /** How many laps are of this kind. */
    public int count(LapKind kind) {
        return (int) laps.stream().filter(lap -> lap.kind() == kind).count();
    }

    /** How many times the car came off, as far as time can tell. */
    public int offs() {
        return (int) laps.stream().filter(lap -> lap.kind().isOff()).count();
    }
}
