package org.lapwright.app.usecase;

import java.util.List;
import java.util.Map;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.Side;

/** Reads laps that were typed or pasted into a box, says what it understood, and asks where it cannot know. */
public interface LapBoxReader {
    /**
     * Reads the text of one box.
     *
     * @param text as pasted; may be empty
     * @param answers the racer's answers to questions asked about an earlier reading of this box, by question id
     */
    Reading read(String text, Map<String, String> answers);

    /**
     * What was read.
     *
     * @param runs the runs in the order driven; laps that could not be read are left out
     * @param sides the side of each run if the text named them, else empty
     * @param understoodAs how the text was taken, such as "decimal comma, one lap a line"; empty for an empty box
     * @param problems what could not be read
     * @param questions what has to be answered before the laps can be believed
     */
    record Reading(
            List<TimedRun> runs,
            List<Side> sides,
            String understoodAs,
            List<Problem> problems,
            List<Question> questions) {
        /** Copies the lists; sides are named for all runs or for none. */
        public Reading {
            runs = List.copyOf(runs);
            sides = List.copyOf(sides);
            problems = List.copyOf(problems);
            questions = List.copyOf(questions);
            if (!sides.isEmpty() && sides.size() != runs.size()) {
                throw new IllegalArgumentException(sides.size() + " sides named for " + runs.size() + " runs");
            }
        }

        /** How many laps were read. */
        public int laps() {
            return runs.stream().mapToInt(run -> run.laps().size()).sum();
        }
    }

    /**
     * Something in the text that is not a lap.
     *
     * @param line where, from 1
     * @param text the piece of text
     * @param what what is wrong with it, such as "is not a time"
     * @param remedy what would be right
     */
    record Problem(int line, String text, String what, String remedy) {}

    /**
     * Something that only the racer knows.
     *
     * @param id names the question among the answers
     * @param text the question
     * @param choices the answers to choose from
     */
    record Question(String id, String text, List<Choice> choices) {
        /** Copies the list. */
        public Question {
            choices = List.copyOf(choices);
        }
    }

    /**
     * One possible answer.
     *
     * @param value as given back in the answers
     * @param label as shown
     */
    record Choice(String value, String label) {}
}
