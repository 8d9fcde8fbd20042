package org.lapwright.core.trial;

import org.lapwright.core.laps.Stint;
import org.lapwright.core.trial.session.Side;

/**
 * One run as judged.
 *
 * @param side before or after the change
 * @param stint its laps with their kinds, and what they amount to
 */
public record JudgedRun(Side side, Stint stint) {}
