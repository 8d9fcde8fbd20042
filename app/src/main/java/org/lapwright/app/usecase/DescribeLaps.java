package org.lapwright.app.usecase;

import java.util.List;
import org.lapwright.core.laps.Sorting;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.laps.TimedRun;

/** What do these laps amount to? */
public final class DescribeLaps {
    /** One run: every lap with its kind, pace, spread. */
    public Stint describe(TimedRun run) {
        return describe(List.of(run));
    }

    /** Runs of one set-up, pooled into one stint. */
    public Stint describe(List<TimedRun> runs) {
        return Stint.of(Sorting.sort(runs).stream().flatMap(List::stream).toList());
    }
}
