package org.lapwright.core.car.shelf;

import java.util.List;
import java.util.Optional;

/**
 * How a part stands.
 *
 * @param part which
 * @param car the car it is fitted to; empty while it lies on the shelf
 * @param laps run on it
 * @param services what is to be done to it every so often, in the order in which the racer first said so
 * @param isAway whether it was put away
 */
public record PartState(Part part, Optional<String> car, long laps, List<Service> services, boolean isAway) {
    /** Copies the list. */
    public PartState {
        services = List.copyOf(services);
    }

    /** Whether anything is to be done to it now. */
    public boolean isDue() {
        return !isAway && services.stream().anyMatch(Service::isDue);
    }

    /**
     * Something to be done every so many laps.
     *
     * @param name what
     * @param everyLaps how often, at least 1
     * @param lapsSince laps run since it was done last, or since the reminder was set
     */
    public record Service(String name, int everyLaps, long lapsSince) {
        /** Whether it is to be done now. */
        public boolean isDue() {
            return lapsSince >= everyLaps;
        }

        /** Laps until it is to be done; none when it is due. */
        public long lapsLeft() {
            return Math.max(0, everyLaps - lapsSince);
        }
    }
}
