package org.lapwright.core.track;

/**
 * A place on the plan and the direction of travel there.
 *
 * @param xM one coordinate, m
 * @param yM the other, to the left of it, m
 * @param zM height above the timing line, m
 * @param headingRad direction of travel, rad from the x axis to the left; goes on counting past whole turns
 */
public record PlanPose(double xM, double yM, double zM, double headingRad) {
    /**
     * Where a stretch ends that begins here: a straight or a circular arc, exactly. The plan of a straight on a grade is
     * shorter than the straight; a turn's length is that of its plan already, see {@link Piece.Turn#along}.
     */
    public PlanPose after(Section section) {
        double plan = section.lengthM();
        if (section.curvature() == 0) {
            plan *= Math.sqrt(1 - section.gradeSine() * section.gradeSine());
        }
        double turned = section.curvature() * plan;
        double chord = turned == 0 ? plan : plan * Math.sin(turned / 2) / (turned / 2);
        return new PlanPose(
                xM + chord * Math.cos(headingRad + turned / 2),
                yM + chord * Math.sin(headingRad + turned / 2),
                zM + section.gradeSine() * section.lengthM(),
                headingRad + turned);
    }

    /** The place at a distance to the left. */
    PlanPose leftBy(double offsetM) {
        return new PlanPose(xM - offsetM * Math.sin(headingRad), yM + offsetM * Math.cos(headingRad), zM, headingRad);
    }
}
