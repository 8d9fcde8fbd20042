package org.lapwright.core.track;

/**
 * A short stretch of lane.
 *
 * @param section its length, mean curvature, bank and grade
 * @param afterJoint whether curvature, bank, grade or surface jump at its near edge
 * @param extras what is different there from the rest of the track
 */
public record Cell(Section section, boolean afterJoint, PieceExtras extras) {
    /** A stretch like the rest of the track. */
    public Cell(Section section, boolean afterJoint) {
        this(section, afterJoint, PieceExtras.NONE);
    }
}
