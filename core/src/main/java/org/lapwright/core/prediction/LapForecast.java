package org.lapwright.core.prediction;

import java.util.List;
import java.util.Optional;
import org.lapwright.core.dynamics.LapOutcome;
import org.lapwright.core.units.Interval;

/**
 * The fastest lap of a set-up and how sure it is. All times in s.
 *
 * @param central the lap with the numbers as written
 * @param linearS interval by the law of propagation; empty when there is no central lap
 * @param sampledS interval of the laps of drawn cars; empty when fewer than two of them get round
 * @param shares what each number in doubt brings, the most first; empty when there is no central lap
 * @param draws how the drawn cars fared
 * @param caveats what to know before believing it
 */
public record LapForecast(
        LapOutcome central,
        Optional<Interval> linearS,
        Optional<Interval> sampledS,
        List<NumberShare> shares,
        Draws draws,
        List<ForecastCaveat> caveats) {
    /** Copies the lists. */
    public LapForecast {
        shares = List.copyOf(shares);
        caveats = List.copyOf(caveats);
    }

    /**
     * How the drawn cars fared.
     *
     * @param count how many were sent round
     * @param stuck how many of them have no lap
     * @param refused how many more draws made no sense as a car and were drawn again
     * @param meanS mean lap of those that got round, if any did
     * @param deviationS standard deviation of their laps; 0 when fewer than two got round
     */
    public record Draws(int count, int stuck, int refused, Optional<Double> meanS, double deviationS) {
        /** Chance that a car within the doubts cannot be driven round, 0 to 1. */
        public double chanceOfNoLap() {
            return (double) stuck / count;
        }
    }

    /** The interval to show: that of the drawn cars, which holds with kinks and bends too; else the linear one. */
    public Optional<Interval> intervalS() {
        return sampledS.or(() -> linearS);
    }

    /** The interval to show, unless nobody said how sure any number is: its width of 0 then says nothing. */
    public Optional<Interval> knownS() {
        return caveats.stream().anyMatch(ForecastCaveat.NothingInDoubt.class::isInstance)
                ? Optional.empty()
                : intervalS();
    }
}
