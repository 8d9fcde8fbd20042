package org.lapwright.core.car;

import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

/**
 * One number of a set-up and where it stands.
 *
 * @param path section and key as in the car file, as {@code ballast[0].mass_g}
 * @param key its key, with the unit and the range that makes sense
 * @param reading the number
 */
public record NamedReading(String path, NumberKey key, Reading reading) {}
