package org.lapwright.app.files.garage;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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

    /**
     * Reads a file of a format section by section, every mistake named.
     *
     * @param text the file
     * @param format as {@code lapwright-car/1}
     * @param content what its outermost section says; what is missing in it may be empty only with a problem told
     */
    static <T> FileReading<T> of(String text, String format, Function<JsonSection, Optional<T>> content) {
        Document.Read document = Document.read(text, format);
        if (document.problem().isPresent()) {
            return refused(document.problem().get());
        }
        Findings findings = new Findings();
        JsonSection file = new JsonSection("", document.object().orElseThrow(), findings);
        file.text("format");
        Optional<T> read = content.apply(file);
        boolean sound = findings.problems().isEmpty();
        return new FileReading<>(sound ? read : Optional.empty(), findings.problems(), findings.notes());
    }

    static <T> FileReading<T> refused(Problem problem) {
        return new FileReading<>(Optional.empty(), List.of(problem), List.of());
    }
}
