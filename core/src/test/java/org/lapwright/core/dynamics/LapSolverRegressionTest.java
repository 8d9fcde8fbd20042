package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Track;

/** Cars that were once told wrongly what they can do. */
class LapSolverRegressionTest {
    /**
     * These need a run-up to a banked turn. They were called stuck near the timing line, because the search over them began
     * before the forces at all places were known. That each has a lap was found by {@link SpeedGrid}; the times are this
     * solver's own, and hold it to them.
     */
    @ParameterizedTest
    @CsvSource({
        "78,0,7.44816", "78,1,7.31528", "131,0,3.50382", "131,1,3.48806", "134,1,4.80045",
        "291,0,7.43557", "291,1,7.28322", "357,0,4.46988", "357,1,4.48303", "439,0,7.84921"
    })
    void aCarThatNeedsARunUpIsNotStuck(int seed, int lane, double lapS) {
        RandomGarage garage = new RandomGarage(new SplittableRandom(seed));
        Track track = garage.track();
        ResolvedCar car = ResolvedCar.of(garage.car(), track.surface());
        LaneCells cells = track.cells(track.lanes().get(lane));
        assertThat(new LapSolver(cells).solve(car).lapS()).isCloseTo(lapS, within(2e-5));
    }

    /** Just after this joint the tail hangs out to the wrong side, and no speed at all keeps the tyres from sliding. */
    @Test
    void aCarThatIsStuckIsToldWhatStopsItAndWhere() {
        RandomGarage garage = new RandomGarage(new SplittableRandom(153));
        Track track = garage.track();
        ResolvedCar car = ResolvedCar.of(garage.car(), track.surface());
        LapOutcome outcome = new LapSolver(track.cells(track.lanes().get(0), 120)).solve(car);
        assertThat(outcome).isInstanceOf(Stuck.class);
        assertThat(((Stuck) outcome).limit()).isEqualTo(Limit.SLIDE);
        assertThat(((Stuck) outcome).atM()).isCloseTo(1.68705, within(1e-5));
    }

    /** On a lap of half a metre it takes many laps to get up to speed; the search called that stuck. */
    @ParameterizedTest
    @CsvSource({"35,0", "158,0", "158,1", "162,0", "162,1", "489,1"})
    void theSearchSettlesOnVeryShortLaps(int seed, int lane) {
        RandomGarage garage = new RandomGarage(new SplittableRandom(seed));
        Track track = garage.track();
        ResolvedCar car = ResolvedCar.of(garage.car(), track.surface());
        LaneCells cells = track.cells(track.lanes().get(lane), 120);
        TrailedLane followed = new TrailedLane(cells);
        followed.follow(car.body().lengthM());
        CarSweep sweep = new CarSweep(followed);
        sweep.prepare(followed, car, true);
        PatientSweep patient = new PatientSweep(sweep.forces, sweep.lines);
        assertThat(patient.solve()).isTrue();
        sweep.takeOver(patient.w);
        double lapS = new LapSolver(cells).solve(car).lapS();
        assertThat(sweep.account.lapS).isCloseTo(lapS, within(1e-6 * lapS));
    }

    /** Cars that the batch cannot do side by side come out as they do alone. */
    @Test
    void aBatchWithSuchCarsComesOutAsOneByOne() {
        RandomGarage garage = new RandomGarage(new SplittableRandom(131));
        Track track = garage.track();
        ResolvedCar car = ResolvedCar.of(garage.car(), track.surface());
        LapSolver solver = new LapSolver(track.cells(track.lanes().get(0), 120));
        double[] lapS = new double[5];
        solver.lapTimes(Collections.nCopies(5, car), 0, 5, lapS);
        assertThat(lapS).containsOnly(solver.solve(car).lapS());
    }
}
