package org.lapwright.app.usecase.run;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.lapwright.app.usecase.capture.SoundLevel;

/** How loud the lanes of a gate on the sound card were over the last ten seconds. */
final class LevelHistory {
    /** Moments of some 23 ms in a column: wide enough to be seen. */
    private static final int TOGETHER = 4;

    private static final int COLUMNS = 108;

    private final Deque<List<SoundLevel>> columns = new ArrayDeque<>();
    private List<SoundLevel> column = List.of();
    private int moments;

    /** Takes the next moment; says whether it filled a column. */
    boolean add(List<SoundLevel> lanes) {
        column = moments == 0 ? List.copyOf(lanes) : joined(column, lanes);
        moments++;
        if (moments < TOGETHER) {
            return false;
        }
        moments = 0;
        columns.addLast(column);
        if (columns.size() > COLUMNS) {
            columns.removeFirst();
        }
        return true;
    }

    private static List<SoundLevel> joined(List<SoundLevel> so, List<SoundLevel> further) {
        List<SoundLevel> both = new ArrayList<>();
        for (int lane = 0; lane < further.size(); lane++) {
            SoundLevel one = so.get(lane);
            SoundLevel other = further.get(lane);
            both.add(new SoundLevel(
                    Math.max(one.loudest(), other.loudest()),
                    Math.max(one.needed(), other.needed()),
                    one.passes() + other.passes()));
        }
        return both;
    }

    /** The levels of each lane, the oldest first. */
    List<List<SoundLevel>> lanes() {
        List<List<SoundLevel>> lanes = new ArrayList<>();
        int count = columns.isEmpty() ? 0 : columns.getLast().size();
        for (int i = 0; i < count; i++) {
            int lane = i;
            lanes.add(columns.stream().map(each -> each.get(lane)).toList());
        }
        return lanes;
    }
}
