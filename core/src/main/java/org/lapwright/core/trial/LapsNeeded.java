package org.lapwright.core.trial;

import java.util.OptionalInt;

/**
 * How many more laps each way, in the order of the present plan, would settle it with 80 % power. A forecast, not a
 * promise.
 *
 * @param eachWay more laps a side if the difference is what it looks like now; 0 once decided; absent beyond reason
 * @param forMargin more laps a side to tell a difference as large as the margin; 0 once decided; absent beyond reason
 */
public record LapsNeeded(OptionalInt eachWay, OptionalInt forMargin) {
    /** More laps than anyone drives for one change. */
    public static final int BEYOND_REASON = 1000;

    /** Nothing more to drive. */
    public static final LapsNeeded NONE = new LapsNeeded(OptionalInt.of(0), OptionalInt.of(0));
}
