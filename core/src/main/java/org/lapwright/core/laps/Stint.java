package org.lapwright.core.laps;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import org.lapwright.core.stats.Autocorrelation;
import org.lapwright.core.stats.Quantile;
import org.lapwright.core.stats.RobustLocation;
import org.lapwright.core.stats.RobustScale;
import org.lapwright.core.stats.TheilSen;
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
    /** "The pace you can hold": the time that this share of the clean laps meets. */
    public static final double HELD_SHARE = 0.8;

    /** Copies the list. */
    public Stint {
        laps = List.copyOf(laps);
    }

    /** Describes laps that were driven with one set-up. */
    public static Stint of(List<Lap> laps) {
        double[] clean =
                laps.stream().filter(Lap::counts).mapToDouble(Lap::seconds).toArray();
        int n = clean.length;
        OptionalDouble phi = from(5, n, () -> Autocorrelation.lag1Corrected(clean));
        return new Stint(
                laps,
                n,
                from(1, n, () -> RobustLocation.hodgesLehmann(clean)),
                from(2, n, () -> RobustScale.qn(clean)),
                from(2, n, () -> RobustScale.mad(clean)),
                from(1, n, () -> Arrays.stream(clean).min().orElseThrow()),
                from(2, n, () -> Quantile.type7(clean, HELD_SHARE)),
                n < 2 ? Optional.empty() : heldInterval(clean),
                from(3, n, () -> drift(clean)),
                phi,
                phi.isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Autocorrelation.effectiveSampleSize(n, Math.max(0, phi.getAsDouble()))),
                from(
                        1,
                        laps.size(),
                        () -> laps.stream().mapToDouble(Lap::seconds).sum() / lapsDriven(laps)));
    }

    private static OptionalDouble from(int least, int n, DoubleSupplier value) {
        return n < least ? OptionalDouble.empty() : OptionalDouble.of(value.getAsDouble());
    }

    private static Optional<Interval> heldInterval(double[] clean) {
        return Quantile.interval(clean, HELD_SHARE, 0.95).map(ranks -> new Interval(ranks.lower(), ranks.upper()));
    }

    private static double drift(double[] clean) {
        double[] order = new double[clean.length];
        Arrays.setAll(order, i -> i);
        return TheilSen.fit(order, clean).orElseThrow().slope();
    }

    /** Laps the car went round: a missed gate hides some, a double trigger makes one too many. */
    private static int lapsDriven(List<Lap> laps) {
        int doubled = 0;
        int driven = 0;
        for (Lap lap : laps) {
            if (lap.kind() == LapKind.DOUBLE) {
                doubled++;
            } else if (lap.kind() == LapKind.MISSED && lap.localPaceS() > 0) {
                driven += (int) Math.max(1, Math.rint(lap.seconds() / lap.localPaceS()));
            } else {
                driven++;
            }
        }
        return Math.max(1, driven + (doubled + 1) / 2);
    }

    /** How many laps the car went round: a missed gate hides some, a double trigger makes one too many. */
    public int lapsDriven() {
        return laps.isEmpty() ? 0 : lapsDriven(laps);
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
