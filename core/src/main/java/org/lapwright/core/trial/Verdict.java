package org.lapwright.core.trial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.stats.model.RunGls;

/**
 * Did the change help, and how sure is that.
 *
 * @param decision on pace
 * @param difference after minus before; absent with too few laps
 * @param consistency on scatter and offs; absent with too few laps
 * @param needed how many more laps would settle it
 * @param decidedAtLap laps driven when a live verdict would first have been reached
 * @param before all laps before the change, pooled
 * @param after all laps after the change, pooled
 * @param runs the runs in the order driven
 * @param working the numbers behind it; absent with too few laps
 * @param caveats what to know beside it
 */
public record Verdict(
        Decision decision,
        Optional<Difference> difference,
        Optional<Consistency> consistency,
        LapsNeeded needed,
        OptionalInt decidedAtLap,
        Stint before,
        Stint after,
        List<JudgedRun> runs,
        Optional<Working> working,
        Set<Caveat> caveats) {
    /** So many laps a side a racer drives for one change, to say what they could show. */
    public static final int USUAL_LAPS_A_SIDE = 20;

    /** Copies the collections. */
    public Verdict {
        runs = List.copyOf(runs);
        caveats = Set.copyOf(caveats);
    }

    /**
     * The least gain that this driver could see with such laps: what a new session of {@value #USUAL_LAPS_A_SIDE} laps a side tells in
     * four of five cases, s. Absent with too few laps.
     */
    public OptionalDouble leastSeenS() {
        if (working.isEmpty() || before.paceS().isEmpty() || !(working.get().lapScatter() > 0)) {
            return OptionalDouble.empty();
        }
        Working numbers = working.get();
        Forecast forecast = new Forecast(
                new RunGls(numbers.autocorrelation(), numbers.runShare()), numbers.alpha(), numbers.lapScatter());
        return OptionalDouble.of(before.paceS().getAsDouble() * Math.expm1(forecast.least(USUAL_LAPS_A_SIDE)));
    }
}
