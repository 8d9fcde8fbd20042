package org.lapwright.app.web.rules;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.car.rules.ClassNumber;
import org.lapwright.core.car.rules.RaceClass;
import org.lapwright.core.car.rules.RaceClasses;
import org.lapwright.core.units.Check;

/**
 * A class, as typed.
 *
 * @param was its name as it is kept; empty for a new one
 * @param name of the class
 * @param numbers limits; empty where there is none
 * @param magnet whether a magnet is allowed
 * @param parts names of the parts allowed at a place, one a line
 */
public record ClassFields(
        String was, String name, Map<ClassNumber, String> numbers, boolean magnet, Map<PartPlace, String> parts) {
    private static final List<PartPlace> LISTED = List.of(PartPlace.REAR_TYRES, PartPlace.MOTOR);

    /** Copies the maps. */
    public ClassFields {
        numbers = Map.copyOf(numbers);
        parts = Map.copyOf(parts);
    }

    static ClassFields fresh() {
        return new ClassFields("", "", Map.of(), true, Map.of());
    }

    static ClassFields of(RaceClass one) {
        Map<ClassNumber, String> numbers = new EnumMap<>(ClassNumber.class);
        one.limits().numbers().forEach((which, limit) -> numbers.put(which, Check.number(limit)));
        Map<PartPlace, String> parts = new EnumMap<>(PartPlace.class);
        one.limits().parts().forEach((place, names) -> parts.put(place, String.join("\n", names)));
        return new ClassFields(one.name(), one.name(), numbers, one.limits().magnetAllowed(), parts);
    }

    static ClassFields from(Fields fields, int number) {
        Map<ClassNumber, String> numbers = new EnumMap<>(ClassNumber.class);
        for (ClassNumber which : ClassNumber.values()) {
            numbers.put(which, fields.text(field(which, number)));
        }
        Map<PartPlace, String> parts = new EnumMap<>(PartPlace.class);
        for (PartPlace place : LISTED) {
            parts.put(place, fields.text(place.code() + "-" + number));
        }
        return new ClassFields(
                fields.text("was-" + number),
                fields.text("name-" + number),
                numbers,
                fields.text("magnet-" + number).equals("yes"),
                parts);
    }

    /** The name of a field. */
    public static String field(ClassNumber which, int number) {
        return which.key().name() + "-" + number;
    }

    /** The places for which a list of parts can be typed. */
    public static List<PartPlace> listed() {
        return LISTED;
    }

    /** What parts at a place are called, several of them. */
    public static String label(PartPlace place) {
        return place == PartPlace.MOTOR ? "Motors" : "Rear tyres";
    }

    /** A limit as typed. */
    public String number(ClassNumber which) {
        return numbers.getOrDefault(which, "");
    }

    /** Parts as typed. */
    public String listed(PartPlace place) {
        return parts.getOrDefault(place, "");
    }

    /** The class with its cars and with what cannot be typed here, as {@code kept} has it under its former name. */
    Optional<RaceClass> read(int number, Typed typed, RaceClasses kept) {
        String about = "Class " + number + ", ";
        int before = typed.problems().size();
        Map<ClassNumber, Double> limits = new EnumMap<>(ClassNumber.class);
        numbers.forEach((which, text) -> {
            double limit = typed.at(field(which, number)).number(text, which.key(), about + which.words(), Double.NaN);
            if (!Double.isNaN(limit)) {
                limits.put(which, limit);
            }
        });
        if (typed.problems().size() > before) {
            return Optional.empty();
        }
        Optional<RaceClass> former = kept.named(was).filter(one -> !was.isBlank());
        Map<PartPlace, List<String>> allowed = new EnumMap<>(PartPlace.class);
        former.ifPresent(one -> allowed.putAll(one.limits().parts()));
        LISTED.forEach(place -> allowed.put(place, names(listed(place))));
        List<String> cars = former.map(RaceClass::cars).orElse(List.of());
        return typed.at("name-" + number)
                .build(
                        "Class " + number + ": ",
                        () -> new RaceClass(name, new ClassLimits(limits, magnet, allowed), cars));
    }

    private static List<String> names(String text) {
        return Arrays.stream(text.split("[\\r\\n]+"))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
    }
}
