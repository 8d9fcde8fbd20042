package org.lapwright.app.usecase.advice;

import java.util.Comparator;
import java.util.Optional;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.HistoryStore.StoredStep;
import org.lapwright.app.usecase.SavedComparison;

/**
 * A logged change that was driven: A was the car before it, B the car after it.
 *
 * @param before the step it was made from
 * @param after the step itself
 */
record DrivenStep(StoredStep before, StoredStep after) {
    /** The step that a comparison is about: the last one of its words that was there before it. */
    static Optional<DrivenStep> of(StoredHistory history, SavedComparison comparison) {
        return history.steps().stream()
                .filter(each -> each.words().equals(comparison.kept().change())
                        && !each.at().isAfter(comparison.savedAt()))
                .max(Comparator.comparing(StoredStep::at))
                .flatMap(after -> before(history, after).map(before -> new DrivenStep(before, after)));
    }

    private static Optional<StoredStep> before(StoredHistory history, StoredStep after) {
        return history.steps().stream()
                .filter(each -> after.parent().isPresent()
                        && each.id() == after.parent().getAsLong())
                .findFirst();
    }
}
