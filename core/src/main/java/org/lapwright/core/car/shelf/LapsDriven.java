package org.lapwright.core.car.shelf;

import java.time.Instant;
import org.lapwright.core.units.Check;

/**
 * Laps that a car has run.
 *
 * @param car its name
 * @param laps how many
 * @param at when they were kept
 */
public record LapsDriven(String car, int laps, Instant at) {
    /** Checks the number. */
    public LapsDriven {
        Check.inRange(laps, 0, Integer.MAX_VALUE, "laps driven");
    }
}
