package org.lapwright.app.web.track.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Power;
import org.lapwright.core.units.NumberKey;

/**
 * What feeds the lanes, as typed.
 *
 * @param supply volts
 * @param source resistance of supply, controller and leads, ohm
 * @param rail resistance of a metre of lap, ohm
 * @param brake resistance of the braking circuit, ohm; empty when the controller does not brake
 * @param taps where the rails are fed, as shares of the lap, apart by spaces or semicolons; empty means at the timing line
 */
public record PowerFields(String supply, String source, String rail, String brake, String taps) {
    private static final NumberKey TAP = new NumberKey("", "taps_at", 0, 1);

    static PowerFields of(Power power) {
        return new PowerFields(
                Written.exact(power.supplyV()),
                Written.exact(power.sourceOhm()),
                Written.exact(power.railOhmPerM()),
                power.brakeOhm().isPresent() ? Written.exact(power.brakeOhm().getAsDouble()) : "",
                power.tapsAt().stream().map(tap -> Written.exact(tap)).collect(Collectors.joining(" ")));
    }

    static PowerFields from(Fields fields) {
        return new PowerFields(
                fields.text("supply"),
                fields.text("source"),
                fields.text("rail"),
                fields.text("brake"),
                fields.text("taps"));
    }

    void into(Map<String, String> fields) {
        fields.put("supply", supply);
        fields.put("source", source);
        fields.put("rail", rail);
        fields.put("brake", brake);
        fields.put("taps", taps);
    }

    /** What it comes to; empty when something was not understood, which {@code typed} then has. */
    public Optional<Power> read(Typed typed) {
        int before = typed.problems().size();
        double volts = typed.at("supply").number(supply, Power.SUPPLY, "Supply");
        double sourceOhm = typed.at("source").number(source, Power.SOURCE, "Resistance of the supply");
        double railOhm = typed.at("rail").number(rail, Power.RAIL, "Resistance of the rails");
        OptionalDouble brakeOhm = brake.isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(typed.at("brake").number(brake, Power.BRAKE, "Resistance of the brake"));
        List<Double> places = new ArrayList<>();
        for (String tap : taps.strip().split("[\\s;]+")) {
            places.add(typed.at("taps").number(tap, TAP, "Rails fed at", 0));
        }
        return typed.problems().size() > before
                ? Optional.empty()
                : typed.build("", () -> new Power(volts, sourceOhm, railOhm, places, brakeOhm));
    }
}
