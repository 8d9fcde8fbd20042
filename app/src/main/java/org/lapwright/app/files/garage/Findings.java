package org.lapwright.app.files.garage;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.files.Problem;

/** What was found wrong or strange in one file so far. */
final class Findings {
    private final List<Problem> problems = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    void problem(String sentence) {
        problems.add(Problem.ofWhole(sentence, ""));
    }

    void note(String sentence) {
        notes.add(sentence);
    }

    int problemCount() {
        return problems.size();
    }

    List<Problem> problems() {
        return problems;
    }

    List<String> notes() {
        return notes;
    }
}
