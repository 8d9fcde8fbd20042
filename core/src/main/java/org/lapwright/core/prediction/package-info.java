/**
 * What a set-up will do, and how sure that is, given how sure its numbers are.
 *
 * <p>{@link org.lapwright.core.prediction.SetUpDoubt} carries the doubt of a set-up's numbers through any computation;
 * {@link org.lapwright.core.prediction.LapForecaster} through the fastest lap, by both methods of {@code core.doubt}. What is
 * predicted here is never mixed with what was measured: {@code core.trial} may not see this room.
 */
package org.lapwright.core.prediction;
