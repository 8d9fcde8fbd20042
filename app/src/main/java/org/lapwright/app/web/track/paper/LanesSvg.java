package org.lapwright.app.web.track.paper;

import java.util.List;
import java.util.Locale;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LanePlan;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PlanBounds;
import org.lapwright.core.track.PlanPose;
import org.lapwright.core.track.Section;
import org.lapwright.core.track.Track;

/**
 * The lanes of a track as an SVG drawing in true size: one unit is a millimetre, turns are true arcs.
 *
 * @param name of the track
 * @param leftMm left edge
 * @param topMm upper edge; down is positive
 * @param widthMm width with a margin
 * @param heightMm height with a margin
 * @param lanes their courses
 * @param startLine across all lanes at the timing line
 */
public record LanesSvg(
        String name, double leftMm, double topMm, double widthMm, double heightMm, List<Path> lanes, String startLine) {
    private static final double MARGIN_MM = 30;

    /** An arc of an SVG path has two ways round; up to this it is always the short one. */
    private static final double LONGEST_ARC_RAD = Math.toRadians(120);

    /** Copies the list. */
    public LanesSvg {
        lanes = List.copyOf(lanes);
    }

    /**
     * The course of a lane.
     *
     * @param name of the lane
     * @param d its path
     */
    public record Path(String name, String d) {}

    /** The lanes of a track. */
    public static LanesSvg of(Track track) {
        PlanBounds bounds = LanePlan.of(track, track.lanes().get(0)).bounds();
        for (Lane lane : track.lanes()) {
            bounds = bounds.with(LanePlan.of(track, lane).bounds());
        }
        return new LanesSvg(
                track.name(),
                1000 * bounds.lowXM() - MARGIN_MM,
                -1000 * bounds.highYM() - MARGIN_MM,
                1000 * bounds.widthM() + 2 * MARGIN_MM,
                1000 * bounds.heightM() + 2 * MARGIN_MM,
                track.lanes().stream()
                        .map(lane -> new Path(lane.name(), course(track, lane)))
                        .toList(),
                startLine(track));
    }

    /** What the drawing shows, in its own units. */
    public String viewBox() {
        return "%s %s %s %s".formatted(mm(leftMm), mm(topMm), width(), height());
    }

    /** Width, mm. */
    public String width() {
        return mm(widthMm);
    }

    /** Height, mm. */
    public String height() {
        return mm(heightMm);
    }

    private static String course(Track track, Lane lane) {
        return track.layout() instanceof PieceLayout layout && keepApart(layout)
                ? arcs(layout, lane.offsetM())
                : chords(LanePlan.of(track, lane));
    }

    /** Lanes that move sideways are no arcs. */
    private static boolean keepApart(PieceLayout layout) {
        return layout.pieces().stream()
                .allMatch(piece -> piece.extras().laneEndsMm().isEmpty());
    }

    private static String arcs(PieceLayout layout, double offsetM) {
        PlanPose here = new PlanPose(0, offsetM, 0, 0);
        StringBuilder d = new StringBuilder("M").append(point(here));
        for (var piece : layout.pieces()) {
            Section section = piece.along(offsetM);
            double turned = Math.abs(section.curvature() * section.lengthM());
            int parts = (int) Math.max(1, Math.ceil(turned / LONGEST_ARC_RAD));
            Section part =
                    new Section(section.lengthM() / parts, section.curvature(), section.bankRad(), section.gradeSine());
            for (int i = 0; i < parts; i++) {
                here = here.after(part);
                d.append(step(section)).append(point(here));
            }
        }
        return d.toString();
    }

    private static String step(Section section) {
        if (section.curvature() == 0) {
            return "L";
        }
        String radius = mm(1000 / Math.abs(section.curvature()));
        return "A%s %s 0 0 %d ".formatted(radius, radius, section.curvature() > 0 ? 0 : 1);
    }

    private static String chords(LanePlan plan) {
        StringBuilder d = new StringBuilder("M").append(point(plan.at(0)));
        for (int edge = 1; edge <= plan.cells(); edge++) {
            d.append('L').append(point(plan.at(edge)));
        }
        return d.toString();
    }

    private static String startLine(Track track) {
        double left = track.lanes().stream().mapToDouble(Lane::offsetM).max().orElse(0) + MARGIN_MM / 2000;
        double right =
                track.lanes().stream().mapToDouble(lane -> lane.offsetM()).min().orElse(0) - MARGIN_MM / 2000;
        Lane first = track.lanes().get(0);
        PlanPose start = LanePlan.of(track, first).at(0);
        return "M" + beside(start, left - first.offsetM()) + "L" + beside(start, right - first.offsetM());
    }

    private static String beside(PlanPose pose, double leftM) {
        return point(new PlanPose(
                pose.xM() - leftM * Math.sin(pose.headingRad()),
                pose.yM() + leftM * Math.cos(pose.headingRad()),
                0,
                pose.headingRad()));
    }

    private static String point(PlanPose pose) {
        return mm(1000 * pose.xM()) + " " + mm(-1000 * pose.yM());
    }

    /** Hundredths of a millimetre are finer than any router. */
    static String mm(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.equals("-0.00") ? "0.00" : text;
    }
}
