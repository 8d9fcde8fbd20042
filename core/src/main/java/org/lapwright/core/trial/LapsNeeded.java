package org.lapwright.core.trial;

import java.util.OptionalInt;

/**
 * How many more laps each way would settle it with 80 % power. A forecast, not a promise.
 *
 * <p>More laps in the order of the present plan, if they can: past the end of a plan the boundary rises, and a difference
 * that is small for the plan is never told by driving on. Then the number is that of a new session, planned so from the
 * start.
 *
 * @param eachWay laps a side if the difference is what it looks like now; 0 once decided; absent beyond reason
 * @param afresh whether {@code eachWay} is for a new session rather than for driving on
 * @param forMargin laps a side of a new session that would tell a difference as large as the margin; 0 once decided;
 *     absent beyond reason
 */
public record LapsNeeded(OptionalInt eachWay, boolean afresh, OptionalInt forMargin) {
    /** More laps than anyone drives for one change. */
    public static final int BEYOND_REASON = 200;

    /** Nothing more to drive. */
    public static final LapsNeeded NONE = new LapsNeeded(OptionalInt.of(0), false, OptionalInt.of(0));
}
