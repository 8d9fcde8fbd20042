package org.lapwright.core.laps;

import org.lapwright.core.units.Check;

/**
 * The racer's word against the rules: "lap 5 is clean, I braked for a cat".
 *
 * @param lap number of the lap in its run
 * @param kind what it was, says the racer
 * @param reason why, 1 to 200 characters
 */
public record Overrule(int lap, LapKind kind, String reason) {
    /** Checks the reason: an exclusion without one is not honest. */
    public Overrule {
        Check.inRange(lap, 1, Integer.MAX_VALUE, "lap number");
        reason = Check.text(reason, 200, "reason");
    }
}
