package org.lapwright.app.usecase.physics;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.dynamics.LapTrace;
import org.lapwright.core.track.Gate;
import org.lapwright.core.track.Track;

/** A best lap as the gates of the track would time it. */
public final class GateTimes {
    private static final String LAST = "to the timing line";

    private GateTimes() {}

    /**
     * The time from one gate to the next.
     *
     * @param name of the section
     * @param seconds time in it, s
     */
    public record Section(String name, double seconds) {}

    /** The sections of a lap, the last one ending at the timing line; none when there is no other gate. They add up to the lap. */
    public static List<Section> of(Track track, LapTrace trace) {
        List<Section> sections = new ArrayList<>();
        if (!track.gates().isEmpty()) {
            double lapM = trace.placeM(trace.cells());
            double before = 0;
            for (Gate gate : track.gates()) {
                double at = trace.timeS(gate.at() * lapM);
                sections.add(new Section(gate.name(), at - before));
                before = at;
            }
            sections.add(new Section(LAST, trace.timeS(lapM) - before));
        }
        return List.copyOf(sections);
    }
}
