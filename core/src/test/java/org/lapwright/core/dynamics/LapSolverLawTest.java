package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
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

    /** No car is called stuck for which brute force finds a way round, and none is given a lap where there cannot be one. */
    @Test
    void bruteForceFindsNoOtherWay() {
        int round = 0;
        int stuck = 0;
        // Garages hard to get round, found by looking for such, and as many as come.
        IntStream hard = IntStream.of(78, 85, 120, 127, 131, 291, 417, 439, 703, 745);
        for (int seed : IntStream.concat(hard, IntStream.range(1000, 1030)).toArray()) {
            RandomGarage garage = new RandomGarage(new SplittableRandom(seed));
            Track track = garage.track();
            ResolvedCar car = ResolvedCar.of(garage.car(), track.surface());
            for (Lane lane : track.lanes()) {
                LaneCells cells = track.cells(lane, 120);
                TrailedLane followed = new TrailedLane(cells);
                followed.follow(car.body().lengthM());
                boolean hasLap = new LapSolver(cells).solve(car) instanceof PredictedLap;
                SpeedGrid grid = new SpeedGrid(followed, car, 400);
                if (grid.canGetRound(true)) {
                    assertThat(hasLap).as("garage %d, %s", seed, lane.name()).isTrue();
                    round++;
                } else if (!grid.canGetRound(false)) {
                    assertThat(hasLap).as("garage %d, %s", seed, lane.name()).isFalse();
                    stuck++;
                }
            }
        }
        assertThat(round).isGreaterThan(30);
        assertThat(stuck).isGreaterThan(4);
    }

    /**
     * More grip is never slower, also where grip × height / length passes 1 and the tyres hold whatever the motor gives:
     * there the search takes over from the closed forms, at 0.9, without a step.
     */
    @Test
    void aTallCarWithMuchGripIsLimitedByItsNose() {
        Track track = LapFiles.track("loop");
        ResolvedCar plain = ResolvedCar.of(LapFiles.car("plain"), track.surface());
        LapSolver solver = new LapSolver(track.cells(track.lanes().get(0)));
        double before = Double.POSITIVE_INFINITY;
        for (double byHeight : new double[] {0.8, 0.8999, 0.9001, 0.99, 1, 1.01, 1.5, 3}) {
            PredictedLap lap = (PredictedLap) solver.solve(withGrip(plain, byHeight, 0.05));
            assertThat(lap.lapS()).as("%s", byHeight).isLessThan(before);
            assertThat(lap.shares()).containsKey(Limit.NOSE);
            if (byHeight == 0.9001) {
                assertThat(lap.lapS()).isCloseTo(before, within(1e-4 * before));
            }
            before = lap.lapS();
        }
    }

    private static ResolvedCar withGrip(ResolvedCar car, double byHeight, double heightM) {
        ResolvedCar.Body b = car.body();
        ResolvedCar.Contact c = car.contact();
        return new ResolvedCar(
                new ResolvedCar.Body(
                        b.massKg(),
                        b.lengthM(),
                        b.aheadM(),
                        heightM,
                        b.yawInertiaKgM2(),
                        b.rearTrackM(),
                        b.tippingEdgeM(),
                        b.frontShare()),
                new ResolvedCar.Contact(
                        byHeight * b.lengthM() / heightM,
                        c.slotFriction(),
                        c.braidDragN(),
                        c.minGuideLoadN(),
                        c.magnetN(),
                        c.magnetAheadM(),
                        c.rollingResistance(),
                        c.dragAreaM2()),
                car.drive());
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
