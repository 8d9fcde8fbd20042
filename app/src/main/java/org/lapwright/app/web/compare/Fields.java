package org.lapwright.app.web.compare;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The fields of a posted form.
 *
 * @param values each field's values in the order sent
 */
public record Fields(Map<String, List<String>> values) {
    /** Copies the map. */
    public Fields {
        values = Map.copyOf(values);
    }

    /** The first value of a field, or an empty text. */
    public String text(String name) {
        return text(name, "");
    }

    /** The first value of a field, or something else. */
    public String text(String name, String otherwise) {
        List<String> given = values.getOrDefault(name, List.of());
        return given.isEmpty() ? otherwise : given.get(0);
    }

    /** All values of a field. */
    public List<String> all(String name) {
        return values.getOrDefault(name, List.of());
    }

    /** Whether the field was sent at all. */
    public boolean has(String name) {
        return values.containsKey(name);
    }

    /** The fields whose name begins so, by the rest of the name. */
    public Map<String, String> startingWith(String prefix) {
        Map<String, String> found = new TreeMap<>();
        values.keySet().stream()
                .filter(name -> name.startsWith(prefix))
                .forEach(name -> found.put(name.substring(prefix.length()), text(name)));
        return found;
    }
}
