package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.car.change.Trim;

/** The trim of a car in its file: shims, front gap, body screws, and which part is fitted where. */
final class TrimJson {
    static final String TRIM = "trim";
    private static final String SHIMS = "shims_mm";
    private static final String FITTED = "fitted";

    private TrimJson() {}

    /** Reads it; what is wrong goes to the section's findings. Without the section there is nothing noted. */
    static Optional<Trim> read(JsonSection car) {
        Optional<JsonSection> found = car.child(TRIM);
        if (found.isEmpty()) {
            return Optional.of(Trim.NONE);
        }
        JsonSection trim = found.get();
        List<Double> shims = new ArrayList<>();
        for (JsonNode entry : trim.entries(SHIMS)) {
            if (entry.isNumber()) {
                shims.add(entry.doubleValue());
            } else {
                trim.problem(trim.pathOf(SHIMS) + " has " + JsonSection.shown(entry) + "; its entries must be numbers "
                        + Trim.SHIM.range());
            }
        }
        OptionalDouble gap = trim.number(Trim.FRONT_GAP);
        OptionalDouble turns = trim.number(Trim.BODY_TURNS);
        Map<PartPlace, String> fitted = new EnumMap<>(PartPlace.class);
        trim.child(FITTED).ifPresent(parts -> {
            for (PartPlace place : PartPlace.values()) {
                parts.text(place.code()).filter(name -> !name.isBlank()).ifPresent(name -> fitted.put(place, name));
            }
        });
        return trim.build(() -> new Trim(shims, gap, turns, fitted));
    }

    /** Brings the file up to it. */
    static void write(ObjectNode json, Trim trim) {
        if (trim.equals(Trim.NONE)) {
            if (json.path(TRIM) instanceof ObjectNode there) {
                there.remove(List.of(SHIMS, Trim.FRONT_GAP.name(), Trim.BODY_TURNS.name(), FITTED));
                if (there.isEmpty()) {
                    json.remove(TRIM);
                }
            }
            return;
        }
        ObjectNode section = json.withObjectProperty(TRIM);
        section.remove(SHIMS);
        if (!trim.shimsMm().isEmpty()) {
            ArrayNode shims = section.putArray(SHIMS);
            trim.shimsMm().forEach(shims::add);
        }
        put(section, Trim.FRONT_GAP.name(), trim.frontGapMm());
        put(section, Trim.BODY_TURNS.name(), trim.bodyTurns());
        ObjectNode fitted = section.withObjectProperty(FITTED);
        for (PartPlace place : PartPlace.values()) {
            if (trim.fittedAt(place).isPresent()) {
                fitted.put(place.code(), trim.fittedAt(place).get());
            } else {
                fitted.remove(place.code());
            }
        }
        if (fitted.isEmpty()) {
            section.remove(FITTED);
        }
    }

    private static void put(ObjectNode section, String key, OptionalDouble value) {
        if (value.isPresent()) {
            section.put(key, value.getAsDouble());
        } else {
            section.remove(key);
        }
    }
}
