package org.lapwright.core.stats;

/**
 * A range of values.
 *
 * @param low lower end
 * @param high upper end, not below {@code low}
 */
public record Interval(double low, double high) {
    /** Checks the order. */
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("interval from %s to %s; its ends must ascend".formatted(low, high));
        }
    }

    /**
     * Whether a value lies inside, ends included.
     *
     * @param value the value
     * @return true if it does
     */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }
}
