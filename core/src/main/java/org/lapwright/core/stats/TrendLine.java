package org.lapwright.core.stats;

/**
 * A straight line y = intercept + slope x.
 *
 * @param intercept value at x = 0, in units of y
 * @param slope change for one unit of x, in units of y over units of x
 */
public record TrendLine(double intercept, double slope) {
    /**
     * The line at one place.
     *
     * @param x the place
     * @return intercept + slope x
     */
    public double at(double x) {
        return intercept + slope * x;
    }
}
