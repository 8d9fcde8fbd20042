package org.lapwright.core.dynamics;

import org.lapwright.core.num.GoldenSection;

/**
 * The fastest lap by searching every cell numerically, with nothing taken for granted: the set of speeds from which the
 * rest of the lap can be driven may have a lower end (a car that needs a run-up to a hill), the sets may be empty, and no
 * formula for any single limit is used beyond {@link FeasibleRange}. Slow, some 20 µs a cell; {@link SweepGroup} leaves to
 * it what it cannot do, and tests hold the two together.
 */
final class PatientSweep {
    private static final int HALVINGS = 60;

    /** Sets that have not settled by then still serve: the sweep forwards tries every step itself. */
    private static final int MOST_LAPS_BACK = 12;

    private static final int MOST_LAPS = 100;
    private static final int PATIENCE = 5;
    private static final double TOUCHING = -1e-9;
    private static final double SETTLED = 1e-12;

    private final ForceRows forces;
    private final LineRows lines;
    private final FeasibleRange range;
    private final double ceiling;

    /** Least and greatest w at each node from which the rest of the lap can be driven. */
    final double[] least;

    final double[] most;

    /** The fastest lap: w at each node. */
    final double[] w;

    private final Rows peaks;

    /** Where no speed helps, when {@link #solve} says so. */
    int stuckCell;

    /** What is in the way there. */
    Limit stuckLimit = Limit.SLIDE;

    private double nextLeast;
    private double nextMost;
    private double here;
    private double far;
    private boolean braking;
    private double found;

    PatientSweep(ForceRows forces, LineRows lines) {
        this.forces = forces;
        this.lines = lines;
        this.range = new FeasibleRange(forces, lines);
        // Far above any lap's speed: here nothing is saved by a tight bound.
        this.ceiling = 4 * forces.fastestSquared;
        least = new double[forces.lane.cells + 1];
        most = new double[forces.lane.cells + 1];
        w = new double[forces.lane.cells + 1];
        peaks = new Rows(StepRows.PEAK / Rows.STRIDE + 1, forces.lane.elements);
    }

    /** Finds the fastest lap, or says that there is none. */
    boolean solve() {
        if (!findPeaks()) {
            return false;
        }
        double[] cap = new double[forces.lane.cells + 1];
        SpeedPeaks.capNodes(forces, lines.cap, peaks, cap);
        int n = forces.lane.cells;
        least[n] = 0;
        most[n] = cap[n];
        double change = Double.POSITIVE_INFINITY;
        for (int lap = 0; lap < MOST_LAPS_BACK && change > SETTLED * ceiling; lap++) {
            if (lap > 0) {
                // Not after the last lap: what the last cell was reckoned for has to stay.
                most[n] = most[0];
                least[n] = least[0];
            }
            for (int i = n - 1; i >= 0; i--) {
                if (!backward(i, cap[i])) {
                    stuckCell = i;
                    return false;
                }
            }
            change = Math.max(most[n] - most[0], least[0] - least[n]);
        }
        return forward();
    }

    /** Says at once when there is a place that cannot be passed at any speed: the sweeps would take long to find out. */
    private boolean findPeaks() {
        for (int e = 0; e < forces.lane.elements; e++) {
            if (!findPeak(e)) {
                stuckCell = e < forces.lane.cells ? e : forces.lane.joints[(e - forces.lane.cells) / 2];
                stuckLimit = blame();
                return false;
            }
        }
        return true;
    }

    /** The greatest w at which any acceleration is possible, and where a cell at that w leads. */
    private boolean findPeak(int e) {
        nextLeast = 0;
        nextMost = Double.POSITIVE_INFINITY;
        double best = widest(e);
        double room = width(e, best);
        if (room < TOUCHING) {
            return false;
        }
        double top = room < 0 ? best : lastGood(e, best, ceiling);
        width(e, top);
        if (top >= forces.rows.get(ForceRows.FREE, e)) {
            peaks.set(StepRows.PEAK, e, StepRows.FAR);
            peaks.set(StepRows.HELPFUL, e, StepRows.FAR);
        } else {
            double there = (range.low + range.high) / 2;
            peaks.set(StepRows.PEAK, e, top);
            peaks.set(StepRows.HELPFUL, e, top + forces.lane.rows.get(TrailedLane.DS, e) * there);
        }
        return true;
    }

    private boolean backward(int i, double cap) {
        nextLeast = least[i + 1];
        nextMost = most[i + 1];
        double best = widest(i);
        if (width(i, best) < TOUCHING) {
            stuckLimit = blame();
            return false;
        }
        double bottom = lastGood(i, best, 0);
        double top = lastGood(i, best, ceiling);
        least[i] = Math.max(0, leastNear(i, bottom, top));
        most[i] = Math.min(cap, usualNear(i));
        if (most[i] < least[i]) {
            most[i] = Math.min(cap, mostNear(i, bottom, top));
        }
        if (least[i] > most[i] * (1 + 1e-9)) {
            stuckLimit = blamePeak(i);
            return false;
        }
        return true;
    }

