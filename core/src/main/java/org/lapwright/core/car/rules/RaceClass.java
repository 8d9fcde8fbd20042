package org.lapwright.core.car.rules;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.units.Check;

/**
 * A class with its rules, in the owner's words.
 *
 * @param name at most {@value #LONGEST_NAME} characters
 * @param limits what it allows
 * @param cars names of the cars that are run in it, each once
 */
public record RaceClass(String name, ClassLimits limits, List<String> cars) {
    /** Longest name. */
    public static final int LONGEST_NAME = 40;

    /** Checks the name. */
    public RaceClass {
        name = Check.text(name, LONGEST_NAME, "name of the class");
        cars = cars.stream().distinct().toList();
    }

    /** Whether a car is run in it. */
    public boolean holds(String car) {
        return cars.contains(car);
    }

    /** Whether it goes by this name, large letters or small. */
    public boolean isCalled(String other) {
        return name.toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
    }

    /** What of a car breaks its rules, or cannot be told, each a sentence. */
    public List<String> remarks(Build car) {
        return Stream.concat(broken(car).stream(), limits.unknown(car).stream().map(this::unknown))
                .toList();
    }

    /** What of a car breaks its rules, each a sentence. */
    public List<String> broken(Build car) {
        return limits.broken(car).stream()
                .map(broken -> "Not allowed in class %s: %s.".formatted(name, broken))
                .toList();
    }

    private String unknown(PartPlace place) {
        return "Class %s allows as %s only: %s. Which are fitted was never noted."
                .formatted(name, place.label(), String.join(", ", limits.allowedAt(place)));
    }

    /** The same with other cars. */
    RaceClass with(List<String> others) {
        return new RaceClass(name, limits, others);
    }
}
