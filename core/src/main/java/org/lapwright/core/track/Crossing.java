package org.lapwright.core.track;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A place where a lane crosses itself.
 *
 * @param first the cell that comes first
 * @param second the cell that comes later
 * @param riseM how much higher the later one runs, m; negative when it runs below
 */
public record Crossing(int first, int second, double riseM) {
    /** More crossings than this are not looked for: the line is a scribble. */
    public static final int MOST = 200;

    /** Two lines this nearly parallel lie beside or on each other and do not cross: sine of the angle. */
    private static final double PARALLEL = 1e-3;

    /** So that a crossing on an edge belongs to one cell, whichever way its place was rounded. */
    private static final double ROUNDING = 1e-9;

    static List<Crossing> of(List<PlanPose> poses) {
        double reach = 1e-6;
        for (int i = 0; i + 1 < poses.size(); i++) {
            reach = Math.max(reach, span(poses, i));
        }
        Map<Long, List<Integer>> near = new HashMap<>();
        List<Crossing> found = new ArrayList<>();
        for (int i = 0; i + 1 < poses.size() && found.size() < MOST; i++) {
            long column = square(poses.get(i).xM(), reach);
            long row = square(poses.get(i).yM(), reach);
            for (long c = column - 2; c <= column + 2; c++) {
                for (long r = row - 2; r <= row + 2; r++) {
                    collect(poses, near.getOrDefault(key(c, r), List.of()), i, found);
                }
            }
            near.computeIfAbsent(key(column, row), empty -> new ArrayList<>()).add(i);
        }
        found.sort(Comparator.comparingInt(Crossing::first).thenComparingInt(Crossing::second));
        return List.copyOf(found.subList(0, Math.min(MOST, found.size())));
    }

    private static void collect(List<PlanPose> poses, List<Integer> earlier, int cell, List<Crossing> found) {
        int last = poses.size() - 2;
        for (int other : earlier) {
            boolean neighbours = cell - other < 2 || (other == 0 && cell == last);
            if (!neighbours && found.size() < MOST) {
                cross(poses, other, cell, found);
            }
        }
    }

    /** Two chords cross where both shares along them lie from 0 up to below 1. */
    private static void cross(List<PlanPose> poses, int first, int second, List<Crossing> found) {
        PlanPose a = poses.get(first);
        PlanPose b = poses.get(first + 1);
        PlanPose c = poses.get(second);
        PlanPose d = poses.get(second + 1);
        double ux = b.xM() - a.xM();
        double uy = b.yM() - a.yM();
        double vx = d.xM() - c.xM();
        double vy = d.yM() - c.yM();
        double turn = ux * vy - uy * vx;
        if (Math.abs(turn) <= PARALLEL * Math.hypot(ux, uy) * Math.hypot(vx, vy)) {
            return;
        }
        double wx = c.xM() - a.xM();
        double wy = c.yM() - a.yM();
        double along = (wx * vy - wy * vx) / turn;
        double across = (wx * uy - wy * ux) / turn;
        if (isInside(along) && isInside(across)) {
            double under = a.zM() + along * (b.zM() - a.zM());
            double over = c.zM() + across * (d.zM() - c.zM());
            found.add(new Crossing(first, second, over - under));
        }
    }

    private static boolean isInside(double share) {
        return share >= -ROUNDING && share < 1 - ROUNDING;
    }

    private static double span(List<PlanPose> poses, int cell) {
        PlanPose a = poses.get(cell);
        PlanPose b = poses.get(cell + 1);
        return Math.hypot(b.xM() - a.xM(), b.yM() - a.yM());
    }

    private static long square(double place, double size) {
        return (long) Math.floor(place / size);
    }

    private static long key(long column, long row) {
        return column * 0x1_0000_0001L ^ row;
    }
}
