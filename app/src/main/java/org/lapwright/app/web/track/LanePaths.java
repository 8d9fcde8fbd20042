package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.track.Crossing;
import org.lapwright.core.track.LanePlan;

/** Lanes as SVG paths; one path for each way of drawing, however many runs it has. */
final class LanePaths {
    /** What no eye sees beside a line: this share of the drawing's greater side. */
    private static final double UNSEEN = 1 / 4000.0;

    /** The least rise that makes a bridge of a crossing, m. */
    private static final double BRIDGE_M = 0.02;

    /** How much of a bridge is drawn on top, m to each side. */
    private static final double SPAN_M = 0.16;

    private final LanePlan plan;
    private final MapFrame frame;

    LanePaths(LanePlan plan, MapFrame frame) {
        this.plan = plan;
        this.frame = frame;
    }

    /** The whole lane as one path. */
    String whole() {
        return course(0, plan.cells());
    }

    /** The lane, one path a kind. */
    List<LaneMap.Line> lines(Colouring colouring) {
        return lines(colouring, List.of(new CellRun(0, 0, plan.cells())));
    }

    /** Only what lies in these windows, one path a kind. */
    List<LaneMap.Line> lines(Colouring colouring, List<CellRun> windows) {
        List<LaneMap.Line> lines = new ArrayList<>();
        for (int kind = 0; kind < colouring.kinds().size(); kind++) {
            StringBuilder d = new StringBuilder();
            for (CellRun run : colouring.runs()) {
                for (CellRun window : windows) {
                    int from = Math.max(run.fromCell(), window.fromCell());
                    int to = Math.min(run.toCell(), window.toCell());
                    if (run.kind() == kind && from < to) {
                        d.append(course(from, to));
                    }
                }
            }
            if (!d.isEmpty()) {
                lines.add(new LaneMap.Line(colouring.kinds().get(kind).css(), d.toString()));
            }
        }
        return lines;
    }

    /** The cells that bridge another part of the lane. */
    List<CellRun> bridges() {
        List<CellRun> bridges = new ArrayList<>();
        int reach = (int) Math.ceil(SPAN_M / cellM());
        for (Crossing crossing : plan.crossings()) {
            if (Math.abs(crossing.riseM()) >= BRIDGE_M) {
                int over = crossing.riseM() > 0 ? crossing.second() : crossing.first();
                bridges.add(new CellRun(0, Math.max(0, over - reach), Math.min(plan.cells(), over + 1 + reach)));
            }
        }
        return bridges;
    }

    private double cellM() {
        double length = 0;
        for (int i = 0; i < plan.cells(); i++) {
            length += Math.hypot(
                    plan.at(i + 1).xM() - plan.at(i).xM(),
                    plan.at(i + 1).yM() - plan.at(i).yM());
        }
        return Math.max(length / plan.cells(), 1e-6);
    }

    /** From one edge to another. */
    String course(int from, int to) {
        StringBuilder d = new StringBuilder("M").append(frame.point(plan.at(from)));
        new Chords(plan, UNSEEN * Math.max(frame.widthM(), frame.heightM()))
                .between(from, to, edge -> d.append('L').append(frame.point(plan.at(edge))));
        return d.toString();
    }
}
