package org.lapwright.core.doubt;

/**
 * One number that goes into a computation, and how sure it is.
 *
 * @param value the best estimate
 * @param uncertainty its standard uncertainty, one standard deviation, in the same unit; 0 when exact
 * @param degreesOfFreedom how well the uncertainty itself is known; infinite when it is taken as known
 */
public record Input(double value, double uncertainty, double degreesOfFreedom) {
    /** Checks each number. */
    public Input {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("an input is " + value + "; it must be a finite number");
        }
        if (!(uncertainty >= 0 && Double.isFinite(uncertainty))) {
            throw new IllegalArgumentException(
                    "a standard uncertainty is " + uncertainty + "; it must be 0 or a positive number");
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom are " + degreesOfFreedom
                    + "; they must be above 0, or infinite when the uncertainty is known");
        }
    }

    /** An input whose uncertainty is taken as known. */
    public static Input of(double value, double uncertainty) {
        return new Input(value, uncertainty, Double.POSITIVE_INFINITY);
    }
}
