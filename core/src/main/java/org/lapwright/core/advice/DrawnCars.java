package org.lapwright.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.prediction.SetUpDoubt;
import org.lapwright.core.track.Surface;

/** Cars on which a change is tried: what nobody knows of a car cancels where before and after are driven with the same one. */
final class DrawnCars {
    private DrawnCars() {}

    /**
     * The car as written, and cars drawn from what is known of it; the car alone when nothing about it is in doubt.
     *
     * @param draws how many altogether
     * @param seed where chance begins
     * @throws IllegalArgumentException if hardly any car drawn within the doubts makes sense
     */
    static List<SetUp> of(SetUp car, Surface surface, int draws, long seed) {
        SetUpDoubt doubt = new SetUpDoubt(car);
        List<SetUp> cars = new ArrayList<>();
        cars.add(car);
        if (!doubt.doubtful().isEmpty()) {
            cars.addAll(doubt.draw(draws - 1, new SplittableRandom(seed), drawn -> {
                        ResolvedCar.of(drawn, surface);
                        return drawn;
                    })
                    .drawn());
        }
        return cars;
    }
}
