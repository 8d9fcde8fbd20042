/**
 * Learns a car from its laps: what the badly known numbers (grip, motor, pickup, magnet, drag) and the driver's share of the best
 * lap may be, given the bench measurements and the pace that was held ({@code docs/model/fit.md}).
 *
 * <p>Every unknown is written as a standard normal number z, so that what is believed beforehand is a unit ball. The best lap over
 * that ball is a {@link org.lapwright.core.fit.LapCurve}; {@link org.lapwright.core.fit.Laplace} finds the middle and the width of
 * what the laps leave, {@link org.lapwright.core.fit.EllipticalSlice} draws from it, {@link org.lapwright.core.fit.Chains} says
 * whether the draws can be believed, and the laps of the draws are driven once more by the solver itself.
 */
package org.lapwright.core.fit;
