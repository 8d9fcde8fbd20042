package org.lapwright.app.files.drawing.course;

import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.files.drawing.Budget;
import org.lapwright.app.files.drawing.Drawing;
import org.lapwright.app.files.drawing.Outline;

/** Turns outlines into straight strokes that stay within a tolerance of the curve. */
final class Flattening {
    /** A curve becomes at most two to this power strokes. */
    private static final int DEEPEST = 14;

    private final Budget budget = new Budget();
    private final List<Polyline> found = new ArrayList<>();
    private List<Spot> spots = new ArrayList<>();

    private Flattening() {}

    /**
     * All outlines of a drawing.
     *
     * @param drawing the drawing
     * @param mmPerUnit what its unit is
     * @param toleranceMm how far a stroke may be from the curve
     */
    static List<Polyline> of(Drawing drawing, double mmPerUnit, double toleranceMm) {
        Flattening flattening = new Flattening();
        for (Outline outline : drawing.outlines()) {
            flattening.follow(new FlatteningPathIterator(outline.course(mmPerUnit), toleranceMm, DEEPEST));
        }
        return flattening.found;
    }

    private void follow(PathIterator path) {
        double[] at = new double[6];
        Spot start = new Spot(0, 0);
        for (; !path.isDone(); path.next()) {
            int kind = path.currentSegment(at);
            if (kind == PathIterator.SEG_CLOSE) {
                end(true);
                spots.add(start);
            } else {
                if (kind == PathIterator.SEG_MOVETO) {
                    end(false);
                }
                budget.take();
                Spot spot = new Spot(Budget.checked(at[0]), Budget.checked(at[1]));
                start = kind == PathIterator.SEG_MOVETO ? spot : start;
                spots.add(spot);
            }
        }
        end(false);
    }

    private void end(boolean closed) {
        if (spots.size() > 1) {
            Polyline line = new Polyline(spots, closed);
            if (line.spots().size() > 1) {
                found.add(line);
            }
        }
        spots = new ArrayList<>();
    }
}
