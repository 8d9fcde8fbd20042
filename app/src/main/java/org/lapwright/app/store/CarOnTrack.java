package org.lapwright.app.store;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.ladder.LaneRun;

/**
 * What a car has driven on a track in its present set-up, before it is settled whose ladder it is.
 *
 * @param name its name
 * @param example whether it is one of the example garage
 * @param runs its runs, oldest first
 */
record CarOnTrack(String name, boolean example, List<LaneRun> runs) {
    /**
     * The cars as a ladder wants them, by name. Where the racer has laps of their own, the cars of the example garage
     * stay away: paces are drawn towards each other, so invented laps would move real ones.
     */
    static List<CarLaps> shown(Collection<CarOnTrack> cars) {
        boolean own = cars.stream().anyMatch(car -> !car.example && car.hasLaps());
        return cars.stream()
                .filter(car -> car.example != own)
                .sorted(Comparator.comparing(car -> NameKey.of(car.name)))
                .map(car -> new CarLaps(car.name, car.runs))
                .toList();
    }

    private boolean hasLaps() {
        return runs.stream().anyMatch(run -> !run.run().laps().isEmpty());
    }
}
