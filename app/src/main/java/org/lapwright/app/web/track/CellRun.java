package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.function.IntUnaryOperator;

/**
 * Neighbouring cells that are drawn alike.
 *
 * @param kind how
 * @param fromCell the first cell
 * @param toCell one after the last
 */
public record CellRun(int kind, int fromCell, int toCell) {
    /**
     * Runs of a whole lap. One too short to be seen goes to the run before it.
     *
     * @param cells how many cells
     * @param kind how to draw a cell
     * @param placeM where an edge is, m
     * @param shortestM the shortest run that can be seen, m
     */
    static List<CellRun> of(int cells, IntUnaryOperator kind, IntToDoubleFunction placeM, double shortestM) {
        List<CellRun> seen = new ArrayList<>();
        int from = 0;
        while (from < cells) {
            int to = from + 1;
            while (to < cells && kind.applyAsInt(to) == kind.applyAsInt(from)) {
                to++;
            }
            boolean tooShort = placeM.applyAsDouble(to) - placeM.applyAsDouble(from) < shortestM;
            append(seen, new CellRun(kind.applyAsInt(from), from, to), tooShort);
            from = to;
        }
        return seen;
    }

    private static void append(List<CellRun> seen, CellRun next, boolean tooShort) {
        int last = seen.size() - 1;
        if (last >= 0 && (tooShort || seen.get(last).kind == next.kind)) {
            seen.set(last, new CellRun(seen.get(last).kind, seen.get(last).fromCell, next.toCell));
        } else {
            seen.add(next);
        }
    }
}
