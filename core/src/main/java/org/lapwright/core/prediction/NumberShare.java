package org.lapwright.core.prediction;

import org.lapwright.core.car.NamedReading;

/**
 * How much of the doubt about a computed number one number of the set-up brings.
 *
 * @param number the number, with its place and doubt
 * @param perUnit change of the computed number for one unit of this one; infinite where no slope could be found
 * @param amount change of the computed number for one standard deviation of this one, with its sign
 */
public record NumberShare(NamedReading number, double perUnit, double amount) {}
