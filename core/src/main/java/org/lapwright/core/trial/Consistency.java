package org.lapwright.core.trial;

import java.util.Optional;
import org.lapwright.core.units.Interval;

/**
 * After against before on consistency.
 *
 * @param decision by the monitor on the root absolute residuals, valid however often one looked
 * @param spreadRatio Q_n of the laps after over before, trend, warm-up and run levels removed; below 1 is steadier
 * @param ratioInterval bootstrap interval of the ratio, absent when a side has too few laps or no spread
 * @param offs how often the car came off on either side
 */
public record Consistency(
        SteadyDecision decision, Optional<Double> spreadRatio, Optional<Interval> ratioInterval, OffRates offs) {}
