/**
 * The car as the racer writes it down: parts, set-up and bench measurements, in workshop units.
 *
 * <p>Every part is a record that cannot hold nonsense; its numbers are {@link org.lapwright.core.units.Reading}s, so
 * each may carry one standard deviation of doubt. A set-up is never edited: a change makes the next one.
 *
 * <p>No equation of motion is here. {@code core.dynamics} turns a set-up into SI numbers once and reckons with those.
 * Axes: x ahead of the rear axle, y left of the centre line, z up from the track.
 */
package org.lapwright.core.car;
