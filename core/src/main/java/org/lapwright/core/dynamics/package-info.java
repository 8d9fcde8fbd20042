/**
 * A slot car as a body on a track, and the fastest lap it can do.
 *
 * <p>{@link org.lapwright.core.dynamics.ResolvedCar} is a set-up in SI units, worked out once;
 * {@link org.lapwright.core.dynamics.LapSolver} drives it round. The model is quasi-steady: the guide point follows the slot,
 * the rear axle trails (a tractrix), and at every place tyre grip, motor, brake, nose lift and tipping limit the
 * acceleration. The fastest speed under such limits is a time-optimal path parametrisation (Bobrow, Dubowsky and Gibson 1985;
 * Shin and McKay 1985; Pham and Pham 2018): with w = v² and u = dv/dt = ½ dw/ds all forces are affine in (w, u), a sweep
 * backwards finds at each place the greatest w from which the rest of the lap can still be driven, a sweep forwards takes as
 * much as it may. {@code docs/model/lap-solver.md} has the equations, the discretisation, the traps and the measured accuracy.
 *
 * <p>The model stops being valid where the tyres slide in earnest (slip angles, relaxation), where grip falls with load, where
 * chassis flex, body float or braid bounce matter, on crests and dips, and beyond about 45° between car and slot. It knows no
 * driver: its laps are a bound, not a forecast of what a hand holds.
 */
package org.lapwright.core.dynamics;
