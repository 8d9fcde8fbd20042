package org.lapwright.core.laps.pass;

import java.util.Map;
import java.util.TreeMap;

/** The numbers of the passes that a sender has sent, each range without a gap held as its two ends: a day of passes takes no room. */
final class SequenceNumbers {
    private final TreeMap<Long, Long> ranges = new TreeMap<>();

    /** Takes a number; says whether it is a new one. */
    boolean add(long number) {
        Map.Entry<Long, Long> below = ranges.floorEntry(number);
        if (below != null && below.getValue() >= number) {
            return false;
        }
        Long after = ranges.get(number + 1);
        long end = after == null ? number : after;
        if (after != null) {
            ranges.remove(number + 1);
        }
        boolean joins = below != null && below.getValue() == number - 1;
        ranges.put(joins ? below.getKey() : number, end);
        return true;
    }

    /** The greatest so far; −1 before the first. */
    long greatest() {
        return ranges.isEmpty() ? -1 : ranges.lastEntry().getValue();
    }

    /** How many ranges are held. */
    int ranges() {
        return ranges.size();
    }
}
