package org.lapwright.core.car.shelf;

/**
 * A run that a part was on the car for.
 *
 * @param driven the run
 * @param lapsBefore laps that the part had run before it
 */
public record RunOnPart(LapsDriven driven, long lapsBefore) {}
