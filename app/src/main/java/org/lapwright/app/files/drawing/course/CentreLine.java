package org.lapwright.app.files.drawing.course;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.lapwright.app.files.drawing.Trouble;
import org.lapwright.core.track.PlanPoint;

/**
 * A loop of a drawing as the centre line of a track.
 *
 * @param points in the direction of travel from the timing line on; the lower left corner of the drawn line is (0, 0)
 * @param remarks sentences: how near the line stays to the drawing, what was done to its corners
 */
public record CentreLine(List<PlanPoint> points, List<String> remarks) {
    private static final double SHORTEST_MM = 100;
    private static final double LONGEST_MM = 1e6;
    private static final double WIDEST_MM = 100_000;

    /** Copies the lists. */
    public CentreLine {
        points = List.copyOf(points);
        remarks = List.copyOf(remarks);
    }

    /**
     * How it is to be driven.
     *
     * @param leftRound whether against the clock
     * @param startMm where the timing line is, mm along the line from where the drawing begins
     * @param cornerMm radius that corners are rounded with; 0 leaves them
     */
    public record Wish(boolean leftRound, double startMm, double cornerMm) {}

    /**
     * Lays a loop out.
     *
     * @throws Trouble if it makes no track, with what would be right
     */
    public static CentreLine of(Loop loop, Wish wish) {
        check(loop);
        List<String> remarks = new ArrayList<>();
        List<Spot> spots = loop.spots();
        if (wish.cornerMm() > 0) {
            Corners corners = Corners.rounded(spots, wish.cornerMm());
            spots = corners.spots();
            remarks.add(said(corners, wish.cornerMm()));
        } else if (Corners.count(spots) > 0) {
            remarks.add("The line has %d sharp corners, which no car can follow; they can be rounded."
                    .formatted(Corners.count(spots)));
        }
        SplineFit fit = new SplineFit(new ClosedLine(from(spots, wish, loop.area() > 0)));
        List<PlanPoint> points = placed(fit.spots(), new Loop(loop.number(), spots, 1));
        remarks.add("A smooth line through %d points stays within %s mm of the drawing%s."
                .formatted(
                        points.size(),
                        String.format(java.util.Locale.ROOT, "%.2f", Math.max(0.01, fit.worstMm() + Loops.FLAT_MM)),
                        wish.cornerMm() > 0 ? " as rounded" : ""));
        return new CentreLine(points, remarks);
    }

    private static void check(Loop loop) {
        double length = loop.lengthMm();
        if (!(length >= SHORTEST_MM && length <= LONGEST_MM) || Math.max(loop.widthMm(), loop.heightMm()) > WIDEST_MM) {
            throw Trouble.ofWhole(
                    "The line is %s m long and %s m wide; a lap is from 0.1 to 1000 m long and at most 100 m wide"
                            .formatted(metres(length), metres(Math.max(loop.widthMm(), loop.heightMm()))),
                    "Say what one unit of the drawing is, or give a length you know");
        }
    }

    private static String metres(double mm) {
        return String.format(java.util.Locale.ROOT, mm < 100 ? "%.5f" : "%.2f", mm / 1000);
    }

    private static String said(Corners corners, double asked) {
        if (corners.count() == 0) {
            return "The line has no sharp corners; nothing was rounded.";
        }
        String smaller = corners.smallestMm() < asked - 0.05
                ? "; where the drawing has no room for that, down to %s mm"
                        .formatted(Loops.tenths(corners.smallestMm()))
                : "";
        return "Sharp corners rounded: %d, with a radius of %s mm%s. There the line leaves the drawing by up to %s mm."
                .formatted(corners.count(), Loops.tenths(asked), smaller, Loops.tenths(corners.furthestMm()));
    }

    /** The line in the wanted direction, with the timing line as its first place. */
    private static List<Spot> from(List<Spot> spots, Wish wish, boolean drawnLeftRound) {
        List<Spot> course = new ArrayList<>(spots);
        if (wish.leftRound() != drawnLeftRound) {
            Collections.reverse(course);
            Collections.rotate(course, 1);
        }
        ClosedLine line = new ClosedLine(course);
        double start = wish.startMm() - Math.floor(wish.startMm() / line.length()) * line.length();
        if (start == 0) {
            return course;
        }
        List<Spot> started = new ArrayList<>(line.part(start, line.length()));
        started.addAll(line.part(0, start));
        return new Polyline(started, true).spots();
    }

    private static List<PlanPoint> placed(List<Spot> spots, Loop drawn) {
        double left = drawn.leftMm();
        double low = drawn.topMm() - drawn.heightMm();
        return spots.stream()
                .map(spot -> new PlanPoint(micron(spot.x() - left), micron(spot.y() - low)))
                .toList();
    }

    /** Files do not need more. */
    private static double micron(double mm) {
        return Math.rint(1000 * mm) / 1000;
    }
}
