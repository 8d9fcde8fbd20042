package org.lapwright.core.units;

/**
 * A closed interval of numbers; infinite ends are allowed, NaN is not.
 *
 * @param low lower end
 * @param high upper end, at least {@code low}
 */
public record Interval(double low, double high) {
    /** Checks the order of the ends. */
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("interval from " + low + " to " + high + " is upside down");
        }
        low += 0.0;
        high += 0.0;
    }

    /** Whether the value lies inside or on an end. */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    /** Whether this lies inside the other. */
    public boolean isWithin(Interval outer) {
        return outer.low <= low && high <= outer.high;
    }

    /** Both ends multiplied by a positive factor. */
    public Interval times(double factor) {
        return new Interval(low * factor, high * factor);
    }

    /** Whether both ends are finite. */
    public boolean isBounded() {
        return !Double.isInfinite(low) && !Double.isInfinite(high);
    }
}
