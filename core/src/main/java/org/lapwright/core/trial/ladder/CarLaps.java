package org.lapwright.core.trial.ladder;

import java.util.List;

/**
 * What a car has driven on a track in the set-up it has now.
 *
 * @param car its name
 * @param runs its runs, oldest first
 */
public record CarLaps(String car, List<LaneRun> runs) {
    /** Copies the list. */
    public CarLaps {
        runs = List.copyOf(runs);
    }
}
