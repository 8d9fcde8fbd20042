package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.units.Reading;

/**
 * What a car file says beside the numbers.
 *
 * @param scale what a full-size length is divided by, as 32; empty when the file does not say
 * @param notMeasured places of the numbers that are usual values, which nobody measured
 */
public record CarRemarks(OptionalInt scale, Set<String> notMeasured) {
    /** Nothing beside the numbers. */
    public static final CarRemarks NONE = new CarRemarks(OptionalInt.empty(), Set.of());

    static final String SCALE = "scale";
    static final String NOT_MEASURED = "not_measured";

    /** Copies the set. */
    public CarRemarks {
        notMeasured = Set.copyOf(notMeasured);
    }

    static CarRemarks of(ObjectNode json) {
        JsonNode scale = json.path(SCALE);
        Set<String> places = new TreeSet<>();
        json.path(NOT_MEASURED).forEach(entry -> places.add(entry.asText()));
        return new CarRemarks(
                scale.canConvertToExactIntegral() && scale.canConvertToInt() && scale.intValue() > 0
                        ? OptionalInt.of(scale.intValue())
                        : OptionalInt.empty(),
                places);
    }

    /** Without the numbers that are others in the second set-up: whoever changed them had a reason. */
    CarRemarks without(SetUp before, SetUp after) {
        Map<String, Reading> were = readings(before);
        Map<String, Reading> are = readings(after);
        Set<String> still = new TreeSet<>(notMeasured);
        still.removeIf(path -> were.containsKey(path) && !were.get(path).equals(are.get(path)));
        return new CarRemarks(scale, still);
    }

    void writeTo(ObjectNode json) {
        if (scale.isPresent() && json.path(SCALE).asInt() != scale.getAsInt()) {
            json.put(SCALE, scale.getAsInt());
        }
        if (scale.isEmpty()) {
            json.remove(SCALE);
        }
        if (notMeasured.isEmpty()) {
            json.remove(NOT_MEASURED);
        } else if (!of(json).notMeasured().equals(notMeasured)) {
            ArrayNode places = json.putArray(NOT_MEASURED);
            new TreeSet<>(notMeasured).forEach(places::add);
        }
    }

    private static Map<String, Reading> readings(SetUp setUp) {
        Map<String, Reading> readings = new HashMap<>();
        for (NamedReading number : setUp.numbers()) {
            readings.put(number.path(), number.reading());
        }
        return readings;
    }
}
