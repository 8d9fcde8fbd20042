package org.lapwright.core.stats.sequential;

import org.lapwright.core.stats.StudentTail;

/**
 * A confidence interval that holds at all looks together and never has to be taken back.
 *
 * @see <a href="https://doi.org/10.1201/9780367805326">Jennison and Turnbull 2000, Group Sequential Methods, chapter
 *     9</a>
 * @param estimate the estimate
 * @param halfWidth half of the width, in the same unit, at least 0
 */
public record RepeatedInterval(double estimate, double halfWidth) {
    /**
     * The interval at one look: the estimate plus and minus the t quantile of the boundary's tail times the standard
     * error.
     *
     * @param boundary the boundary
     * @param fraction information so far over the planned one, at least 0
     * @param estimate the estimate
     * @param se its standard error, at least 0
     * @param nu its degrees of freedom, at least 1
     * @return the interval
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static RepeatedInterval of(
            GroupSequentialBoundary boundary, double fraction, double estimate, double se, double nu) {
        return new RepeatedInterval(estimate, StudentTail.quantile(boundary.tail(fraction), nu) * se);
    }

    /**
     * Lower end.
     *
     * @return estimate less half of the width
     */
    public double low() {
        return estimate - halfWidth;
    }

    /**
     * Upper end.
     *
     * @return estimate plus half of the width
     */
    public double high() {
        return estimate + halfWidth;
    }
}
