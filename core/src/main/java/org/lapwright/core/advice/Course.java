package org.lapwright.core.advice;

import java.util.List;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;

/**
 * A lane that a set-up is made for.
 *
 * @param track where it is
 * @param lane one of its lanes
 */
public record Course(Track track, Lane lane) {
    /** Checks that the lane is one of the track's. */
    public Course {
        if (!track.lanes().contains(lane)) {
            throw new IllegalArgumentException("%s has no lane '%s'".formatted(track.name(), lane.name()));
        }
    }

    /** All lanes of a track. */
    public static List<Course> all(Track track) {
        return track.lanes().stream().map(lane -> new Course(track, lane)).toList();
    }
}
