package org.lapwright.app.files;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.Side;

/**
 * A run as read.
 *
 * @param side the side that the text names, if it does
 * @param laps its laps in the order driven
 * @param startedAt the first time stamp of the run, if there is one
 * @param lane the lane that the text names, or empty
 */
public record ReadRun(Optional<Side> side, List<TimedLap> laps, Optional<Instant> startedAt, String lane) {
    /** Copies the list. */
    public ReadRun {
        laps = List.copyOf(laps);
    }

    /** The run without what the text said around it. */
    public TimedRun run() {
        return new TimedRun(laps, List.of());
    }
}
