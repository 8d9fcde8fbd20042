package org.lapwright.core.units;

/**
 * A number as somebody entered it, in the unit that its key names, and how far to trust it.
 *
 * @param value the number
 * @param plusMinus one standard deviation of doubt in the same unit; 0 when taken as exact
 */
public record Reading(double value, double plusMinus) {
    /** Checks that both are finite and the doubt is not negative. */
    public Reading {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a reading is " + value + "; it must be a finite number");
        }
        if (!(plusMinus >= 0 && Double.isFinite(plusMinus))) {
            throw new IllegalArgumentException("plus_minus is " + plusMinus + "; it must be 0 or a positive number");
        }
        value += 0.0;
        plusMinus += 0.0;
    }

    /** A number taken as exact. */
    public static Reading exact(double value) {
        return new Reading(value, 0);
    }

    /** The same doubt about another value. */
    public Reading withValue(double newValue) {
        return new Reading(newValue, plusMinus);
    }

    /** Whether anybody doubts it. */
    public boolean isUncertain() {
        return plusMinus > 0;
    }
}
