package org.lapwright.app.usecase;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.lapwright.core.units.Check;

/**
 * Where the set-ups of each car live as a tree of steps. What {@code log} and {@code putOn} have returned survives a kill; no step is
 * ever altered or deleted.
 */
public interface HistoryStore {
    /**
     * The steps of a car, however its name is spelt: the owner's, or those of the example garage while it is shown and the owner
     * has no car of that name. Empty when nothing was ever logged for it.
     */
    Optional<StoredHistory> history(String car);

    /**
     * Logs a change: its step is on the car when this returns. The same request key logs once.
     *
     * @param step what was done
     * @param requestKey a key that the sender made up for this, 1 to 80 characters
     * @throws StaleBenchException if another set-up is on the car than the one it was done to
     */
    StoredHistory log(NewStep step, String requestKey);

    /**
     * Puts an older set-up on the car again.
     *
     * @param car its name
     * @param from the step that is on it
     * @param to the step to put on it
     * @param why undone, or gone back to
     * @param requestKey a key that the sender made up for this, 1 to 80 characters
     * @param at when
     * @throws StaleBenchException if another set-up than {@code from} is on the car
     * @throws IllegalArgumentException if the car has no such step
     */
    StoredHistory putOn(String car, long from, long to, Why why, String requestKey, Instant at);

    /** Kinds of change that the owner has ever logged, by their code. */
    Set<String> kindsLogged();

    /** Why another set-up came on the car. */
    enum Why {
        /** A change was logged. */
        STEP("step"),
        /** The last change was undone. */
        UNDO("undo"),
        /** The racer went back to it. */
        BACK("back"),
        /** It was what stayed after before and after were driven. */
        VERDICT("verdict");

        private final String code;

        Why(String code) {
            this.code = code;
        }

        /** The word in storage. */
        public String code() {
            return code;
        }
    }

    /**
     * A step on record.
     *
     * @param id its number
     * @param parent the step it was made from; empty for the first
     * @param kind kind of change, {@code first} for the first, {@code measured} where only its numbers were measured anew
     * @param words what was done, as it was said
     * @param change what was given for it, as JSON; empty for the first
     * @param file the whole car file after it
     * @param at when
     */
    record StoredStep(
            long id, OptionalLong parent, String kind, String words, String change, String file, Instant at) {}

    /**
     * The steps of one car.
     *
     * @param car its name as first spelled
     * @param example whether it belongs to the example garage
     * @param steps in the order in which they were made
     * @param present number of the one on the car
     */
    record StoredHistory(String car, boolean example, List<StoredStep> steps, long present) {
        /** Copies the list. */
        public StoredHistory {
            steps = List.copyOf(steps);
        }

        /** The step on the car. */
        public StoredStep presentStep() {
            return steps.stream()
                    .filter(step -> step.id() == present)
                    .findFirst()
                    .orElseThrow();
        }
    }

    /**
     * A step to log.
     *
     * @param car name of the car
     * @param onto the step it was done to; empty when none was logged yet
     * @param base the car file it was done to, which becomes the first step when there is none
     * @param kind kind of change
     * @param words what was done, up to {@value #LONGEST_WORDS} characters
     * @param change what was given for it, as JSON
     * @param file the car file after it
     * @param example whether it belongs to the example garage
     * @param at when
     */
    record NewStep(
            String car,
            OptionalLong onto,
            String base,
            String kind,
            String words,
            String change,
            String file,
            boolean example,
            Instant at) {
        /** Longest sentence about a change. */
        public static final int LONGEST_WORDS = 1000;

        /** Checks name and words. */
        public NewStep {
            car = Check.text(car, 80, "name of the car");
            words = Check.text(words, LONGEST_WORDS, "what was done");
        }
    }

    /** Somebody else has logged a change meanwhile. */
    final class StaleBenchException extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final transient StoredHistory now;

        /** What there is now. */
        public StaleBenchException(StoredHistory now) {
            super("Another set-up is on “%s” by now: %s. Nothing of yours was logged."
                    .formatted(
                            now.car(),
                            now.presentStep().words().isEmpty()
                                    ? "the first one"
                                    : now.presentStep().words()));
            this.now = now;
        }

        /** What there is now. */
        public StoredHistory now() {
            return now;
        }
    }
}
