package org.lapwright.app.usecase.bench;

import java.time.Clock;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.lapwright.app.usecase.HistoryStore;
import org.lapwright.app.usecase.HistoryStore.NewStep;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.HistoryStore.StoredStep;
import org.lapwright.app.usecase.HistoryStore.Why;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.units.Check;

/** What did I change, and how do I get back to what worked? */
public final class LogChange {
    private static final int LONGEST_NOTE = 400;

    private final HistoryStore store;
    private final Clock clock;

    /** Logs to {@code store}. */
    public LogChange(HistoryStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /**
     * A change to log.
     *
     * @param car name of the car
     * @param onto the step that is on it; empty when none was logged yet
     * @param base its file before
     * @param before the car before
     * @param change what is done to it
     * @param note the racer's word on it; may be empty
     */
    public record Doing(String car, OptionalLong onto, String base, Build before, Change change, String note) {
        /** Checks the length of the note. */
        public Doing {
            note = note.isBlank() ? "" : Check.text(note, LONGEST_NOTE, "note");
        }

        /** What is done, in one line. */
        public String words() {
            String done = change.sentence(before);
            return note.isEmpty() ? done : done + " (" + note + ")";
        }
    }

    /** The steps of a car; empty when nothing was logged for it. */
    public Optional<StoredHistory> history(String car) {
        return store.history(car);
    }

    /** The kinds of change that were ever logged in this garage, by their code. */
    public Set<String> kindsLogged() {
        return store.kindsLogged();
    }

    /**
     * Logs a change; when this returns it is on disk.
     *
     * @param doing what to log
     * @param json the change as it is kept
     * @param file the car's file after it
     * @param requestKey made up once for this change
     * @throws HistoryStore.StaleBenchException if somebody has logged another change meanwhile
     */
    public StoredHistory log(Doing doing, String json, String file, String requestKey) {
        NewStep step = new NewStep(
                doing.car(),
                doing.onto(),
                doing.base(),
                doing.change().kind().code(),
                doing.words(),
                json,
                file,
                false,
                clock.instant());
        return store.log(step, requestKey);
    }

    /** The step that undoing would take off, with its words; empty when there is none. */
    public static Optional<StoredStep> undoable(StoredHistory history) {
        return Optional.of(history.presentStep()).filter(step -> step.parent().isPresent());
    }

    /**
     * Undoes the last change: what it was made to is on the car again.
     *
     * @param car name of the car
     * @param present the step to undo, which has to be on the car
     * @param requestKey made up once for this
     * @throws HistoryStore.StaleBenchException if another one is on the car by now
     * @throws IllegalArgumentException if there is nothing to undo
     */
    public StoredHistory undo(String car, long present, String requestKey) {
        StoredHistory history = own(car);
        long parent = history.steps().stream()
                .filter(step -> step.id() == present)
                .flatMapToLong(step -> step.parent().stream())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is nothing to undo on “%s”".formatted(car)));
        return store.putOn(car, present, parent, Why.UNDO, requestKey, clock.instant());
    }

    /**
     * Goes back, or forward, to any set-up.
     *
     * @throws HistoryStore.StaleBenchException if another set-up than {@code from} is on the car by now
     */
    public StoredHistory goTo(String car, long from, long to, String requestKey) {
        return store.putOn(own(car).car(), from, to, Why.BACK, requestKey, clock.instant());
    }

    private StoredHistory own(String car) {
        return store.history(car)
                .filter(history -> !history.example())
                .orElseThrow(() ->
                        new IllegalArgumentException("“%s” has no changes of yours; log one first".formatted(car)));
    }
}
