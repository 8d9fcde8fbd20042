package org.lapwright.app.web.track.editor;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Gate;
import org.lapwright.core.units.NumberKey;

/**
 * One more timing gate, as typed.
 *
 * @param name what the section that ends there is called
 * @param at where it stands, % of the lap from the timing line
 */
public record GateFields(String name, String at) {
    private static final NumberKey PERCENT = new NumberKey("gates", "at_percent", 0.1, 99.9);

    static GateFields of(Gate gate) {
        String percent = new BigDecimal(Double.toString(gate.at()))
                .movePointRight(2)
                .stripTrailingZeros()
                .toPlainString();
        return new GateFields(gate.name(), percent);
    }

    static GateFields from(Fields fields, int number) {
        return new GateFields(fields.text("gate-name-" + number), fields.text("gate-at-" + number));
    }

    void into(Map<String, String> fields, int number) {
        fields.put("gate-name-" + number, name);
        fields.put("gate-at-" + number, at);
    }

    Optional<Gate> read(int number, Typed typed) {
        int before = typed.problems().size();
        typed.at("gate-at-" + number).number(at, PERCENT, "Gate " + number + ", % of the lap");
        typed.at("gate-name-" + number);
        if (name.isBlank()) {
            typed.problem("Gate " + number + ", section is empty; name the section that ends there.");
        }
        if (typed.problems().size() > before) {
            return Optional.empty();
        }
        // By the digits themselves, so that a kept gate comes back where it was.
        double share =
                new BigDecimal(at.strip().replace(',', '.')).movePointLeft(2).doubleValue();
        return typed.build("Gate " + number + ": ", () -> new Gate(name, share));
    }
}
