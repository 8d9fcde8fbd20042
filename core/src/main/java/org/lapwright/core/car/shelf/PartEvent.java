package org.lapwright.core.car.shelf;

import org.lapwright.core.units.Check;

/** Something that happened to a part. */
public sealed interface PartEvent {
    /** The word in storage. */
    String code();

    /**
     * Fitted to a car: off whatever it was on, and what a place that holds one part held before goes back on the shelf.
     *
     * @param car name of the car
     */
    record Fitted(String car) implements PartEvent {
        /** Checks the name. */
        public Fitted {
            car = Check.text(car, Part.LONGEST_NAME, "name of the car");
        }

        @Override
        public String code() {
            return "fitted";
        }
    }

    /** Taken off its car. */
    record TakenOff() implements PartEvent {
        @Override
        public String code() {
            return "off";
        }
    }

    /**
     * Laps that no comparison tells of, or that it wrongly tells of.
     *
     * @param laps to add; fewer than none take some away
     */
    record LapsAdded(int laps) implements PartEvent {
        /** Most laps at once. */
        public static final int MOST = 100_000;

        /** Checks the number. */
        public LapsAdded {
            Check.inRange(laps, -MOST, MOST, "laps to add");
        }

        @Override
        public String code() {
            return "laps";
        }
    }

    /**
     * To be done every so many laps; counted from now on when it is new.
     *
     * @param service what is to be done
     * @param everyLaps how often; 0 ends the reminder
     */
    record Reminder(String service, int everyLaps) implements PartEvent {
        /** Longest name of a service. */
        public static final int LONGEST = 60;

        /** Checks both. */
        public Reminder {
            service = Check.text(service, LONGEST, "what is to be done");
            Check.inRange(everyLaps, 0, LapsAdded.MOST, "laps between two services");
        }

        @Override
        public String code() {
            return "reminder";
        }
    }

    /**
     * Done: its laps begin anew.
     *
     * @param service what was done
     */
    record Serviced(String service) implements PartEvent {
        /** Checks the name. */
        public Serviced {
            service = Check.text(service, Reminder.LONGEST, "what was done");
        }

        @Override
        public String code() {
            return "serviced";
        }
    }

    /** Worn out, sold or lost: off its car and out of sight, but on record. */
    record PutAway() implements PartEvent {
        @Override
        public String code() {
            return "away";
        }
    }

    /** On the shelf again. */
    record BroughtBack() implements PartEvent {
        @Override
        public String code() {
            return "back";
        }
    }
}
