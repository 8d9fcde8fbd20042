package org.lapwright.core.trial;

import org.lapwright.core.units.Interval;

/**
 * Laps lost to an off, before and after.
 *
 * @param before offs and laps before the change
 * @param after offs and laps after the change
 * @param fisherP two-sided p of Fisher's exact test that both rates are the same
 */
public record OffRates(Rate before, Rate after, double fisherP) {
    /**
     * A rate with its interval.
     *
     * @param offs times the car came off, as far as time can tell
     * @param laps laps driven, a missed or doubled trigger counted as what was driven
     * @param interval 95 % Wilson interval of the rate
     */
    public record Rate(int offs, int laps, Interval interval) {}
}
