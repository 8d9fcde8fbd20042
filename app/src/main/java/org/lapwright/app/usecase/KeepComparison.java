package org.lapwright.app.usecase;

import java.time.Clock;

/** Keep it: car, runs and verdict. */
public final class KeepComparison {
    private final GarageStore store;
    private final JudgeChange judgeChange;
    private final Clock clock;

    /** A keeper that writes to {@code store}. */
    public KeepComparison(GarageStore store, JudgeChange judgeChange, Clock clock) {
        this.store = store;
        this.judgeChange = judgeChange;
        this.clock = clock;
    }

    /**
     * Saves the comparison; when this returns it is on disk.
     *
     * @param requestKey the same key saves once
     * @throws StoreException if it could not be saved
     */
    public SavedComparison keep(KeptComparison comparison, String requestKey) {
        return store.keep(
                comparison,
                judgeChange.judge(comparison.session(), comparison.settings()),
                requestKey,
                clock.instant());
    }
}
