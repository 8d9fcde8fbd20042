/**
 * Laps and what kind each one is: decided by stated rules before anyone sees which set-up won.
 *
 * <p>A {@link org.lapwright.core.laps.TimedLap} is what was timed and never changes. A
 * {@link org.lapwright.core.laps.Lap} adds the kind that {@link org.lapwright.core.laps.LapSorter} found, with the
 * numbers it went by, or the racer's own word. A {@link org.lapwright.core.laps.Stint} describes the laps that stand.
 *
 * <p>Sources: Hampel's identifier as in L. Davies and U. Gather, "The identification of multiple outliers", Journal of
 * the American Statistical Association 88 (1993); the estimates of a stint in {@code org.lapwright.core.stats}. The
 * rules know times only: an off that costs exactly one lap looks like a missed gate, and then they say so.
 */
package org.lapwright.core.laps;
