package org.lapwright.core.dynamics;

import java.util.List;
import java.util.Map;

/**
 * The fastest lap that a car can do on a lane without breaking a limit.
 *
 * @param lapS lap time, s
 * @param topMps greatest speed of the guide, m/s
 * @param slowestMps least speed of the guide, m/s
 * @param shares share of the lap's time for each limit that binds somewhere; they add up to 1
 * @param trace speed along the lap
 * @param caveats what to know before believing it
 */
public record PredictedLap(
        double lapS, double topMps, double slowestMps, Map<Limit, Double> shares, LapTrace trace, List<Caveat> caveats)
        implements LapOutcome {
    /** Copies the collections. */
    public PredictedLap {
        shares = Map.copyOf(shares);
        caveats = List.copyOf(caveats);
    }
}
