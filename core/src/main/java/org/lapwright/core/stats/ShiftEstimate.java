package org.lapwright.core.stats;

import org.lapwright.core.units.Interval;

/**
 * By how much one sample lies above another.
 *
 * @param shift the estimate, in the unit of the values
 * @param interval interval for the shift
 * @param coverage confidence of the interval if the distributions differ by a shift only; below the level asked for if
 *     the samples are too small for it
 */
public record ShiftEstimate(double shift, Interval interval, double coverage) {}
