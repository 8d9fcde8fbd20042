/**
 * Tracks: pieces or a drawn centre line, lanes, power, and what a lane looks like by arc length.
 *
 * <p>Pieces start at the timing line, in the direction of travel. Left turns and left offsets are positive; positive
 * bank raises the outside of its turn. Lengths are measured along the surface, so the sine of a grade is rise over
 * length. {@link org.lapwright.core.track.LaneCells} is what the equations of motion reckon on: cells whose edges lie on
 * the joints between pieces, because a grid that misses the joints is wrong by up to 0.3 % of the lap.
 *
 * <p>A piece may have a surface of its own, and lanes may move sideways along it, where they narrow or swap:
 * {@link org.lapwright.core.track.PieceExtras}.
 *
 * <p>Not here: crests and dips as curvature in the vertical plane (a grade changes at once at a joint), and the jolt
 * of a badly made joint.
 */
package org.lapwright.core.track;
