package org.lapwright.core.car.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The owner's classes, in the owner's order. A car is run in one class at most.
 *
 * @param classes at most {@value #MOST}, no name twice
 */
public record RaceClasses(List<RaceClass> classes) {
    /** Most classes. */
    public static final int MOST = 30;

    /** No classes. */
    public static final RaceClasses NONE = new RaceClasses(List.of());

    /** Checks that no name and no car is there twice. */
    public RaceClasses {
        classes = List.copyOf(classes);
        if (classes.size() > MOST) {
            throw new IllegalArgumentException("there are %d classes; at most %d fit".formatted(classes.size(), MOST));
        }
        for (int i = 0; i < classes.size(); i++) {
            for (int j = 0; j < i; j++) {
                checkApart(classes.get(j), classes.get(i));
            }
        }
    }

    private static void checkApart(RaceClass one, RaceClass other) {
        if (one.isCalled(other.name())) {
            throw new IllegalArgumentException(
                    "two classes are called %s; give one another name".formatted(one.name()));
        }
        one.cars().stream().filter(other::holds).findFirst().ifPresent(car -> {
            throw new IllegalArgumentException(
                    "%s is in class %s and in class %s; a car is run in one".formatted(car, one.name(), other.name()));
        });
    }

    /** The class in which a car is run. */
    public Optional<RaceClass> of(String car) {
        return classes.stream().filter(one -> one.holds(car)).findFirst();
    }

    /** What a car may be; anything where it is run in no class. */
    public ClassLimits limitsOf(String car) {
        return of(car).map(RaceClass::limits).orElse(ClassLimits.NONE);
    }

    /** The class of a name, large letters or small. */
    public Optional<RaceClass> named(String name) {
        return classes.stream().filter(one -> one.isCalled(name)).findFirst();
    }

    /**
     * The same with a car run in another class.
     *
     * @param car its name
     * @param name of the class; blank for none
     * @throws IllegalArgumentException if there is no such class
     */
    public RaceClasses with(String car, String name) {
        if (!name.isBlank() && named(name).isEmpty()) {
            throw new IllegalArgumentException(
                    "there is no class %s; write it down under Classes first".formatted(name.strip()));
        }
        return new RaceClasses(classes.stream()
                .map(one -> one.with(cars(one, car, !name.isBlank() && one.isCalled(name))))
                .toList());
    }

    private static List<String> cars(RaceClass one, String car, boolean isIn) {
        List<String> cars = new ArrayList<>(one.cars());
        cars.remove(car);
        if (isIn) {
            cars.add(car);
        }
        return cars;
    }
}
