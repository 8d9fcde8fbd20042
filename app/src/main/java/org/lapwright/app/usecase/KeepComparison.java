package org.lapwright.app.usecase;

import java.time.Clock;

/** Keep it: car, runs and verdict. */
public final class KeepComparison {
    private final GarageStore store;
    private final JudgeChange judgeChange;
    private final KnownDriver knownDriver;
    private final Clock clock;

    /** A keeper that writes to {@code store}, and tells {@code knownDriver}. */
    public KeepComparison(GarageStore store, JudgeChange judgeChange, KnownDriver knownDriver, Clock clock) {
        this.store = store;
        this.judgeChange = judgeChange;
        this.knownDriver = knownDriver;
        this.clock = clock;
    }

    /**
     * Saves the comparison; when this returns it is on disk.
     *
     * @param requestKey the same key saves once
     * @throws StoreException if it could not be saved
     */
    public SavedComparison keep(KeptComparison comparison, String requestKey) {
        SavedComparison saved = store.keep(
                comparison,
                judgeChange.judge(comparison.session(), comparison.settings()),
                requestKey,
                clock.instant());
        knownDriver.forget();
        return saved;
    }
}
