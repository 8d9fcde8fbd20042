package org.lapwright.core.trial;

/**
 * The state of the pace comparison after one lap, in log lap time.
 *
 * @param lap laps driven in the session so far
 * @param delta estimate of log(after) - log(before)
 * @param standardError of {@code delta}; infinite when it cannot be told
 * @param degreesOfFreedom of the standard error
 * @param information s, in units of 1 / variance of a lap
 * @param informationFraction information over that of the whole plan
 * @param z the t statistic turned into a normal deviate of the same tail
 * @param boundary what |z| has to reach
 * @param halfWidth half the repeated confidence interval; infinite when it cannot be told or was not asked for
 */
public record Look(
        int lap,
        double delta,
        double standardError,
        double degreesOfFreedom,
        double information,
        double informationFraction,
        double z,
        double boundary,
        double halfWidth) {

    /** Whether the boundary is reached, which is to say that the interval excludes no difference. */
    public boolean crossed() {
        return Math.abs(z) >= boundary;
    }

    /** Whether the interval lies inside plus or minus the margin, in log lap time. */
    public boolean isLevel(double margin) {
        return Math.abs(delta) + halfWidth <= margin;
    }
}
