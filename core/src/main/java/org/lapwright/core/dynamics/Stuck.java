package org.lapwright.core.dynamics;

/**
 * The car cannot be driven round, because at one place no speed keeps every limit.
 *
 * @param limit the limit that is in the way
 * @param atM where, m from the timing line
 */
public record Stuck(Limit limit, double atM) implements LapOutcome {
    @Override
    public double lapS() {
        return Double.POSITIVE_INFINITY;
    }
}
