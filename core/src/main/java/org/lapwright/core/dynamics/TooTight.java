package org.lapwright.core.dynamics;

/**
 * The tail cannot follow the guide round a bend: it would stand across the slot.
 *
 * @param atM where, m from the timing line
 * @param radiusM plan radius of the lane there, m
 */
public record TooTight(double atM, double radiusM) implements LapOutcome {
    @Override
    public double lapS() {
        return Double.POSITIVE_INFINITY;
    }
}
