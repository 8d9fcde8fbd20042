package org.lapwright.app.web.track.editor;

import java.util.Map;
import java.util.Optional;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Surface;

/**
 * What the tyres run on, as typed.
 *
 * @param grip grip here over grip where the tyres were measured; empty means 1
 * @param magnetic whether magnets pull
 * @param conditions what the grip factor holds for; may be empty
 */
public record SurfaceFields(String grip, boolean magnetic, String conditions) {
    static SurfaceFields of(Surface surface) {
        return new SurfaceFields(Written.exact(surface.gripFactor()), surface.magnetic(), surface.conditions());
    }

    static SurfaceFields from(Fields fields) {
        return new SurfaceFields(fields.text("grip"), fields.text("magnetic").equals("yes"), fields.text("conditions"));
    }

    void into(Map<String, String> fields) {
        fields.put("grip", grip);
        fields.put("magnetic", magnetic ? "yes" : "");
        fields.put("conditions", conditions);
    }

    Optional<Surface> read(Typed typed) {
        int before = typed.problems().size();
        double factor = typed.at("grip").number(grip, Surface.GRIP_FACTOR, "Grip factor", 1);
        return typed.problems().size() > before
                ? Optional.empty()
                : typed.at("conditions").build("", () -> new Surface(factor, magnetic, conditions));
    }
}
