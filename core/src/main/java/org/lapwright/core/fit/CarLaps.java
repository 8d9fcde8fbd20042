package org.lapwright.core.fit;

import java.util.List;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.track.Track;

/**
 * A car, a track, and the paces that it held there.
 *
 * @param car as it is now
 * @param track where it was driven
 * @param paces of its runs, with this set-up or earlier ones; may be empty
 */
public record CarLaps(SetUp car, Track track, List<HeldPace> paces) {
    /** Copies the list. */
    public CarLaps {
        paces = List.copyOf(paces);
    }
}
