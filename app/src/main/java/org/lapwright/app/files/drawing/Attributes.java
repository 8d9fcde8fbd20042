package org.lapwright.app.files.drawing;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * The attributes of one SVG element.
 *
 * @param element its name
 * @param line where it stands, from 1
 * @param values by name, without a namespace
 */
record Attributes(String element, int line, Map<String, String> values) {
    /** Copies the map. */
    Attributes {
        values = Map.copyOf(values);
    }

    String text(String name) {
        return values.getOrDefault(name, "");
    }

    boolean has(String name) {
        return values.containsKey(name);
    }

    /** A length in pixels; 0 if it is not there, empty if it cannot be read. */
    OptionalDouble length(String name) {
        return has(name) ? SvgNumbers.length(text(name)) : OptionalDouble.of(0);
    }

    /** Whether the drawing itself says that this is not to be seen. */
    boolean isHidden() {
        String style = text("style").replaceAll("\\s", "");
        return text("display").strip().equals("none")
                || text("visibility").strip().equals("hidden")
                || style.contains("display:none")
                || style.contains("visibility:hidden");
    }
}
