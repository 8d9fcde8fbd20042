package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.chart.Scale;
import org.lapwright.core.dynamics.LapTrace;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LanePlan;
import org.lapwright.core.track.PlanBounds;
import org.lapwright.core.track.PlanPose;
import org.lapwright.core.track.Track;

/**
 * A track from above, to scale.
 *
 * @param summary what it shows, in words
 * @param viewBox the drawing's extent, mm
 * @param grounds bands under the lanes where the surface is another
 * @param gates lines across the lanes at the gates; empty without one
 * @param others the other lanes, in their colours
 * @param lines the lane, one path for each way of drawing
 * @param underBridge what clears the ground under a bridge; empty without one
 * @param bridge the lane on bridges, drawn on top
 * @param startLine course of the timing line
 * @param start where it is, which way it goes
 * @param marks words and signs on the lane
 * @param scaleBar a round length at the drawing's scale
 * @param kinds ways of drawing that occur, for the legend
 */
public record LaneMap(
        String summary,
        String viewBox,
        List<Line> grounds,
        String gates,
        List<Line> others,
        List<Line> lines,
        String underBridge,
        List<Line> bridge,
        String startLine,
        Start start,
        List<Mark> marks,
        ScaleBar scaleBar,
        List<Colouring.Kind> kinds) {
    private static final double START_OVERHANG = 0.025;
    private static final double NARROW = 0.2;
    private static final double STEEP = 0.5;
    private static final double LETTER_PX = 16;
    private static final double VALUE_PX = 22;
    private static final double LETTERED = 0.035;

    /** Copies the lists. */
    public LaneMap {
        grounds = List.copyOf(grounds);
        others = List.copyOf(others);
        lines = List.copyOf(lines);
        bridge = List.copyOf(bridge);
        marks = List.copyOf(marks);
        kinds = List.copyOf(kinds);
    }

    /**
     * A path.
     *
     * @param css its class in the style sheet
     * @param d its course
     */
    public record Line(String css, String d) {}

    /**
     * The timing line.
     *
     * @param x place along the page
     * @param y place up the page
     * @param turn by how much the arrow is turned clockwise, degrees
     * @param side where the arrow stands beside the lane, px
     */
    public record Start(String x, String y, String turn, String side) {}

    /**
     * A word or a sign on the drawing.
     *
     * @param x place along the page
     * @param y place up the page
     * @param sign "top", "slow", or "letter"
     * @param text what it says
     * @param anchor start, middle or end
     * @param dx by how much the text stands to the right of its place, px
     * @param dy by how much its middle stands below, px
     */
    public record Mark(String x, String y, String sign, String text, String anchor, String dx, String dy) {}

    /**
     * A length at the drawing's scale.
     *
     * @param width of the drawing's width, percent
     * @param label its length
     */
    public record ScaleBar(String width, String label) {
        static ScaleBar of(MapFrame frame) {
            double length = new Scale(0, frame.widthM(), 0, 1).step(5);
            String label =
                    length < 1 ? Figures.significant(1000 * length, 3) + " mm" : Figures.significant(length, 3) + " m";
            return new ScaleBar(Scale.percent(100 * length / frame.widthM()), label);
        }
    }

    /** The frame that shows all lanes of a track. */
    static MapFrame frame(Track track) {
        PlanBounds bounds = LanePlan.of(track, track.lanes().get(0)).bounds();
        for (Lane lane : track.lanes()) {
            bounds = bounds.with(LanePlan.of(track, lane).bounds());
        }
        return MapFrame.around(bounds);
    }

    /** All lanes alike, without a lap. */
    public static LaneMap plain(Track track, Lane lane) {
        return of(track, lane, Colouring.plain(LanePlan.of(track, lane).cells()), Optional.empty(), false);
    }

    /** The first lane by the speed of a lap, or all lanes alike; with the numbers of the pieces, counted from 1. */
    public static LaneMap numbered(Track track, Optional<PredictedLap> lap) {
        Lane first = track.lanes().get(0);
        LaneMap plain = lap.map(driven -> bySpeed(track, first, driven)).orElseGet(() -> plain(track, first));
        return new LaneMap(
                plain.summary,
                plain.viewBox,
                plain.grounds,
                plain.gates,
                plain.others,
                plain.lines,
                plain.underBridge,
                plain.bridge,
                plain.startLine,
                plain.start,
                both(
                        plain.marks.stream()
                                .filter(mark -> mark.sign().equals("ground"))
                                .toList(),
                        PieceNumbers.of(track, frame(track))),
                plain.scaleBar,
                plain.kinds);
    }

    private static List<Mark> both(List<Mark> some, List<Mark> others) {
        List<Mark> all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }

    /** A lap coloured by speed. */
    static LaneMap bySpeed(Track track, Lane lane, PredictedLap lap) {
        return of(track, lane, Colouring.bySpeed(lap), Optional.of(lap), false);
    }

    /** A lap coloured by what limits it. */
    static LaneMap byLimit(Track track, Lane lane, PredictedLap lap) {
        return of(track, lane, Colouring.byLimit(lap), Optional.of(lap), true);
    }

    private static LaneMap of(
            Track track, Lane lane, Colouring colouring, Optional<PredictedLap> lap, boolean lettered) {
        MapFrame frame = frame(track);
        LanePlan plan = LanePlan.of(track, lane);
        LanePaths paths = new LanePaths(plan, frame);
        List<CellRun> bridges = paths.bridges();
        StringBuilder cleared = new StringBuilder();
        bridges.forEach(span -> cleared.append(paths.course(span.fromCell(), span.toCell())));
        Grounds grounds = new Grounds(track, frame);
        List<Mark> marks = new ArrayList<>(grounds.words());
        lap.ifPresent(driven -> marks.addAll(extremes(plan, frame, driven.trace())));
        if (lettered) {
            marks.addAll(letters(plan, frame, colouring));
        }
        return new LaneMap(
                summary(track, lane, lap),
                frame.viewBox(),
                grounds.bands(),
                grounds.gates(),
                track.lanes().stream()
                        .filter(other -> !other.equals(lane))
                        .map(other -> new Line(slot(other), new LanePaths(LanePlan.of(track, other), frame).whole()))
                        .toList(),
                paths.lines(colouring),
                cleared.toString(),
                paths.lines(colouring, bridges),
                startLine(track, frame),
                start(plan, frame),
                marks,
                ScaleBar.of(frame),
                colouring.used());
    }

    /** How a lane's colour is drawn; empty without one. */
    static String slot(Lane lane) {
        return lane.colour().map(colour -> "slot-" + colour.word()).orElse("");
    }

    private static String summary(Track track, Lane lane, Optional<PredictedLap> lap) {
        String drawn = "%s from above, lane %s, %s m long"
                .formatted(track.name(), lane.name(), Figures.fixed(track.lengthM(lane), 2));
        return lap.map(best -> "%s: fastest %s m/s, slowest %s m/s"
                        .formatted(drawn, Figures.fixed(best.topMps(), 2), Figures.fixed(best.slowestMps(), 2)))
                .orElse(drawn);
    }

    /** Square across all lanes, and a little further. */
    private static String startLine(Track track, MapFrame frame) {
        double over = START_OVERHANG * frame.widthM();
        double left = track.lanes().stream().mapToDouble(Lane::offsetM).max().orElse(0) + over;
        double right = track.lanes().stream().mapToDouble(Lane::offsetM).min().orElse(0) - over;
        PlanPose middle = LanePlan.of(track, track.lanes().get(0)).at(0);
        double from = track.lanes().get(0).offsetM();
        return "M" + beside(frame, middle, left - from) + "L" + beside(frame, middle, right - from);
    }

    private static String beside(MapFrame frame, PlanPose pose, double leftM) {
        return frame.point(
                pose.xM() - leftM * Math.sin(pose.headingRad()), pose.yM() + leftM * Math.cos(pose.headingRad()));
    }

    /** The arrow stands on the inside, where no label comes. */
    private static Start start(LanePlan plan, MapFrame frame) {
        PlanPose pose = plan.at(0);
        boolean left = plan.at(plan.cells()).headingRad() >= pose.headingRad();
        double turn = -Math.toDegrees(Math.IEEEremainder(pose.headingRad(), 2 * Math.PI));
        return new Start(frame.percentX(pose), frame.percentY(pose), Scale.pixels(turn), Scale.pixels(left ? -26 : 26));
    }

    private static List<Mark> extremes(LanePlan plan, MapFrame frame, LapTrace trace) {
        int top = 0;
        int slow = 0;
        for (int edge = 1; edge < plan.cells(); edge++) {
            top = trace.speedMps(edge) > trace.speedMps(top) ? edge : top;
            slow = trace.speedMps(edge) < trace.speedMps(slow) ? edge : slow;
        }
        return List.of(
                mark(frame, plan, top, "top", Figures.fixed(trace.speedMps(top), 2) + " m/s"),
                mark(frame, plan, slow, "slow", Figures.fixed(trace.speedMps(slow), 2) + " m/s"));
    }

    private static List<Mark> letters(LanePlan plan, MapFrame frame, Colouring colouring) {
        List<Mark> letters = new ArrayList<>();
        for (CellRun run : colouring.runs()) {
            boolean seen = run.toCell() - run.fromCell() >= LETTERED * plan.cells();
            if (seen) {
                int middle = (run.fromCell() + run.toCell()) / 2;
                letters.add(
                        mark(frame, plan, middle, "letter", colouring.kind(run).letter()));
            }
        }
        return letters;
    }

    /** A letter stands square off the lane on its outer side; a long word above or below it, so that it stays on the page. */
    private static Mark mark(MapFrame frame, LanePlan plan, int edge, String sign, String text) {
        PlanPose pose = plan.at(edge);
        int out = plan.at(plan.cells()).headingRad() >= plan.at(0).headingRad() ? 1 : -1;
        double right = out * Math.sin(pose.headingRad());
        double down = out * Math.cos(pose.headingRad());
        boolean letter = sign.equals("letter");
        double along = frame.shareX(pose);
        String anchor =
                letter || (along >= NARROW && along <= 1 - NARROW) ? "middle" : along < NARROW ? "start" : "end";
        boolean below = Math.abs(down) > STEEP ? down > 0 : frame.shareY(pose) > 0.5;
        return new Mark(
                frame.percentX(pose),
                frame.percentY(pose),
                sign,
                text,
                anchor,
                Scale.pixels(letter ? LETTER_PX * right : 0),
                Scale.pixels(letter ? LETTER_PX * down : below ? VALUE_PX : -VALUE_PX));
    }
}
