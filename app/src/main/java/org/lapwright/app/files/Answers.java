package org.lapwright.app.files;

import java.util.Map;
import java.util.Optional;

/**
 * The racer's answers to questions about a text.
 *
 * @param byTopic the code of the choice for each topic answered
 */
public record Answers(Map<Question.Topic, String> byTopic) {
    /** None yet. */
    public static final Answers NONE = new Answers(Map.of());

    /** The comma is a decimal mark. */
    public static final String COMMA_DECIMAL = "decimal";

    /** The comma separates laps. */
    public static final String COMMA_SEPARATES = "separates";

    /** Whole numbers are seconds. */
    public static final String SECONDS = "s";

    /** Whole numbers are milliseconds. */
    public static final String MILLISECONDS = "ms";

    /** Copies the map. */
    public Answers {
        byTopic = Map.copyOf(byTopic);
    }

    /** The answer on this topic, if given. */
    public Optional<String> find(Question.Topic topic) {
        return Optional.ofNullable(byTopic.get(topic));
    }
}
