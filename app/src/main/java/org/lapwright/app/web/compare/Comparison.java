package org.lapwright.app.web.compare;

import java.util.List;
import org.lapwright.app.files.LapReading;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;

/**
 * What the boxes amount to.
 *
 * @param readings what was read in each box
 * @param session all runs in the order driven, with the racer's word on single laps
 * @param words the words that still belong to a lap
 * @param notices sentences about what was dropped or is too much
 * @param tooMuch whether there are more laps than a verdict takes
 */
public record Comparison(
        List<BoxReading> readings, Session session, List<LapWord> words, List<String> notices, boolean tooMuch) {
    /** More laps than anyone drives for one change. */
    public static final int MOST_LAPS = 2000;

    /** Copies the lists. */
    public Comparison {
        readings = List.copyOf(readings);
        words = List.copyOf(words);
        notices = List.copyOf(notices);
    }

    /** Whether a question about the text is still open. */
    public boolean hasQuestions() {
        return readings.stream().anyMatch(box -> !box.reading().questions().isEmpty());
    }

    /**
     * What was read in one box.
     *
     * @param box the box
     * @param reading what was read
     * @param runs its runs, with their sides and kinds of laps; empty while there is too much to describe
     */
    public record BoxReading(Box box, LapReading reading, List<DescribedRun> runs) {
        /** Copies the list. */
        public BoxReading {
            runs = List.copyOf(runs);
        }
    }

    /**
     * One run of a box.
     *
     * @param side before or after
     * @param stint its laps and what they amount to
     */
    public record DescribedRun(Side side, Stint stint) {}
}
