package org.lapwright.core.track;

import java.util.List;

/**
 * The course of a lane seen from above, with its height, at every edge of the cells that {@link Track#cells(Lane)} cuts.
 *
 * <p>A layout of pieces starts at the timing line with its centre line in the origin and heading along x; a drawn line stays
 * where it was drawn.
 *
 * @param lane the lane
 * @param poses at every edge in the direction of travel; one more than there are cells
 */
public record LanePlan(Lane lane, List<PlanPose> poses) {
    /** Copies the list. */
    public LanePlan {
        poses = List.copyOf(poses);
        if (poses.size() < 2) {
            throw new IllegalArgumentException(
                    "the plan of a lane has %d places; it needs at least 2".formatted(poses.size()));
        }
    }

    /** The plan of a lane of a track. */
    public static LanePlan of(Track track, Lane lane) {
        return new LanePlan(lane, track.layout().course(track.path(lane), LaneCells.usualCount(track.lengthM(lane))));
    }

    /** How many cells. */
    public int cells() {
        return poses.size() - 1;
    }

    /** The place at an edge; edge 0 is the timing line. */
    public PlanPose at(int edge) {
        return poses.get(edge);
    }

    /** The rectangle along the axes that holds every edge. */
    public PlanBounds bounds() {
        return PlanBounds.of(poses);
    }

    /** Where the lane crosses itself, in the order of travel; at most {@value Crossing#MOST}. */
    public List<Crossing> crossings() {
        return Crossing.of(poses);
    }
}
