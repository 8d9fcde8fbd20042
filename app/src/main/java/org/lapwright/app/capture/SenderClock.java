package org.lapwright.app.capture;

/**
 * A sender's clock as its lines show it: the overflow of a counter of 32 bits is mended, and a clock that was set forward or back is
 * noticed. A delay on the way makes a line late, never early; so a live sender that is ahead of its earlier lines was set forward.
 */
final class SenderClock {
    private static final long NS_PER_US = 1000;
    private static final long TURN_US = 1L << 32;

    /** A heartbeat comes each second: an overflow further from the last line than this cannot be told from a clock set back. */
    private static final long OVERFLOW_WITHIN_US = 10_000_000;

    /** A pass may be stamped a little before the heartbeat that left first. */
    private static final long DISORDER_US = 100_000;

    private static final long AHEAD_US = 500_000;

    /** A cheap resonator is off by 0.2 %: allow one part in this many. */
    private static final long DRIFT = 200;

    private static final long FLOOR_LASTS_US = 60_000_000;

    private final boolean live;
    private boolean known;
    private long lastRawUs;
    private long addedUs;
    private long lastUs;
    private long floorUs;
    private long floorAtUs;

    /**
     * A clock.
     *
     * @param live whether arrival times mean anything; in a recording they do not
     */
    SenderClock(boolean live) {
        this.live = live;
    }

    /** Takes a stamp of a line. Says whether the clock was set since the last one. */
    boolean take(long rawUs, long arrivalNs) {
        if (!known) {
            begin(rawUs, arrivalNs / NS_PER_US);
            return false;
        }
        boolean below = lastRawUs < TURN_US && rawUs < lastRawUs;
        if (below && rawUs + TURN_US - lastRawUs <= OVERFLOW_WITHIN_US) {
            addedUs += TURN_US;
        }
        long us = rawUs + addedUs;
        long arrivalUs = arrivalNs / NS_PER_US;
        if (us < lastUs - DISORDER_US || live && isAhead(us, arrivalUs)) {
            begin(rawUs, arrivalUs);
            return true;
        }
        lastRawUs = rawUs;
        lastUs = us;
        long lateUs = arrivalUs - us;
        if (lateUs <= floorUs || arrivalUs - floorAtUs > FLOOR_LASTS_US) {
            floorUs = lateUs;
            floorAtUs = arrivalUs;
        }
        return false;
    }

    private boolean isAhead(long us, long arrivalUs) {
        return arrivalUs - us < floorUs - AHEAD_US - (arrivalUs - floorAtUs) / DRIFT;
    }

    private void begin(long rawUs, long arrivalUs) {
        known = true;
        addedUs = 0;
        lastRawUs = rawUs;
        lastUs = rawUs;
        floorUs = arrivalUs - rawUs;
        floorAtUs = arrivalUs;
    }

    /** The last stamp, overflows mended, µs. */
    long us() {
        return lastUs;
    }
}
