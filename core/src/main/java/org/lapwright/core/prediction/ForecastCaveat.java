package org.lapwright.core.prediction;

/** Something to know before believing how sure a forecast is. */
public sealed interface ForecastCaveat {
    /**
     * The two methods part: over the width of the doubt the lap time is no straight line of the numbers. Believe the drawn cars.
     *
     * @param apartS greatest distance between ends of the two intervals, s
     * @param allowedS how far they may be apart, s
     */
    record MethodsPart(double apartS, double allowedS) implements ForecastCaveat {}

    /**
     * Some cars within the doubts cannot be driven round; the interval is that of the others.
     *
     * @param chance share of the drawn cars, above 0
     */
    record MayNotGetRound(double chance) implements ForecastCaveat {}

    /** No number of the set-up has a doubt: the width of the interval is 0 because nobody said how sure the numbers are. */
    record NothingInDoubt() implements ForecastCaveat {}
}
