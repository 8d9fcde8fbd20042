package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.web.chart.Scale;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PlanPose;
import org.lapwright.core.track.Section;
import org.lapwright.core.track.Track;

/** The numbers of the pieces beside the middles of them, outside all lanes, as the form counts them. */
final class PieceNumbers {
    private static final double AWAY_PX = 15;
    private static final int SPARSE = 24;

    private PieceNumbers() {}

    static List<LaneMap.Mark> of(Track track, MapFrame frame) {
        List<LaneMap.Mark> marks = new ArrayList<>();
        if (track.layout() instanceof PieceLayout layout) {
            boolean leftRound = turnsLeft(layout);
            double edge = track.lanes().stream()
                    .mapToDouble(Lane::offsetM)
                    .reduce(leftRound ? Math::min : Math::max)
                    .orElse(0);
            int every = 1 + layout.pieces().size() / SPARSE;
            PlanPose here = new PlanPose(0, 0, 0, 0);
            for (int i = 0; i < layout.pieces().size(); i++) {
                Section whole = layout.pieces().get(i).along(0);
                if (i % every == 0) {
                    marks.add(mark(frame, here.after(half(whole)), edge, leftRound ? 1 : -1, i + 1));
                }
                here = here.after(whole);
            }
        }
        return marks;
    }

    static boolean turnsLeft(PieceLayout layout) {
        return layout.pieces().stream()
                        .map(piece -> piece.along(0))
                        .mapToDouble(section -> section.curvature() * section.lengthM())
                        .sum()
                >= 0;
    }

    private static Section half(Section whole) {
        return new Section(whole.lengthM() / 2, whole.curvature(), whole.bankRad(), whole.gradeSine());
    }

    private static LaneMap.Mark mark(MapFrame frame, PlanPose middle, double offsetM, int out, int number) {
        double right = Math.sin(middle.headingRad());
        double down = Math.cos(middle.headingRad());
        PlanPose beside = new PlanPose(
                middle.xM() - offsetM * right, middle.yM() + offsetM * down, middle.zM(), middle.headingRad());
        return new LaneMap.Mark(
                frame.percentX(beside),
                frame.percentY(beside),
                "letter",
                String.valueOf(number),
                "middle",
                Scale.pixels(out * AWAY_PX * right),
                Scale.pixels(out * AWAY_PX * down));
    }
}
