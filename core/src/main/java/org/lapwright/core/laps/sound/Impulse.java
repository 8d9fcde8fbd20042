package org.lapwright.core.laps.sound;

/**
 * The leading edge of a pulse.
 *
 * @param sample when, in samples from the beginning, with fractions
 * @param height of its peak, in full scale
 * @param overNoise height over the noise's standard deviation
 */
public record Impulse(double sample, double height, double overNoise) {}
