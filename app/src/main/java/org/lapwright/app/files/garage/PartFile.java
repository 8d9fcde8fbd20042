package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.Problem;
import org.lapwright.core.car.shelf.Part;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.car.shelf.PartKind;
import org.lapwright.core.car.shelf.PartState;

/**
 * A part to hand on, {@code lapwright-part/1}: {@code kind}, {@code name}, {@code laps} run on it, and {@code services}, each
 * {@code what} is to be done and {@code every_laps}. No note, no car, no date.
 *
 * @param kind what it is
 * @param name which one
 * @param laps run on it
 * @param services to be done to it
 */
public record PartFile(PartKind kind, String name, int laps, List<PartEvent.Reminder> services) {
    /** The format that this version reads and writes. */
    public static final String FORMAT = "lapwright-part/1";

    private static final int MOST_SERVICES = 20;

    /** Checks what it says as the shelf does. */
    public PartFile {
        name = new Part(0, kind, name, "").name();
        new PartEvent.LapsAdded(laps);
        services = List.copyOf(services);
    }

    /** What is handed on of a part. */
    public static PartFile of(PartState state) {
        return new PartFile(
                state.part().kind(),
                state.part().name(),
                (int) Math.min(state.laps(), PartEvent.LapsAdded.MOST),
                state.services().stream()
                        .map(service -> new PartEvent.Reminder(service.name(), service.everyLaps()))
                        .toList());
    }

    /** Reads a file. */
    public static FileReading<PartFile> read(String text) {
        Document.Read document = Document.read(text, FORMAT);
        if (document.problem().isPresent()) {
            return FileReading.refused(document.problem().get());
        }
        try {
            ObjectNode json = document.object().orElseThrow();
            PartFile file = new PartFile(
                    new PartKind(text(json, "kind")), text(json, "name"), laps(json), services(json.path("services")));
            return new FileReading<>(Optional.of(file), List.of(), List.of());
        } catch (IllegalArgumentException wrong) {
            return FileReading.refused(
                    Problem.ofWhole(String.valueOf(wrong.getMessage()), "Nothing was put on the shelf"));
        }
    }

    /** The file's text. */
    public String text() {
        ObjectNode json = Document.empty();
        json.put("format", FORMAT).put("kind", kind.label()).put("name", name).put("laps", laps);
        ArrayNode list = json.putArray("services");
        for (PartEvent.Reminder service : services) {
            list.addObject().put("what", service.service()).put("every_laps", service.everyLaps());
        }
        return Document.text(json);
    }

    private static int laps(ObjectNode json) {
        int laps = json.has("laps") ? whole(json, "laps") : 0;
        if (laps < 0) {
            throw new IllegalArgumentException("laps is %d; it must be 0 or more".formatted(laps));
        }
        return laps;
    }

    private static List<PartEvent.Reminder> services(JsonNode given) {
        if (given.isMissingNode()) {
            return List.of();
        }
        if (!given.isArray() || given.size() > MOST_SERVICES) {
            throw new IllegalArgumentException("services is %s; it must be a list of at most %d"
                    .formatted(JsonSection.shown(given), MOST_SERVICES));
        }
        List<PartEvent.Reminder> services = new ArrayList<>();
        for (JsonNode service : given) {
            services.add(new PartEvent.Reminder(text(service, "what"), everyLaps(service)));
        }
        return services;
    }

    private static int everyLaps(JsonNode service) {
        int laps = whole(service, "every_laps");
        if (laps < 1) {
            throw new IllegalArgumentException("every_laps is %d; it must be 1 or more".formatted(laps));
        }
        return laps;
    }

    private static String text(JsonNode json, String key) {
        if (!json.path(key).isTextual()) {
            throw new IllegalArgumentException(
                    "%s is %s; it must be a text".formatted(key, JsonSection.shown(json.path(key))));
        }
        return json.path(key).textValue();
    }

    private static int whole(JsonNode json, String key) {
        if (!json.path(key).isIntegralNumber() || !json.path(key).canConvertToInt()) {
            throw new IllegalArgumentException(
                    "%s is %s; it must be a whole number".formatted(key, JsonSection.shown(json.path(key))));
        }
        return json.path(key).intValue();
    }
}
