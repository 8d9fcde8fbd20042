package org.lapwright.app.files.garage;

import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.Problem;

/**
 * What came out of reading a file: its content, or the problems that stand in the way.
 *
 * @param accepted the content; empty exactly when there are problems
 * @param problems what is wrong, at most {@value #MOST_PROBLEMS}
 * @param notes keys that look like a measure, are not used, and are kept as they are
 * @param <T> what the file holds
 */
public record FileReading<T>(Optional<T> accepted, List<Problem> problems, List<String> notes) {
    /** More problems than this are not listed: the file is something else altogether. */
    public static final int MOST_PROBLEMS = 20;

    /** Copies the lists. */
    public FileReading {
        problems = problems.stream().limit(MOST_PROBLEMS).toList();
        notes = List.copyOf(notes);
        if (accepted.isPresent() != problems.isEmpty()) {
            throw new IllegalArgumentException("a file is either accepted or has problems");
        }
    }

    static <T> FileReading<T> refused(Problem problem) {
        return new FileReading<>(Optional.empty(), List.of(problem), List.of());
    }
}
