package org.lapwright.app.web.track;

import java.util.function.IntConsumer;
import org.lapwright.core.track.LanePlan;
import org.lapwright.core.track.PlanPose;

/**
 * A course drawn by as few chords as the eye allows: a page with hundreds of pieces is read and drawn anew on a phone while
 * somebody types. The algorithm is that of D. Douglas and T. Peucker, "Algorithms for the reduction of the number of points
 * required to represent a digitized line or its caricature", Cartographica 10 (1973) 112.
 *
 * @param plan the course
 * @param toleranceM the furthest that an edge may lie beside its chord, m
 */
record Chords(LanePlan plan, double toleranceM) {
    /** Hands on the edges at which the chords from one edge to another end, in order; the last is the other edge. */
    void between(int from, int to, IntConsumer end) {
        int furthest = from;
        double most = toleranceM;
        for (int edge = from + 1; edge < to; edge++) {
            double off = offM(plan.at(from), plan.at(to), plan.at(edge));
            if (off > most) {
                most = off;
                furthest = edge;
            }
        }
        if (furthest == from) {
            end.accept(to);
        } else {
            between(from, furthest, end);
            between(furthest, to, end);
        }
    }

    /** How far a place is from a chord, ends included: a closed lap's chord has no length. */
    private static double offM(PlanPose start, PlanPose end, PlanPose place) {
        double alongX = end.xM() - start.xM();
        double alongY = end.yM() - start.yM();
        double x = place.xM() - start.xM();
        double y = place.yM() - start.yM();
        double square = alongX * alongX + alongY * alongY;
        double share = square > 0 ? Math.max(0, Math.min(1, (x * alongX + y * alongY) / square)) : 0;
        return Math.hypot(x - share * alongX, y - share * alongY);
    }
}
