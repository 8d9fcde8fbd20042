package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.lapwright.app.files.Problem;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.ChangeKind;
import org.lapwright.core.car.change.Values;
import org.lapwright.core.units.Reading;

/**
 * A change as JSON, {@code lapwright-change/1}: its kind, what was given for it, and the racer's note. A kind that a newer version
 * has added is kept as it stands, but cannot be done again here.
 */
public final class ChangeJson {
    /** The format that this version reads and writes. */
    public static final String FORMAT = "lapwright-change/1";

    private static final String KIND = "kind";
    private static final String NOTE = "note";
    private static final String VALUES = "values";
    private static final String VALUE = "value";
    private static final String DOUBT = "plus_minus";

    private ChangeJson() {}

    /**
     * A change with its note.
     *
     * @param change what was done
     * @param note the racer's word on it; may be empty
     */
    public record Noted(Change change, String note) {}

    /** The text of a change. */
    public static String write(Change change, String note) {
        ObjectNode json = Document.empty();
        json.put("format", FORMAT);
        json.put(KIND, change.kind().code());
        ObjectNode values = json.putObject(VALUES);
        change.values().numbers().forEach((key, reading) -> put(values, key, reading));
        change.values().texts().forEach(values::put);
        if (!note.isBlank()) {
            json.put(NOTE, note.strip());
        }
        return Document.text(json);
    }

    /** Reads a change. */
    public static FileReading<Noted> read(String text) {
        Document.Read document = Document.read(text, FORMAT);
        if (document.problem().isPresent()) {
            return FileReading.refused(document.problem().get());
        }
        ObjectNode json = document.object().orElseThrow();
        Optional<ChangeKind> kind = ChangeKind.find(json.path(KIND).asText());
        if (kind.isEmpty()) {
            return FileReading.refused(Problem.ofWhole(
                    "kind is " + JsonSection.shown(json.path(KIND)),
                    "It must be one of "
                            + java.util.Arrays.stream(ChangeKind.values())
                                    .map(ChangeKind::code)
                                    .toList()));
        }
        try {
            Change change = kind.get().of(values(json.path(VALUES)));
            return new FileReading<>(
                    Optional.of(new Noted(change, json.path(NOTE).asText("").strip())),
                    java.util.List.of(),
                    java.util.List.of());
        } catch (IllegalArgumentException wrong) {
            return FileReading.refused(Problem.ofWhole(String.valueOf(wrong.getMessage()), "Nothing was changed"));
        }
    }

    /** The racer's note in a change of any kind; empty where there is none. */
    public static String noteOf(String text) {
        return Document.read(text, FORMAT)
                .object()
                .map(json -> json.path(NOTE).asText("").strip())
                .orElse("");
    }

    static Values values(JsonNode given) {
        if (!(given instanceof ObjectNode object)) {
            return Values.NONE;
        }
        Values values = Values.NONE;
        for (java.util.Map.Entry<String, JsonNode> entry : object.properties()) {
            JsonNode value = entry.getValue();
            if (value.isTextual()) {
                values = values.with(entry.getKey(), value.textValue());
            } else if (value.isNumber()) {
                values = values.with(entry.getKey(), new Reading(value.doubleValue(), 0));
            } else if (value.path(VALUE).isNumber()) {
                values = values.with(
                        entry.getKey(),
                        new Reading(
                                value.path(VALUE).doubleValue(),
                                value.path(DOUBT).doubleValue()));
            } else {
                throw new IllegalArgumentException(
                        "values.%s is %s; it must be a number, a text, or {\"value\": …, \"plus_minus\": …}"
                                .formatted(entry.getKey(), JsonSection.shown(value)));
            }
        }
        return values;
    }

    private static void put(ObjectNode values, String key, Reading reading) {
        if (reading.isUncertain()) {
            values.putObject(key).put(VALUE, reading.value()).put(DOUBT, reading.plusMinus());
        } else {
            values.put(key, reading.value());
        }
    }
}
