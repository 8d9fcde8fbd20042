package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.chart.Scale;
import org.lapwright.core.track.Gate;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LanePath;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceExtras;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PlanPose;
import org.lapwright.core.track.Section;
import org.lapwright.core.track.Track;

/** What lies under the lanes: pieces with another surface, by a pattern and a word, and the gates. */
final class Grounds {
    private static final int STEPS = 24;

    /** Words stand inside the lanes, where no number of a piece comes. */
    private static final double INSIDE_PX = 30;

    private static final double BESIDE_M = 0.03;

    private final Track track;
    private final MapFrame frame;

    Grounds(Track track, MapFrame frame) {
        this.track = track;
        this.frame = frame;
    }

    /** A band for each piece that is different. */
    List<LaneMap.Line> bands() {
        List<LaneMap.Line> bands = new ArrayList<>();
        eachPiece((piece, start) -> {
            if (!word(piece.extras()).isEmpty()) {
                bands.add(new LaneMap.Line(css(piece.extras()), course(piece, start)));
            }
        });
        return bands;
    }

    /** Its word beside each. */
    List<LaneMap.Mark> words() {
        List<LaneMap.Mark> marks = new ArrayList<>();
        eachPiece((piece, start) -> {
            String word = word(piece.extras());
            if (!word.isEmpty()) {
                PlanPose middle = start.after(part(piece.along(0), 0.5));
                double in = PieceNumbers.turnsLeft((PieceLayout) track.layout()) ? -INSIDE_PX : INSIDE_PX;
                marks.add(new LaneMap.Mark(
                        frame.percentX(middle),
                        frame.percentY(middle),
                        "ground",
                        word,
                        "middle",
                        Scale.pixels(in * Math.sin(middle.headingRad())),
                        Scale.pixels(in * Math.cos(middle.headingRad()))));
            }
        });
        return marks;
    }

    /** A line across all lanes at each gate. */
    String gates() {
        StringBuilder d = new StringBuilder();
        if (!track.gates().isEmpty()) {
            double left =
                    track.lanes().stream().mapToDouble(Lane::offsetM).max().orElse(0) + BESIDE_M;
            double right = track.lanes().stream()
                            .mapToDouble(lane -> lane.offsetM())
                            .min()
                            .orElse(0)
                    - BESIDE_M;
            for (Gate gate : track.gates()) {
                PlanPose at = at(gate);
                d.append('M').append(beside(at, left)).append('L').append(beside(at, right));
            }
        }
        return d.toString();
    }

    private PlanPose at(Gate gate) {
        List<PlanPose> centre = track.layout().course(LanePath.CENTRE, STEPS * STEPS);
        double[] way = new double[centre.size()];
        for (int i = 1; i < way.length; i++) {
            way[i] = way[i - 1]
                    + Math.hypot(
                            centre.get(i).xM() - centre.get(i - 1).xM(),
                            centre.get(i).yM() - centre.get(i - 1).yM());
        }
        int edge = 1;
        while (edge < way.length - 1 && way[edge] < gate.at() * way[way.length - 1]) {
            edge++;
        }
        return centre.get(edge);
    }

    private String beside(PlanPose pose, double leftM) {
        return frame.point(
                pose.xM() - leftM * Math.sin(pose.headingRad()), pose.yM() + leftM * Math.cos(pose.headingRad()));
    }

    private interface Laid {
        void take(Piece piece, PlanPose start);
    }

    private void eachPiece(Laid laid) {
        if (track.layout() instanceof PieceLayout layout) {
            PlanPose here = new PlanPose(0, 0, 0, 0);
            for (Piece piece : layout.pieces()) {
                laid.take(piece, here);
                here = here.after(piece.along(0));
            }
        }
    }

    private String course(Piece piece, PlanPose start) {
        StringBuilder d = new StringBuilder("M").append(frame.point(start));
        for (int i = 1; i <= STEPS; i++) {
            d.append('L').append(frame.point(start.after(part(piece.along(0), (double) i / STEPS))));
        }
        return d.toString();
    }

    private static Section part(Section whole, double share) {
        return new Section(share * whole.lengthM(), whole.curvature(), whole.bankRad(), whole.gradeSine());
    }

    private static String word(PieceExtras extras) {
        List<String> words = new ArrayList<>();
        extras.gripFactor().ifPresent(factor -> words.add("grip " + Figures.significant(factor, 3)));
        extras.magnetic().ifPresent(magnetic -> words.add(magnetic ? "steel" : "no steel"));
        return String.join(", ", words);
    }

    private static String css(PieceExtras extras) {
        return extras.gripFactor().isPresent() ? "slick" : "plastic";
    }
}
