package org.lapwright.app.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.lapwright.app.usecase.HistoryStore.NewStep;
import org.lapwright.app.usecase.HistoryStore.StaleBenchException;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.HistoryStore.StoredStep;

/** The steps of the cars of a {@link MemoryGarage}. */
final class MemorySteps {
    private final Map<String, Car> cars = new HashMap<>();
    private final Set<String> requests = new HashSet<>();
    private final Set<Long> driven = new HashSet<>();
    private long ids;

    private static final class Car {
        private final String name;
        private final boolean example;
        private final List<StoredStep> steps = new ArrayList<>();
        private long present;

        Car(String name, boolean example) {
            this.name = name;
            this.example = example;
        }

        StoredHistory history() {
            return new StoredHistory(name, example, steps, present);
        }
    }

    Optional<StoredHistory> of(String carKey) {
        return Optional.ofNullable(cars.get(carKey)).map(Car::history);
    }

    Set<String> kindsLogged() {
        Set<String> kinds = new HashSet<>();
        cars.values().stream()
                .filter(car -> !car.example)
                .forEach(car -> car.steps.forEach(step -> kinds.add(step.kind())));
        return kinds;
    }

    boolean isUsed(String request) {
        return requests.contains(request);
    }

    StoredHistory log(String carKey, String name, NewStep step, Instant at, String request) {
        Car car = cars.get(carKey);
        if (car == null && step.onto().isPresent()) {
            throw new IllegalArgumentException(
                    "this car has no step number " + step.onto().getAsLong());
        }
        if (car != null) {
            requireOn(car, step.onto());
        }
        if (car == null) {
            car = new Car(name, step.example());
            cars.put(carKey, car);
            add(
                    car,
                    OptionalLong.empty(),
                    new NewStep(name, OptionalLong.empty(), "", "first", "first", "", step.base(), step.example(), at));
        }
        add(car, OptionalLong.of(car.present), step);
        requests.add(request);
        return car.history();
    }

    StoredHistory putOn(String carKey, long from, long to, String request) {
        Car car = cars.get(carKey);
        if (car == null) {
            throw new IllegalArgumentException("nothing was logged for this car yet");
        }
        requireOn(car, OptionalLong.of(from));
        if (car.steps.stream().noneMatch(step -> step.id() == to)) {
            throw new IllegalArgumentException("this car has no step number " + to);
        }
        car.present = to;
        requests.add(request);
        return car.history();
    }

    void measured(String carKey, String text, Instant at) {
        Car car = cars.get(carKey);
        if (car != null) {
            OptionalLong present = OptionalLong.of(car.present);
            add(
                    car,
                    present,
                    new NewStep(car.name, present, "", "measured", "measured anew", "", text, car.example, at));
        }
    }

    /**
     * Notes that what is on the car was driven, if it was logged with these words; when it did not stay, what it was made from
     * is on the car again.
     */
    Optional<StoredStep> drive(String carKey, String words, boolean stays) {
        Car car = cars.get(carKey);
        if (car == null || driven.contains(car.present)) {
            return Optional.empty();
        }
        StoredStep step = car.history().presentStep();
        if (step.parent().isEmpty() || !step.words().equals(words)) {
            return Optional.empty();
        }
        driven.add(step.id());
        if (!stays) {
            car.present = step.parent().getAsLong();
        }
        return Optional.of(car.history().presentStep());
    }

    private void add(Car car, OptionalLong parent, NewStep step) {
        car.steps.add(new StoredStep(
                ++ids,
                parent,
                step.kind(),
                step.words(),
                step.change(),
                step.file(),
                Intake.instant(Intake.micros(step.at()))));
        car.present = ids;
    }

    private static void requireOn(Car car, OptionalLong onto) {
        if (onto.isEmpty() || onto.getAsLong() != car.present) {
            throw new StaleBenchException(car.history());
        }
    }
}
