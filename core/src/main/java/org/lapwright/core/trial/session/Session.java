package org.lapwright.core.trial.session;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.laps.TimedRun;

/**
 * Runs before and after one change, in the order driven.
 *
 * @param runs at least one; both sides should be among them
 */
public record Session(List<DrivenRun> runs) {
    /** Copies the list. */
    public Session {
        runs = List.copyOf(runs);
    }

    /** One run a side, before first. */
    public static Session of(TimedRun before, TimedRun after) {
        return new Session(List.of(new DrivenRun(Side.BEFORE, before), new DrivenRun(Side.AFTER, after)));
    }

    /** How many laps were driven in all. */
    public int laps() {
        return runs.stream().mapToInt(run -> run.run().laps().size()).sum();
    }

    /** How many runs a side has. */
    public int runs(Side side) {
        return (int) runs.stream().filter(run -> run.side() == side).count();
    }

    /** The session as it stood after its first {@code laps} laps; runs not yet begun are left out. */
    public Session upTo(int laps) {
        List<DrivenRun> soFar = new ArrayList<>();
        int left = laps;
        for (DrivenRun run : runs) {
            if (left <= 0) {
                break;
            }
            soFar.add(new DrivenRun(run.side(), run.run().upTo(left)));
            left -= run.run().laps().size();
        }
        return new Session(soFar);
    }
}
