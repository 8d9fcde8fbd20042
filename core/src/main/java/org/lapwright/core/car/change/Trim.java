package org.lapwright.core.car.change;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;

/**
 * What is adjustable about a car and no equation asks for by itself: the shims under the guide, how high the front wheels hang,
 * how freely the body floats, and which part is fitted where.
 *
 * @param shimsMm thicknesses of the shims under the guide, as stacked
 * @param frontGapMm lowest point of the front tyres above the track, car level, guide seated; negative when the tyres carry the
 *     nose and the guide hangs; empty when nobody measured it
 * @param bodyTurns turns by which the body screws are backed off; empty when nobody counted
 * @param fitted names of the parts that are fitted
 */
public record Trim(
        List<Double> shimsMm, OptionalDouble frontGapMm, OptionalDouble bodyTurns, Map<PartPlace, String> fitted) {
    /** Thickness of one shim. */
    public static final NumberKey SHIM = new NumberKey("", "shim_mm", 0.01, 5);

    /** Front gap. */
    public static final NumberKey FRONT_GAP = new NumberKey("", "front_gap_mm", -5, 10);

    /** Turns of the body screws. */
    public static final NumberKey BODY_TURNS = new NumberKey("", "body_turns", 0, 20);

    /** Nothing noted. */
    public static final Trim NONE = new Trim(List.of(), OptionalDouble.empty(), OptionalDouble.empty(), Map.of());

    /** Wheels at most so far above the track only just touch, as is wanted (common practice, no source). */
    public static final double JUST_TOUCHING_MM = 0.1;

    private static final int MOST_SHIMS = 12;
    private static final int LONGEST_NAME = 80;

    /** Checks each number and name. */
    public Trim {
        shimsMm = List.copyOf(shimsMm);
        if (shimsMm.size() > MOST_SHIMS) {
            throw new IllegalArgumentException(
                    "%d shims are under the guide; at most %d fit".formatted(shimsMm.size(), MOST_SHIMS));
        }
        shimsMm.forEach(SHIM::check);
        frontGapMm.ifPresent(FRONT_GAP::check);
        bodyTurns.ifPresent(BODY_TURNS::check);
        Map<PartPlace, String> checked = new EnumMap<>(PartPlace.class);
        fitted.forEach((place, name) -> checked.put(place, Check.text(name, LONGEST_NAME, place.label())));
        fitted = java.util.Collections.unmodifiableMap(checked);
    }

    /** All shims together, mm. */
    public double shimStackMm() {
        return shimsMm.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** The part at a place, if it has a name. */
    public Optional<String> fittedAt(PartPlace place) {
        return Optional.ofNullable(fitted.get(place));
    }

    /** A copy with other shims. */
    public Trim withShims(List<Double> other) {
        return new Trim(other, frontGapMm, bodyTurns, fitted);
    }

    /** A copy with another front gap. */
    public Trim withFrontGap(OptionalDouble other) {
        return new Trim(shimsMm, other, bodyTurns, fitted);
    }

    /** A copy with the body screws backed off by other turns. */
    public Trim withBodyTurns(double turns) {
        return new Trim(shimsMm, frontGapMm, OptionalDouble.of(turns), fitted);
    }

    /** A copy with another part at a place; an empty name leaves the place without one. */
    public Trim withFitted(PartPlace place, String name) {
        Map<PartPlace, String> other = new EnumMap<>(PartPlace.class);
        other.putAll(fitted);
        if (name.isBlank()) {
            other.remove(place);
        } else {
            other.put(place, name);
        }
        return new Trim(shimsMm, frontGapMm, bodyTurns, other);
    }
}