    /**
     * Beyond the peak a faster far edge would only pay for itself with a slower near edge, and the greatest near edge of all
     * would let the speed alternate about the limit curve. A far edge that cannot quite be reached does no harm: the sweep
     * forwards takes a slower one.
     */
    private double usualNear(int i) {
        braking = true;
        far = Math.min(nextMost, Math.max(peaks.get(StepRows.HELPFUL, i), nextLeast));
        double middle = lastGood(i, widest(i), ceiling);
        braking = false;
        return Math.max(2 * middle - far, 0);
    }

    private Limit blame() {
        return range.highLimit == Limit.SLIDE ? range.lowLimit : range.highLimit;
    }

    /** Room for u at mid-cell w, given the speeds wanted at the far end. */
    private double width(int e, double middle) {
        double plain = range.widthAt(e, middle);
        if (nextMost == Double.POSITIVE_INFINITY) {
            return plain;
        }
        double ds = forces.lane.rows.get(TrailedLane.DS, e);
        if (braking) {
            return (far - middle) / ds - range.low;
        }
        range.low = Math.max(range.low, (nextLeast - middle) / ds);
        range.high = Math.min(range.high, Math.min(middle, nextMost - middle) / ds);
        return range.high - range.low;
    }

    /** The w with most room. */
    private double widest(int e) {
        return GoldenSection.greatest(w -> width(e, w), 0, ceiling);
    }

    /** Towards {@code bound} from a good w, the last with room. */
    private double lastGood(int e, double good, double bound) {
        if (width(e, bound) >= 0) {
            return bound;
        }
        double a = good;
        double b = bound;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (a + b) / 2;
            if (width(e, middle) >= 0) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return a;
    }

    /** The least near-end w over mid-cell w from bottom to top. */
    private double leastNear(int e, double bottom, double top) {
        return -GoldenSection.highest(middle -> -near(e, middle, false), bottom, top);
    }

    /** The greatest near-end w over mid-cell w from bottom to top. */
    private double mostNear(int e, double bottom, double top) {
        return GoldenSection.highest(middle -> near(e, middle, true), bottom, top);
    }

    private double near(int e, double middle, boolean slowing) {
        double room = width(e, middle);
        double u = room < 0 ? (range.low + range.high) / 2 : slowing ? range.low : range.high;
        return middle - u * forces.lane.rows.get(TrailedLane.DS, e);
    }

    /** What keeps the car slow at the node before a cell. */
    private Limit blamePeak(int cell) {
        int before = cell > 0 ? cell - 1 : forces.lane.cells - 1;
        int slower = peaks.get(StepRows.PEAK, before) < peaks.get(StepRows.PEAK, cell) ? before : cell;
        for (int j = 0; j < forces.lane.joints.length; j++) {
            if (forces.lane.joints[j] == cell) {
                int e = forces.lane.cells + 2 * j;
                slower = peaks.get(StepRows.PEAK, e) < peaks.get(StepRows.PEAK, e + 1) ? e : e + 1;
            }
        }
        range.widthAt(slower, peaks.get(StepRows.PEAK, slower));
        return blame();
    }

    /**
     * The lap that ends as fast as it began. A start that is too fast for the lap after it, or ends slower than it began, bounds
     * the answer from above, one that ends faster from below; between them {@link LapStart} goes on, and in case that creeps the
     * bounds are halved now and then.
     */
    private boolean forward() {
        int n = forces.lane.cells;
        double slow = least[0];
        double fast = most[0];
        double near = SETTLED * ceiling;
        LapStart line = new LapStart();
        w[0] = fast;
        for (int lap = 1; lap < MOST_LAPS; lap++) {
            double start = w[0];
            stuckCell = 0;
            while (stuckCell < n && step(stuckCell)) {
                stuckCell++;
            }
            boolean round = stuckCell == n;
            double end = round ? w[n] : slow;
            if (round && (Math.abs(end - start) <= near || fast - slow <= near)) {
                return true;
            }
            if (!round && fast - slow <= near) {
                return false;
            }
            if (end < start) {
                fast = start;
            } else {
                slow = start;
            }
            double next = round ? line.next(start, end, fast) : fast;
            boolean inside = next > slow && next < fast && lap % PATIENCE > 0;
            w[0] = inside ? next : slow + (fast - slow) / 2;
        }
        return false;
    }

    private boolean step(int i) {
        here = w[i];
        nextLeast = least[i + 1];
        nextMost = most[i + 1];
        double a = here / 2;
        double b = (here + nextMost) / 2;
        if (slack(i, b) < 0) {
            double good = slackest(i, a, b);
            if (slack(i, good) < TOUCHING) {
                stuckLimit = blame();
                return false;
            }
            double bad = b;
            b = good;
            for (int k = 0; k < HALVINGS; k++) {
                double middle = (b + bad) / 2;
                if (slack(i, middle) >= 0) {
                    b = middle;
                } else {
                    bad = middle;
                }
            }
        }
        found = Math.max(0, 2 * b - here);
        w[i + 1] = found;
        return true;
    }

    /** How far inside all limits the step from {@link #here} over mid-cell w stays, in m/s². */
    private double slack(int e, double middle) {
        range.widthAt(e, middle);
        double ds = forces.lane.rows.get(TrailedLane.DS, e);
        double u = (middle - here) / ds;
        return Math.min(Math.min(range.high - u, u - range.low), (2 * middle - here - nextLeast) / ds);
    }

    private double slackest(int e, double from, double to) {
        return GoldenSection.greatest(w -> slack(e, w), from, to);
    }
}
