package org.lapwright.app.usecase;

import java.util.function.Function;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.laps.TimedRun;

/** What do these laps amount to? */
public final class DescribeLaps {
    private final Function<TimedRun, Stint> sorting;

    /** Describes runs by {@code sorting}. */
    public DescribeLaps(Function<TimedRun, Stint> sorting) {
        this.sorting = sorting;
    }

    /** One run: every lap with its kind, pace, spread. */
    public Stint describe(TimedRun run) {
        return sorting.apply(run);
    }
}
