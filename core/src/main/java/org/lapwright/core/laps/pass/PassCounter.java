package org.lapwright.core.laps.pass;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapwright.core.laps.TimedLap;

/**
 * Laps from the passes of one lane at the timing line, in the order in which they came. A lap is the difference of two stamps of
 * one clock in one boot, never more; what came twice is taken once. The same passes give the same laps, live or replayed.
 */
public final class PassCounter {
    private static final double NS = 1e-9;

    private final int lane;
    private final double holdOffS;
    private final List<CountedLap> laps = new ArrayList<>();
    private final Set<Seen> seen = new HashSet<>();

    /** Greatest sequence number of each boot of each source, whichever lane it was about. */
    private final Map<Boot, Long> newest = new HashMap<>();

    private boolean open;
    private Boot boot = new Boot("", "");
    private PassClock clock = PassClock.ARRIVAL;
    private long atNs;
    private boolean lostSince;

    /** Whether the last pass, though the next of its count, was stamped before the one before it. */
    private boolean behind;

    private int bounces;
    private int backwards;

    private record Boot(String source, String boot) {}

    private record Seen(Boot boot, long sequence) {}

    /**
     * A lap.
     *
     * @param seconds lap time, s
     * @param passesLost whether the sender's count shows that passes were lost in it: it may be two laps in one
     */
    public record CountedLap(double seconds, boolean passesLost) {}

    /**
     * A counter for a lane.
     *
     * @param lane its number
     * @param holdOffS a gate that fires again so soon after saw the same car, s
     */
    public PassCounter(int lane, double holdOffS) {
        if (!(holdOffS >= 0 && holdOffS < TimedLap.LONGEST_S)) {
            throw new IllegalArgumentException("hold-off is %s s; it must be from 0 to 3600 s".formatted(holdOffS));
        }
        this.lane = lane;
        this.holdOffS = holdOffS;
    }

    /** Takes a pass. Says whether it ended a lap. */
    public boolean add(Pass pass) {
        Boot from = new Boot(pass.source(), pass.boot());
        if (!seen.add(new Seen(from, pass.sequence()))) {
            return false;
        }
        boolean inOrder = pass.sequence() > newest.getOrDefault(from, -1L);
        long last = newest.getOrDefault(from, pass.sequence() - 1);
        newest.merge(from, pass.sequence(), Math::max);
        if (from.equals(boot) && pass.sequence() > last + 1) {
            lostSince = true;
        }
        if (pass.lane() != lane || pass.gate() != 0) {
            return false;
        }
        if (!open || !from.equals(boot) || pass.stamp().clock() != clock) {
            begin(from, pass.stamp());
            return false;
        }
        double seconds = (pass.stamp().timeNs() - atNs) * NS;
        if (seconds < 0) {
            backwards++;
            if (inOrder && behind) {
                // The clock was set back: waiting until it has caught up would lose every lap until then.
                begin(from, pass.stamp());
            } else {
                behind = inOrder;
            }
            return false;
        }
        behind = false;
        if (seconds < Math.max(holdOffS, TimedLap.SHORTEST_S)) {
            bounces++;
            return false;
        }
        boolean lap = seconds <= TimedLap.LONGEST_S;
        if (lap) {
            laps.add(new CountedLap(seconds, lostSince));
        }
        begin(from, pass.stamp());
        return lap;
    }

    private void begin(Boot from, PassStamp stamp) {
        open = true;
        boot = from;
        clock = stamp.clock();
        atNs = stamp.timeNs();
        lostSince = false;
        behind = false;
    }

    /** The laps so far. */
    public List<CountedLap> laps() {
        return List.copyOf(laps);
    }

    /**
     * The lap that ended last.
     *
     * @throws IllegalStateException if none has ended yet
     */
    public CountedLap lastLap() {
        if (laps.isEmpty()) {
            throw new IllegalStateException("no lap has ended yet");
        }
        return laps.get(laps.size() - 1);
    }

    /** Whether a lap is under way. */
    public boolean isOpen() {
        return open;
    }

    /** How often the gate fired again within the hold-off. */
    public int bounces() {
        return bounces;
    }

    /** How often a stamp lay before the one before it: a pass that came late, or a clock that was set back; no lap goes over that. */
    public int backwards() {
        return backwards;
    }
}
