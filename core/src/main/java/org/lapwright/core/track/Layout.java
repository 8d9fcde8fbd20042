package org.lapwright.core.track;

import java.util.List;

/** The course of the centre line, in one of the two ways in which it can be written down. */
public sealed interface Layout permits PieceLayout, PointLayout {
    /**
     * Length of a lane, m.
     *
     * @throws IllegalArgumentException if the lane does not fit inside a turn
     */
    double lengthM(LanePath lane);

    /**
     * A lane cut into cells.
     *
     * @param cells about how many, at least 2 a piece are made
     * @throws IllegalArgumentException if the lane does not fit inside a turn
     */
    List<Cell> cut(LanePath lane, int cells);

    /**
     * The course of a lane on the plan, at the edges of the cells that {@link #cut} makes: one place more than cells.
     *
     * @param cells as for {@link #cut}
     * @throws IllegalArgumentException if the lane does not fit inside a turn
     */
    List<PlanPose> course(LanePath lane, int cells);

    /** By how much the layout fails to close. */
    ClosingGap closingGap();
}
