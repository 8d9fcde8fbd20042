package org.lapwright.core.laps.pass;

import java.util.Objects;
import org.lapwright.core.units.Check;

/**
 * When a pass happened.
 *
 * @param clock what stamped it
 * @param timeNs time by that clock, ns, from any origin
 * @param arrivalNs time by the receiving machine's monotonic clock, ns; checks the stamp, never makes a lap
 * @param sigmaS how uncertain the stamp is, one standard deviation, s, 0 to 1
 */
public record PassStamp(PassClock clock, long timeNs, long arrivalNs, double sigmaS) {
    /** Checks the uncertainty. */
    public PassStamp {
        Objects.requireNonNull(clock, "clock");
        Check.inRange(sigmaS, 0, 1, "stamp uncertainty", "s");
    }
}
