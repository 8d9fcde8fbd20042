package org.lapwright.core.trial.ladder;

/**
 * What a lane does to the pace of any car.
 *
 * @param lane its name; empty for runs of which nobody said the lane
 * @param log its log pace less that of the average lane; below 0 is a fast lane
 * @param standardError of that
 * @param told whether cars that were driven on several lanes tell it; else it is what one would believe of any lane
 */
public record LaneEffect(String lane, double log, double standardError, boolean told) {}
