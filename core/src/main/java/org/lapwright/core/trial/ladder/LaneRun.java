package org.lapwright.core.trial.ladder;

import org.lapwright.core.laps.TimedRun;

/**
 * A run and the lane that it was driven on.
 *
 * @param lane its name; empty where nobody said
 * @param run its laps
 */
public record LaneRun(String lane, TimedRun run) {}
