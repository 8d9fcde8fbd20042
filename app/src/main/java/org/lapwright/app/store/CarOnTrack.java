package org.lapwright.app.store;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.ladder.CarLaps;

/**
 * What a car has driven on a track in its present set-up, before it is settled who goes by its name.
 *
 * @param name its name
 * @param example whether it is one of the example garage
 * @param runs its runs, oldest first
 */
record CarOnTrack(String name, boolean example, List<TimedRun> runs) {
    /**
     * The cars as a ladder wants them, by name. Where the racer and the example garage both have a car of one name, the
     * racer's own goes by it.
     */
    static List<CarLaps> shown(Collection<CarOnTrack> cars) {
        Set<String> own = cars.stream()
                .filter(car -> !car.example)
                .map(car -> NameKey.of(car.name))
                .collect(Collectors.toSet());
        return cars.stream()
                .filter(car -> !car.example || !own.contains(NameKey.of(car.name)))
                .sorted(Comparator.comparing(car -> NameKey.of(car.name)))
                .map(car -> new CarLaps(car.name, car.runs))
                .toList();
    }
}
