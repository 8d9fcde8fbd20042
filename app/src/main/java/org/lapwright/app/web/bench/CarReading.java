package org.lapwright.app.web.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapwright.app.files.garage.CarFile;

/**
 * What a form amounts to.
 *
 * @param file the car's file; empty exactly when there are problems
 * @param problems what is wrong by the name of the field, in the order of the form
 * @param notices what is wrong with the car as a whole
 */
public record CarReading(Optional<CarFile> file, Map<String, String> problems, List<String> notices) {
    /** Keeps the order. */
    public CarReading {
        problems = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(problems));
        notices = List.copyOf(notices);
    }

    /** A form that nobody has sent yet. */
    public static CarReading unread() {
        return new CarReading(Optional.empty(), Map.of(), List.of());
    }

    /** The same with one more problem, which stands in the way. */
    public CarReading refused(String field, String problem) {
        Map<String, String> more = new LinkedHashMap<>(problems);
        more.put(field, problem);
        return new CarReading(Optional.empty(), more, notices);
    }
}
