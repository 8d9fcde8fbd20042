package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds the entry of a list that is about the same thing. */
final class Entries {
    private Entries() {}

    /** Takes out the entry with this name. */
    static Optional<ObjectNode> takeOut(ArrayNode entries, String name, String unnamed) {
        return takeOutFirst(
                entries, entry -> entry.path("name").asText(unnamed).strip().equals(name));
    }

    /** Takes out the first entry that fits. */
    static Optional<ObjectNode> takeOutFirst(ArrayNode entries, Predicate<JsonNode> fits) {
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i) instanceof ObjectNode entry && fits.test(entry)) {
                entries.remove(i);
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }
}
