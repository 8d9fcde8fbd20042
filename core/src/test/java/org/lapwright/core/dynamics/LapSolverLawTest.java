package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;

/** What has to hold for every car on every lane. */
class LapSolverLawTest {
    private static final int GARAGES = 150;

    /** Nothing is ever NaN, endless, or a lap that its own trace contradicts; where there is no lap, a place is named. */
    @Test
    void everyCarHasALapOrAReason() {
        int laps = 0;
        for (int seed = 0; seed < GARAGES; seed++) {
            RandomGarage garage = new RandomGarage(new SplittableRandom(seed));
            Track track = garage.track();
            ResolvedCar car = ResolvedCar.of(garage.car(), track.surface());
            for (Lane lane : track.lanes()) {
                LapOutcome outcome = new LapSolver(track.cells(lane)).solve(car);
                assertThat(outcome.lapS()).as("garage %d", seed).isPositive().isNotNaN();
                if (outcome instanceof PredictedLap lap) {
                    laps++;
                    double shares = lap.shares().values().stream()
                            .mapToDouble(Double::doubleValue)
                            .sum();
                    assertThat(shares).as("garage %d", seed).isCloseTo(1, within(1e-9));
                    assertThat(lap.lapS()).isFinite();
                    double cells = 0;
                    for (int i = 0; i < lap.trace().cells(); i++) {
                        cells += lap.trace().cellS(i);
                    }
                    assertThat(cells).as("garage %d", seed).isCloseTo(lap.lapS(), within(1e-9 * lap.lapS()));
                    assertThat(lap.slowestMps())
                            .isLessThanOrEqualTo(lap.topMps())
                            .isNotNegative();
                }
            }
        }
        assertThat(laps).as("garages with a lap").isGreaterThan(GARAGES / 3);
    }

    /** A lap does not depend on what the solver solved before. */
    @Test
    void aSolverHasNoMemory() {
        Track track = LapFiles.track("loop");
        ResolvedCar plain = ResolvedCar.of(LapFiles.car("plain"), track.surface());
        ResolvedCar magnet = ResolvedCar.of(LapFiles.car("magnet"), track.surface());
        LapSolver solver = new LapSolver(track.cells(track.lanes().get(0)));
        double first = solver.solve(plain).lapS();
        solver.solve(magnet);
        assertThat(solver.solve(plain).lapS()).isEqualTo(first);
    }
}
