package org.lapwright.app.web.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lapwright.app.web.compare.Fields;

/**
 * What was typed about a drawing, before it is believed: the drawing's text, how to take it, and the lanes beside the line.
 *
 * @param typed the fields by name; {@link #value} has what stands in those that were not sent
 */
public record LineForm(Fields typed) {
    /** Resistances as on the page where a track is drawn: usual (common practice, no source), not measured. */
    private static final Map<String, String> USUAL = Map.of(
            "join", "1", "start", "0", "turning", "left", "lanes", "2", "spacing", "100", "supply", "12", "source",
            "0.5", "rail", "0.1", "brake", "0.2");

    /** Nothing typed yet. */
    public static LineForm fresh() {
        return new LineForm(new Fields(Map.of()));
    }

    /** What stands in a field. */
    public String value(String name) {
        return typed.text(name, typed.has("text") ? "" : USUAL.getOrDefault(name, ""));
    }

    /** Whether a field has this value. */
    public boolean is(String name, String value) {
        return value(name).equals(value);
    }

    /** With another drawing; which of its loops was chosen no longer counts. */
    public LineForm withDrawing(String text) {
        Map<String, List<String>> fields = new HashMap<>(typed.values());
        fields.put("text", List.of(text));
        fields.remove("loop");
        return new LineForm(new Fields(fields));
    }
}
