package org.lapwright.app.web.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapwright.app.web.bench.PlanView.Label;
import org.lapwright.app.web.bench.PlanView.Line;
import org.lapwright.app.web.bench.PlanView.Point;

/** One column of labels beside the car: each as near to its place as the others let it. */
final class PlanLabels {
    private static final double LINE = 16;
    private static final double GAP = 9;
    private static final double BAR = 9;

    private final boolean left;
    private final List<Wanted> wanted = new ArrayList<>();

    PlanLabels(boolean left) {
        this.left = left;
    }

    private record Wanted(Point at, List<String> lines, double share) {
        double height() {
            return LINE * lines.size() + (share >= 0 ? BAR : 0) + GAP;
        }
    }

    void add(Point at, List<String> lines, double share) {
        wanted.add(new Wanted(at, lines, share));
    }

    void add(Point at, String... lines) {
        add(at, List.of(lines), -1);
    }

    /** Height that the column needs. */
    double height() {
        return wanted.stream().mapToDouble(Wanted::height).sum();
    }

    /** Places them between two heights, in the order of their places, without overlap. */
    List<Label> place(double top, double bottom) {
        List<Wanted> ordered = new ArrayList<>(wanted);
        ordered.sort(Comparator.comparingDouble(label -> label.at().y()));
        double[] tops = new double[ordered.size()];
        double free = top;
        for (int i = 0; i < tops.length; i++) {
            tops[i] = Math.max(free, ordered.get(i).at().y() - ordered.get(i).height() / 2);
            free = tops[i] + ordered.get(i).height();
        }
        double limit = bottom;
        for (int i = tops.length - 1; i >= 0; i--) {
            tops[i] = Math.min(tops[i], limit - ordered.get(i).height());
            limit = tops[i];
        }
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < tops.length; i++) {
            labels.add(label(ordered.get(i), tops[i]));
        }
        return labels;
    }

    private Label label(Wanted what, double top) {
        double x = left ? 0 : PlanView.WIDTH - PlanView.COLUMN;
        double edge = left ? PlanView.COLUMN + 2 : x - 4;
        double y = top + LINE / 2;
        return new Label(
                x,
                PlanDrawing.rounded(top + LINE - 3),
                "start",
                what.lines(),
                new Line(edge, PlanDrawing.rounded(y), what.at().x(), what.at().y()),
                what.share());
    }
}
