/**
 * Checks, and the quantity types that records hold in workshop units.
 *
 * <p>Nothing here knows a car or a track. Equations elsewhere use SI {@code double}s whose names carry the unit
 * ({@code massKg}, {@code radiusM}).
 */
package org.lapwright.core.units;
