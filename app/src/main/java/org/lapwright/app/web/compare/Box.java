package org.lapwright.app.web.compare;

import java.util.Map;
import org.lapwright.core.trial.session.Side;

/**
 * One box to paste laps into.
 *
 * @param side which set-up they were driven with, unless the text itself says so
 * @param text as pasted
 * @param answers to questions about the text, by question
 */
public record Box(Side side, String text, Map<String, String> answers) {
    /** Copies the map. */
    public Box {
        answers = Map.copyOf(answers);
    }

    /** An empty box. */
    public static Box empty(Side side) {
        return new Box(side, "", Map.of());
    }
}
