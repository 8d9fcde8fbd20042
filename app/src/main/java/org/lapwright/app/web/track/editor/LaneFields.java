package org.lapwright.app.web.track.editor;

import java.util.Map;
import java.util.Optional;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Lane;

/**
 * One lane as typed.
 *
 * @param name what it is called
 * @param offset left of the middle of the track, mm
 * @param colour it is painted in; empty when its name says so or nobody cares
 */
public record LaneFields(String name, String offset, String colour) {
    static LaneFields of(Lane lane) {
        return new LaneFields(
                lane.name(),
                Written.exact(lane.offsetMm()),
                lane.painted().map(Lane.Colour::word).orElse(""));
    }

    static LaneFields from(Fields fields, int number) {
        return new LaneFields(
                fields.text("lane-name-" + number),
                fields.text("lane-offset-" + number),
                fields.text("lane-colour-" + number));
    }

    void into(Map<String, String> fields, int number) {
        fields.put("lane-name-" + number, name);
        fields.put("lane-offset-" + number, offset);
        fields.put("lane-colour-" + number, colour);
    }

    Optional<Lane> read(int number, Typed typed) {
        int before = typed.problems().size();
        double offsetMm = typed.at("lane-offset-" + number).number(offset, Lane.OFFSET, "Lane " + number + ", offset");
        typed.at("lane-name-" + number);
        if (name.isBlank()) {
            typed.problem("Lane " + number + ", name is empty; a colour or a number will do.");
        }
        return typed.problems().size() > before
                ? Optional.empty()
                : typed.build("Lane " + number + ": ", () -> new Lane(name, offsetMm, painted()));
    }

    private Optional<Lane.Colour> painted() {
        return colour.isBlank() ? Optional.empty() : Optional.of(Lane.Colour.named(colour));
    }
}
