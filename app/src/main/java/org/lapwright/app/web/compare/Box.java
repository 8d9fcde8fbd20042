package org.lapwright.app.web.compare;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.lapwright.app.files.Answers;
import org.lapwright.app.files.Question.Topic;
import org.lapwright.core.trial.session.Side;

/**
 * One box to paste laps into.
 *
 * @param side which set-up they were driven with, unless the text itself says so
 * @param text as pasted
 * @param answers to questions about the text
 */
public record Box(Side side, String text, Answers answers) {
    /** An empty box. */
    public static Box empty(Side side) {
        return new Box(side, "", Answers.NONE);
    }

    /** The name of a question's topic in the fields of the form. */
    public static String code(Topic topic) {
        return topic.name().toLowerCase(Locale.ROOT);
    }

    /** The answers as the form gives them, by the name of their topic. */
    static Answers answers(Map<String, String> given) {
        Map<Topic, String> byTopic = new EnumMap<>(Topic.class);
        for (Topic topic : Topic.values()) {
            if (given.containsKey(code(topic))) {
                byTopic.put(topic, given.get(code(topic)));
            }
        }
        return new Answers(byTopic);
    }
}
