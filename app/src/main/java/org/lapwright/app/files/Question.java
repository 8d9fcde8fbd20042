package org.lapwright.app.files;

import java.util.List;

/**
 * Something that the text leaves open and only the racer can say.
 *
 * @param topic what it is about
 * @param text the question
 * @param choices the answers, each with what it would make of the text
 */
public record Question(Topic topic, String text, List<Choice> choices) {
    /** Copies the list. */
    public Question {
        choices = List.copyOf(choices);
    }

    /** What can be open. */
    public enum Topic {
        /** Is the comma a decimal mark, or does it separate laps? */
        COMMA,
        /** Are whole numbers seconds or milliseconds? */
        UNIT,
        /** Which column holds the lap times? */
        COLUMN
    }

    /**
     * One answer.
     *
     * @param code what to send back
     * @param label what it means, with an example from the text
     */
    public record Choice(String code, String label) {}
}
