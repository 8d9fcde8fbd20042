package org.lapwright.app.files;

import java.util.ArrayList;
import java.util.List;

/** Problems found so far; past {@value LapReading#MOST_PROBLEMS} they are only counted. */
final class ProblemList {
    private final List<Problem> listed = new ArrayList<>();
    private int count;

    void add(Problem problem) {
        count++;
        if (listed.size() < LapReading.MOST_PROBLEMS) {
            listed.add(problem);
        }
    }

    List<Problem> listed() {
        return List.copyOf(listed);
    }

    int count() {
        return count;
    }
}
