package org.lapwright.app.files.drawing.course;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.files.drawing.Trouble;
import org.lapwright.core.num.PeriodicSpline;

/**
 * Places on a closed line, so close together that the periodic cubic spline through them, with the chord length as parameter,
 * follows the line. Even at first; a span is halved where the spline leaves the line, where it turns, and where its neighbour is
 * much shorter.
 */
final class SplineFit {
    /** Half of what is promised, so that rounding and lanes beside it have room, mm. */
    private static final double NEAR_MM = 0.25;

    private static final double PROMISED_MM = 0.5;
    private static final double WIDEST_MM = 50;
    private static final double NARROWEST_MM = 1;
    private static final double NARROWEST_IN_TURN_MM = 10;
    private static final double WIDEST_TURN = Math.toRadians(15);
    private static final double STEEPEST = 2.2;
    private static final int FEWEST = 16;
    private static final int MANY = 2500;
    private static final int MOST = 5000;
    private static final int PARTS = 16;

    private final ClosedLine line;
    private double[] nodes;
    private double worst;

    /** Fits a line; {@link #spots} has the places. */
    SplineFit(ClosedLine line) {
        this.line = line;
        double length = line.length();
        double wide = Math.min(length / FEWEST, Math.max(WIDEST_MM, length / MANY));
        int count = (int) Math.ceil(length / wide);
        nodes = new double[count + 1];
        for (int i = 0; i <= count; i++) {
            nodes[i] = length * i / count;
        }
        boolean changed = true;
        while (changed) {
            changed = refined();
        }
    }

    List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < nodes.length - 1; i++) {
            spots.add(line.at(nodes[i]));
        }
        return spots;
    }

    /** How far the spline leaves the line, mm. */
    double worstMm() {
        return worst;
    }

    /** Halves what has to be halved; a span is never halved below the narrowest, so this comes to an end. */
    private boolean refined() {
        double[] off = deviations();
        int n = off.length;
        List<Double> finer = new ArrayList<>();
        worst = 0;
        for (int i = 0; i < n; i++) {
            double span = span(i);
            boolean tooFar = off[i] > NEAR_MM && span > 2 * NARROWEST_MM;
            boolean turns = span > 2 * NARROWEST_IN_TURN_MM && line.turning(nodes[i], nodes[i + 1]) > WIDEST_TURN;
            double neighbour = Math.min(span(Math.floorMod(i - 1, n)), span((i + 1) % n));
            finer.add(nodes[i]);
            if (tooFar || turns || span > STEEPEST * neighbour) {
                finer.add((nodes[i] + nodes[i + 1]) / 2);
            } else if (off[i] > PROMISED_MM) {
                throw tooSharp(line.at(nodes[i]));
            }
            worst = Math.max(worst, off[i]);
        }
        finer.add(nodes[n]);
        if (finer.size() > MOST + 1) {
            throw Trouble.ofWhole(
                    "The line has so many bends and corners that 5000 points do not follow it",
                    "Round its corners, or draw it more smoothly");
        }
        boolean changed = finer.size() > nodes.length;
        nodes = finer.stream().mapToDouble(Double::doubleValue).toArray();
        return changed;
    }

    private double span(int i) {
        return nodes[i + 1] - nodes[i];
    }

    private static Trouble tooSharp(Spot place) {
        return Trouble.ofWhole(
                "Near %s the line turns too sharply for a smooth course".formatted(place.said()), "Round its corners");
    }

    private double[] deviations() {
        int n = nodes.length - 1;
        double[] x = new double[n];
        double[] y = new double[n];
        double[] chords = new double[n + 1];
        List<Spot> at = spots();
        for (int i = 0; i < n; i++) {
            x[i] = at.get(i).x();
            y[i] = at.get(i).y();
            double chord = at.get(i).distance(at.get((i + 1) % n));
            if (!(chord > Polyline.SAME)) {
                throw tooSharp(at.get(i));
            }
            chords[i + 1] = chords[i] + chord;
        }
        PeriodicSpline alongX = new PeriodicSpline(chords, x);
        PeriodicSpline alongY = new PeriodicSpline(chords, y);
        double[] off = new double[n];
        for (int i = 0; i < n; i++) {
            List<Spot> smooth = new ArrayList<>();
            for (int k = 0; k < PARTS; k++) {
                double t = chords[i] + (chords[i + 1] - chords[i]) * k / PARTS;
                smooth.add(new Spot(alongX.value(t), alongY.value(t)));
            }
            smooth.add(at.get((i + 1) % n));
            List<Spot> drawn = line.part(nodes[i], nodes[i + 1]);
            off[i] = Math.max(farthest(smooth, drawn), farthest(drawn, smooth));
        }
        return off;
    }

    /** How far the farthest corner of one line is from the other line. */
    private static double farthest(List<Spot> corners, List<Spot> other) {
        double farthest = 0;
        for (Spot corner : corners) {
            double nearest = Double.MAX_VALUE;
            for (int i = 1; i < other.size(); i++) {
                nearest = Math.min(nearest, corner.fromLine(other.get(i - 1), other.get(i)));
            }
            farthest = Math.max(farthest, nearest);
        }
        return farthest;
    }
}
