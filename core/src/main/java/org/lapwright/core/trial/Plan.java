package org.lapwright.core.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Side;

/**
 * The laps that were to be driven, fixed before the first look, and how the session would go on after them.
 *
 * <p>A look is judged by the share of the plan's information that it has. A plan that shrinks to what happens to have
 * been driven would make every look the last one, and looking often would then fool anybody.
 */
final class Plan {
    private static final int LEAST_LAPS_A_RUN = 5;
    private static final int LAPS_OF_A_LATER_RUN = 10;

    private final List<Side> order;
    private final int[] lapsPerRun;
    private final String text;

    private Plan(List<Side> order, int[] lapsPerRun, String text) {
        this.order = order;
        this.lapsPerRun = lapsPerRun;
        this.text = text;
    }

    /** The plan as the racer stated it. */
    static Plan of(RunPlan stated) {
        int[] laps = new int[stated.order().size()];
        Arrays.fill(laps, stated.lapsPerRun());
        return new Plan(stated.order(), laps, stated.text());
    }

    /** What was driven, taken for the plan: the laps that count of each run. */
    static Plan asDriven(Layout driven) {
        int[] starts = driven.runStarts();
        List<Side> order = new ArrayList<>();
        int[] laps = new int[starts.length - 1];
        for (int r = 0; r < laps.length; r++) {
            order.add(driven.isAfter(starts[r]) ? Side.AFTER : Side.BEFORE);
            laps[r] = starts[r + 1] - starts[r];
        }
        return new Plan(order, laps, "as driven");
    }

    String text() {
        return text;
    }

    /** The planned laps, without times. */
    Layout layout() {
        int n = Arrays.stream(lapsPerRun).sum();
        int[] run = new int[n];
        boolean[] after = new boolean[n];
        int i = 0;
        for (int r = 0; r < lapsPerRun.length; r++) {
            for (int k = 0; k < lapsPerRun[r]; k++) {
                run[i] = r;
                after[i++] = order.get(r) == Side.AFTER;
            }
        }
        return Layout.of(new double[n], run, after);
    }

    /**
     * The laps driven so far with more laps behind them, in the order of this plan: first what the plan still wants,
     * then further runs that mirror its order, so that a straight drift cancels.
     *
     * @param driven the laps that count so far
     * @param more how many laps to add
     */
    Layout extended(Layout driven, int more) {
        int n = driven.rows();
        int[] run = new int[n + more];
        boolean[] after = new boolean[n + more];
        for (int i = 0; i < n; i++) {
            run[i] = driven.run(i);
            after[i] = driven.isAfter(i);
        }
        int lastRun = n == 0 ? -1 : run[n - 1];
        int runsBegun = driven.runStarts().length - 1;
        int inRun = n == 0 ? 0 : driven.position(n - 1);
        int at = Math.max(0, runsBegun - 1);
        for (int i = n; i < n + more; i++) {
            if (runsBegun == 0 || inRun >= lapsOfRun(at)) {
                at = runsBegun == 0 ? 0 : at + 1;
                runsBegun++;
                lastRun++;
                inRun = 0;
            }
            run[i] = lastRun;
            after[i] = inRun > 0 ? after[i - 1] : sideOfRun(at) == Side.AFTER;
            inRun++;
        }
        return Layout.of(new double[n + more], run, after);
    }

    private int lapsOfRun(int index) {
        if (index < lapsPerRun.length) {
            return lapsPerRun[index];
        }
        int[] sorted = lapsPerRun.clone();
        Arrays.sort(sorted);
        int typical = sorted.length == 0 ? LAPS_OF_A_LATER_RUN : sorted[sorted.length / 2];
        return Math.max(LEAST_LAPS_A_RUN, Math.min(typical, 2 * LAPS_OF_A_LATER_RUN));
    }

    private Side sideOfRun(int index) {
        if (index < order.size()) {
            return order.get(index);
        }
        List<Side> mirrored = new ArrayList<>(order);
        boolean odd = (index / order.size()) % 2 == 1;
        if (odd) {
            Collections.reverse(mirrored);
        }
        return mirrored.get(index % order.size());
    }
}
