package org.lapwright.core.car.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.units.Check;

/**
 * What a class allows. Candidates that break one of its limits are never offered.
 *
 * @param numbers limits on numbers; none where the class sets none
 * @param magnetAllowed whether a magnet may be fitted
 * @param parts the parts allowed at a place, by the names under which they are fitted; any part where there is no list. A part
 *     whose name was never noted is taken for allowed: nothing is known against it
 */
public record ClassLimits(Map<ClassNumber, Double> numbers, boolean magnetAllowed, Map<PartPlace, List<String>> parts) {
    /** Anything goes. */
    public static final ClassLimits NONE = new ClassLimits(Map.of(), true, Map.of());

    private static final int LONGEST_NAME = 80;
    private static final int MOST_PARTS = 100;

    /** Checks each number and name, and that no least is above its most. */
    public ClassLimits {
        Map<ClassNumber, Double> checked = new EnumMap<>(ClassNumber.class);
        numbers.forEach((which, limit) -> checked.put(which, which.key().check(limit)));
        numbers = Collections.unmodifiableMap(checked);
        checkOrder(numbers, ClassNumber.LEAST_MASS, ClassNumber.MOST_MASS);
        checkOrder(numbers, ClassNumber.LEAST_TYRE, ClassNumber.MOST_TYRE);
        Map<PartPlace, List<String>> named = new EnumMap<>(PartPlace.class);
        parts.forEach((place, names) -> {
            if (!names.isEmpty()) {
                named.put(place, checked(place, names));
            }
        });
        parts = Collections.unmodifiableMap(named);
    }

    private static List<String> checked(PartPlace place, List<String> names) {
        if (names.size() > MOST_PARTS) {
            throw new IllegalArgumentException(
                    "%d %s are listed; at most %d fit".formatted(names.size(), place.label(), MOST_PARTS));
        }
        return names.stream()
                .map(name -> Check.text(name, LONGEST_NAME, place.label()))
                .toList();
    }

    private static void checkOrder(Map<ClassNumber, Double> numbers, ClassNumber least, ClassNumber most) {
        Double low = numbers.get(least);
        Double high = numbers.get(most);
        if (low != null && high != null && low > high) {
            throw new IllegalArgumentException("the %s is %s %s and the %s is %s %s; no car can keep both"
                    .formatted(
                            least.words(),
                            Check.number(low),
                            least.key().unit(),
                            most.words(),
                            Check.number(high),
                            most.key().unit()));
        }
    }

    /** The limit on a number, if there is one. */
    public Optional<Double> limit(ClassNumber which) {
        return Optional.ofNullable(numbers.get(which));
    }

    /** The parts allowed at a place; empty where any is. */
    public List<String> allowedAt(PartPlace place) {
        return parts.getOrDefault(place, List.of());
    }

    /**
     * What keeps these limits and others: of each number the tighter, no magnet where one of both allows none, and the parts listed
     * here where both list some.
     *
     * @throws IllegalArgumentException if no car can keep both
     */
    public ClassLimits and(ClassLimits other) {
        Map<ClassNumber, Double> both = new EnumMap<>(ClassNumber.class);
        both.putAll(numbers);
        other.numbers.forEach((which, limit) -> both.merge(which, limit, which.isLeast() ? Math::max : Math::min));
        Map<PartPlace, List<String>> named = new EnumMap<>(PartPlace.class);
        named.putAll(other.parts);
        named.putAll(parts);
        return new ClassLimits(both, magnetAllowed && other.magnetAllowed, named);
    }

    /** Whether a car keeps all of it. */
    public boolean allow(Build car) {
        for (Map.Entry<ClassNumber, Double> limit : numbers.entrySet()) {
            if (!limit.getKey().isKept(car.setUp(), limit.getValue())) {
                return false;
            }
        }
        return (magnetAllowed || car.setUp().magnet().isEmpty())
                && parts.keySet().stream().allMatch(place -> isAllowed(car, place));
    }

    /** What of a car breaks it, each a sentence without its first capital and its full stop; empty where it is allowed. */
    public List<String> broken(Build car) {
        List<String> broken = new ArrayList<>();
        numbers.forEach((which, limit) -> {
            if (!which.isKept(car.setUp(), limit)) {
                broken.add(which.broken(car.setUp(), limit));
            }
        });
        if (!magnetAllowed && car.setUp().magnet().isPresent()) {
            broken.add("it has a magnet; the class allows none");
        }
        parts.forEach((place, names) -> {
            if (!isAllowed(car, place)) {
                broken.add("fitted as %s: %s; the class allows %s"
                        .formatted(place.label(), car.trim().fittedAt(place).orElseThrow(), String.join(", ", names)));
            }
        });
        return broken;
    }

    /** Places for which the class lists parts while nobody noted which part is fitted there. */
    public List<PartPlace> unknown(Build car) {
        return parts.keySet().stream()
                .filter(place -> car.trim().fittedAt(place).isEmpty())
                .toList();
    }

    private boolean isAllowed(Build car, PartPlace place) {
        Optional<String> fitted = car.trim().fittedAt(place);
        return fitted.isEmpty() || allowedAt(place).stream().anyMatch(fitted.get()::equalsIgnoreCase);
    }
}
