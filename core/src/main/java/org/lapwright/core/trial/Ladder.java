package org.lapwright.core.trial;

import java.util.List;

/** Ranks the cars on one track by pace, with how sure the order is. */
public final class Ladder {
    private Ladder() {}

    /**
     * The ladder, fastest first.
     *
     * @param cars the cars with their runs on one track; those with fewer than 2 clean laps are left out
     * @param prior what is known of the driver's noise
     */
    public static List<LadderEntry> rank(List<CarLaps> cars, NoisePrior prior) {
        throw new UnsupportedOperationException("being built: " + cars.size() + prior.runShare());
    }
}
