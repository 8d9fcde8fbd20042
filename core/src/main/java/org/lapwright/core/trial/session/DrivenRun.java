package org.lapwright.core.trial.session;

import org.lapwright.core.laps.TimedRun;

/**
 * A run and the side it was driven for.
 *
 * @param side before or after the change
 * @param run its laps
 */
public record DrivenRun(Side side, TimedRun run) {}
