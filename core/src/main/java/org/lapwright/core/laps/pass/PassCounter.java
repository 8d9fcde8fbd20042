package org.lapwright.core.laps.pass;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.lapwright.core.laps.TimedLap;

/**
 * Laps from the passes of one lane, in the order in which they came. A lap is the difference of two stamps of
 * one clock in one boot, never more; what came twice is taken once. The same passes give the same laps, live or replayed.
 */
public final class PassCounter {
    private static final double NS = 1e-9;

    private final int lane;
    private final double holdOffS;
    private final List<CountedLap> laps = new ArrayList<>();

    /** Numbers of the passes of each boot of each source, whichever lane they were about. */
    private final Map<Boot, SequenceNumbers> seen = new HashMap<>();

    /** Time since the timing line at the section gates in the lap under way, s. */
    private final SortedMap<Integer, Double> splitsS = new TreeMap<>();

    private int lastGate;
    private double lastSplitS;

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

    /**
     * A lap.
     *
     * @param seconds lap time, s
     * @param passesLost whether the sender's count shows that passes were lost in it: it may be two laps in one
     * @param splits when it passed the section gates
     */
    public record CountedLap(double seconds, boolean passesLost, LapSplits splits) {}

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
        SequenceNumbers numbers = seen.computeIfAbsent(from, key -> new SequenceNumbers());
        long last = numbers.greatest();
        if (!numbers.add(pass.sequence())) {
            return false;
        }
        boolean inOrder = pass.sequence() > last;
        if (from.equals(boot) && last >= 0 && pass.sequence() > last + 1) {
            lostSince = true;
        }
        if (pass.lane() != lane) {
            return false;
        }
        if (pass.gate() > 0) {
            split(pass, from);
            return false;
        }
        return line(pass, from, inOrder);
    }

    /** A section gate counts once a lap, in the order of the gates; what a gate sees out of turn was no car that came round. */
    private void split(Pass pass, Boot from) {
        double seconds = (pass.stamp().timeNs() - atNs) * NS;
        boolean ofThisLap = open && from.equals(boot) && pass.stamp().clock() == clock;
        if (ofThisLap && pass.gate() > lastGate && seconds > lastSplitS) {
            splitsS.put(pass.gate(), seconds);
            lastGate = pass.gate();
            lastSplitS = seconds;
        }
    }

    /** A pass at the timing line. */
    private boolean line(Pass pass, Boot from, boolean inOrder) {
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
            laps.add(new CountedLap(seconds, lostSince, new LapSplits(seconds, splitsS)));
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
        splitsS.clear();
        lastGate = 0;
        lastSplitS = 0;
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
