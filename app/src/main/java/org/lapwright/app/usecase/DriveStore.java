package org.lapwright.app.usecase;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.units.Check;

/**
 * Where drives live: what was fixed before the first lap, and everything that happened since, in its order. What has returned
 * survives a kill; nothing is ever altered or deleted.
 */
public interface DriveStore {
    /** Begins a drive. The same request key begins one. */
    Drive begin(NewDrive drive, String requestKey, Instant at);

    /**
     * Adds what happened, in one transaction. A pass that came before (same source, boot and sequence), or a press that was sent
     * before (same request key), is taken once.
     *
     * @throws IllegalArgumentException if there is no such drive, or it is over
     */
    Written happened(long drive, List<DriveEvent> events, Instant at);

    /** How far the record reaches; whoever follows a drive sees by it whether somebody else wrote. */
    Mark mark();

    /** The drive begun last, if it is not over. */
    Optional<Drive> open();

    /** A drive by its number. */
    Optional<Drive> drive(long id);

    /** The drive that was kept as a comparison, by the key that it was kept under; empty if the comparison is of no drive. */
    OptionalLong driveKeptAs(long comparison);

    /** The key under which a drive is kept as a comparison: a drive is kept once. */
    static String requestToKeep(long drive) {
        return "drive " + drive;
    }

    /** The drive that is kept under a key, if it is such a key. */
    static OptionalLong driveToKeep(String request) {
        return request.matches("drive \\d{1,18}")
                ? OptionalLong.of(Long.parseLong(request.substring(request.indexOf(' ') + 1)))
                : OptionalLong.empty();
    }

    /**
     * How far the record of all drives reaches. It only grows, and survives a restart.
     *
     * @param drive number of the newest drive; 0 before the first
     * @param event number of what happened last; 0 before the first
     */
    record Mark(long drive, long event) {}

    /**
     * What became of a batch.
     *
     * @param before how far the record reached before it
     * @param fresh what was not there already, in the order in which it came
     * @param after how far it reaches now
     */
    record Written(Mark before, List<DriveEvent> fresh, Mark after) {
        /** Copies the list. */
        public Written {
            fresh = List.copyOf(fresh);
        }
    }

    /** Something that happened. */
    sealed interface DriveEvent {
        /** The gate saw something. */
        record Passed(Pass pass) implements DriveEvent {}

        /**
         * The racer pressed something.
         *
         * @param press what
         * @param requestKey made up once for it
         */
        record Pressed(Press press, String requestKey) implements DriveEvent {}
    }

    /** What a racer can press. */
    enum Press {
        /** The car came off. */
        CAME_OFF("came-off"),
        /** The run is held up: what passes now is no lap. */
        PAUSED("paused"),
        /** The run goes on: the next pass starts the clock. */
        GOES_ON("goes-on"),
        /** The car is as it has to be for the next run of the plan. */
        NEXT_RUN("next-run"),
        /** The drive is over and kept. */
        KEPT("kept"),
        /** The drive is over and counts for nothing. */
        DROPPED("dropped");

        private final String code;

        Press(String code) {
            this.code = code;
        }

        /** The word in storage and forms. */
        public String code() {
            return code;
        }

        /** The press with this word. */
        public static Optional<Press> find(String code) {
            return java.util.Arrays.stream(values())
                    .filter(press -> press.code.equals(code))
                    .findFirst();
        }
    }

    /**
     * What is fixed before the first lap.
     *
     * @param car its name
     * @param change what was changed, 0 to 500 characters
     * @param track its name
     * @param lane its name; may be empty
     * @param laneNumber the number under which passes on it come
     * @param driver who drives; may be empty
     * @param conditions of the evening; may be empty
     * @param plan runs and laps
     * @param warmUp laps at the beginning of each run that count for nothing
     */
    record NewDrive(
            String car,
            String change,
            String track,
            String lane,
            int laneNumber,
            String driver,
            String conditions,
            RunPlan plan,
            int warmUp) {
        /** Most laps to warm up. */
        public static final int MOST_WARM_UP = 20;

        private static final int LONGEST_NAME = 80;
        private static final int LONGEST_NOTE = 500;

        /** Checks each. */
        public NewDrive {
            car = Check.text(car, LONGEST_NAME, "car");
            track = Check.text(track, LONGEST_NAME, "track");
            lane = optional(lane, LONGEST_NAME, "lane");
            driver = optional(driver, LONGEST_NAME, "driver");
            change = optional(change, LONGEST_NOTE, "change");
            conditions = optional(conditions, LONGEST_NOTE, "conditions");
            Check.inRange(laneNumber, 1, Pass.MOST_LANES, "lane number");
            Check.inRange(warmUp, 0, MOST_WARM_UP, "laps to warm up");
        }

        private static String optional(String text, int longest, String name) {
            return text.isBlank() ? "" : Check.text(text, longest, name);
        }
    }

    /**
     * A drive with all that happened.
     *
     * @param id its number
     * @param fixed what was fixed before it
     * @param startedAt when
     * @param events in the order in which they came
     */
    record Drive(long id, NewDrive fixed, Instant startedAt, List<DriveEvent> events) {
        /** Copies the list. */
        public Drive {
            events = List.copyOf(events);
        }

        /** Whether it was kept or dropped. */
        public boolean isOver() {
            return events.stream()
                    .anyMatch(event -> event instanceof DriveEvent.Pressed pressed
                            && (pressed.press() == Press.KEPT || pressed.press() == Press.DROPPED));
        }
    }
}
