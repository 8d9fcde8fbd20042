package org.lapwright.app.files.drawing;

import java.awt.geom.Line2D;
import java.util.Arrays;

/**
 * A B-spline of a DXF drawing. Up to the third degree and without weights each span is a Bézier curve, whose control points are
 * values of the span's blossom (Ramshaw, Blossoms are polar forms, 1989): de Boor's algorithm with another parameter on each
 * level. Others are followed by points.
 */
final class DxfSpline {
    private static final int HIGHEST_DEGREE = 10;
    private static final int DEEPEST = 12;
    private static final double FINE = 2e-6;

    private final int degree;
    private final double[] knots;
    private final double[] x;
    private final double[] y;
    private final double[] weights;
    private final double fine;

    private DxfSpline(int degree, double[] knots, double[] x, double[] y, double[] weights) {
        this.degree = degree;
        this.knots = knots;
        this.x = x;
        this.y = y;
        this.weights = weights;
        this.fine = FINE * (spread(x) + spread(y));
    }

    /**
     * Draws it.
     *
     * @return why it could not be drawn, as a part of a sentence; empty if it was
     */
    static String draw(DxfEntity entity, Pen pen) {
        double[] x = entity.all(10);
        double[] y = entity.all(20);
        double[] knots = entity.all(40);
        double degree = entity.number(71, 3);
        double[] weights = entity.all(41);
        String trouble = trouble(degree, knots, x, y);
        if (!trouble.isEmpty()) {
            return trouble;
        }
        boolean weighted = weights.length == x.length && Arrays.stream(weights).anyMatch(w -> w != weights[0]);
        if (weighted && Arrays.stream(weights).anyMatch(w -> !(w > 1e-9))) {
            return "it has a weight that is not above zero";
        }
        double[] used = weighted ? weights : new double[0];
        new DxfSpline((int) degree, knots, x, y, used).draw(pen);
        return "";
    }

    private static String trouble(double degree, double[] knots, double[] x, double[] y) {
        if (x.length == 0) {
            return "it has no control points (points it passes through are not enough)";
        }
        if (x.length != y.length || degree != Math.rint(degree) || degree < 1 || degree > HIGHEST_DEGREE) {
            return "its degree or its control points are crooked";
        }
        if (x.length < degree + 1 || knots.length != x.length + (int) degree + 1) {
            return "it has %d control points and %d knots, which do not go together at degree %d"
                    .formatted(x.length, knots.length, (int) degree);
        }
        for (int i = 1; i < knots.length; i++) {
            if (!(knots[i] >= knots[i - 1])) {
                return "its knots do not increase";
            }
        }
        return knots[(int) degree] < knots[x.length] ? "" : "its knots are all the same";
    }

    private void draw(Pen pen) {
        boolean begun = false;
        for (int span = degree; span < x.length; span++) {
            if (!(knots[span + 1] > knots[span])) {
                continue;
            }
            if (!begun) {
                double[] start = bezierPoint(span, 0);
                pen.move(start[0], start[1]);
                begun = true;
            }
            if (weights.length > 0 || degree > 3) {
                follow(span, knots[span], knots[span + 1], DEEPEST, pen);
            } else {
                bezier(span, pen);
            }
        }
    }

    private void bezier(int span, Pen pen) {
        double[] end = bezierPoint(span, degree);
        double[] first = bezierPoint(span, 1);
        switch (degree) {
            case 1 -> pen.line(end[0], end[1]);
            case 2 -> pen.quadratic(first[0], first[1], end[0], end[1]);
            default -> {
                double[] second = bezierPoint(span, 2);
                pen.cubic(first[0], first[1], second[0], second[1], end[0], end[1]);
            }
        }
    }

    /** Control point {@code j} of a span: the blossom at the near end, and {@code j} times at the far end. */
    private double[] bezierPoint(int span, int j) {
        double[] at = new double[degree];
        for (int i = 0; i < degree; i++) {
            at[i] = i < degree - j ? knots[span] : knots[span + 1];
        }
        return blossom(span, at);
    }

    private double[] point(int span, double t) {
        double[] at = new double[degree];
        Arrays.fill(at, t);
        return blossom(span, at);
    }

    /** Halves a part until it is straight; three places are looked at, so that a wave does not pass for a line. */
    private void follow(int span, double from, double to, int deeper, Pen pen) {
        double[] end = point(span, to);
        double off = 0;
        for (double share : new double[] {0.25, 0.5, 0.75}) {
            double[] there = point(span, from + share * (to - from));
            off = Math.max(off, Line2D.ptSegDist(pen.x(), pen.y(), end[0], end[1], there[0], there[1]));
        }
        if (deeper == 0 || (off < fine && deeper < DEEPEST - 1)) {
            pen.line(end[0], end[1]);
            return;
        }
        double middle = (from + to) / 2;
        follow(span, from, middle, deeper - 1, pen);
        follow(span, middle, to, deeper - 1, pen);
    }

    private double[] blossom(int span, double[] at) {
        double[][] d = new double[degree + 1][];
        for (int j = 0; j <= degree; j++) {
            int i = span - degree + j;
            double w = weights.length > 0 ? weights[i] : 1;
            d[j] = new double[] {x[i] * w, y[i] * w, w};
        }
        for (int level = 1; level <= degree; level++) {
            for (int j = degree; j >= level; j--) {
                double low = knots[j + span - degree];
                double share = (at[level - 1] - low) / (knots[j + 1 + span - level] - low);
                for (int k = 0; k < 3; k++) {
                    d[j][k] = (1 - share) * d[j - 1][k] + share * d[j][k];
                }
            }
        }
        return new double[] {d[degree][0] / d[degree][2], d[degree][1] / d[degree][2]};
    }

    private static double spread(double[] values) {
        return Arrays.stream(values).max().orElse(0)
                - Arrays.stream(values).min().orElse(0);
    }
}
