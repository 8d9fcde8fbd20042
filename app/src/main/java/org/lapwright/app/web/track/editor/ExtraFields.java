package org.lapwright.app.web.track.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.PieceExtras;
import org.lapwright.core.track.Surface;

/**
 * What is different on one piece, as typed.
 *
 * @param grip grip factor; empty means as on the whole track
 * @param rails {@code steel}, {@code none}, or empty: as on the whole track
 * @param ends where the lanes lie at its far end, mm, in the order of the lanes, apart by spaces or semicolons; empty means that they go on
 *     as they came
 */
public record ExtraFields(String grip, String rails, String ends) {
    static final ExtraFields NONE = new ExtraFields("", "", "");
    private static final String STEEL = "steel";
    private static final String PLAIN = "none";

    static ExtraFields of(PieceExtras extras) {
        return new ExtraFields(
                extras.gripFactor().isPresent()
                        ? Written.exact(extras.gripFactor().getAsDouble())
                        : "",
                extras.magnetic().map(magnetic -> magnetic ? STEEL : PLAIN).orElse(""),
                extras.laneEndsMm().stream().map(Written::exact).collect(Collectors.joining(" ")));
    }

    static ExtraFields from(Fields fields, int number) {
        String rails = fields.text("rails-" + number);
        return new ExtraFields(
                fields.text("grip-" + number),
                rails.equals(STEEL) || rails.equals(PLAIN) ? rails : "",
                fields.text("ends-" + number));
    }

    /** Only what is said: of most pieces nothing is. */
    void into(Map<String, String> fields, int number) {
        if (!grip.isEmpty()) {
            fields.put("grip-" + number, grip);
        }
        if (!rails.isEmpty()) {
            fields.put("rails-" + number, rails);
        }
        if (!ends.isEmpty()) {
            fields.put("ends-" + number, ends);
        }
    }

    /** Whether nothing is different. */
    public boolean isEmpty() {
        return (grip + rails + ends).isBlank();
    }

    ExtraFields withEnds(List<Double> offsetsMm) {
        return new ExtraFields(
                grip, rails, offsetsMm.stream().map(Written::exact).collect(Collectors.joining(" ")));
    }

    /** As seen in a mirror; what cannot be understood stays as it is. */
    ExtraFields mirrored() {
        Typed quietly = new Typed();
        List<Double> offsets = offsets(0, quietly);
        return quietly.faults().isEmpty() && !offsets.isEmpty()
                ? withEnds(offsets.stream().map(offset -> 0.0 - offset).toList())
                : this;
    }

    Optional<PieceExtras> read(int number, Typed typed) {
        int before = typed.problems().size();
        OptionalDouble factor = grip.isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(typed.at("grip-" + number)
                        .number(grip, Surface.GRIP_FACTOR, "Piece " + number + ", grip factor"));
        Optional<Boolean> magnetic = rails.isEmpty() ? Optional.empty() : Optional.of(rails.equals(STEEL));
        List<Double> offsets = offsets(number, typed);
        return typed.problems().size() > before
                ? Optional.empty()
                : Optional.of(new PieceExtras(factor, magnetic, offsets));
    }

    private List<Double> offsets(int number, Typed typed) {
        List<Double> offsets = new ArrayList<>();
        if (!ends.isBlank()) {
            for (String offset : ends.strip().split("[\\s;]+")) {
                offsets.add(typed.at("ends-" + number)
                        .number(offset, Lane.OFFSET, "Piece " + number + ", lanes at its end"));
            }
        }
        return offsets;
    }
}
