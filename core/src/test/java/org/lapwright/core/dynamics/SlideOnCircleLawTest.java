package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

/**
 * The slide on the steady circle, which {@code core.numbers} has in closed form, against the lap solver: its force rows by
 * bisection, and whole laps of a circular track.
 */
class SlideOnCircleLawTest {
    private static final int GARAGES = 300;

    @ParameterizedTest
    @ValueSource(strings = {"plain", "magnet", "soft", "tall"})
    void agreesWithTheRowsOfTheSolver(String name) {
        Surface magnetic = new Surface(1, true);
        assertRowsAgree(LapFiles.car(name), magnetic);
    }

    /** Every garage whose car can be driven round, whatever its magnet, ballast and grip. */
    @Test
    void agreesWithTheRowsForCarsByChance() {
        int compared = 0;
        for (int seed = 0; seed < GARAGES; seed++) {
            RandomGarage garage = new RandomGarage(new SplittableRandom(seed));
            Surface surface = garage.track().surface();
            SetUp car = garage.car();
            SetUpNumbers numbers = SetUpNumbers.of(car, surface, 12);
            if (numbers.holding().slideSpeedMps().orElse(0) > 0) {
                assertRowsAgree(car, surface);
                compared++;
            }
        }
        assertThat(compared).as("garages compared").isGreaterThan(GARAGES / 2);
    }

    /** A low car with a strong motor, so that only the slide limits the lap: its speed all the way round. */
    @ParameterizedTest
    @ValueSource(strings = {"plain", "magnet", "soft", "tall"})
    void agreesWithALapOfTheCircle(String name) {
        SetUp car = LapFiles.car(name)
                .with("mass.cg_height_mm", Reading.exact(4))
                .with("motor.stall_torque_gcm", Reading.exact(5000));
        Track circle = circle(new Surface(1, true));
        LaneCells cells = circle.cells(circle.lanes().get(0), 200);
        PredictedLap lap = (PredictedLap) new LapSolver(cells).solve(ResolvedCar.of(car, circle.surface()));
        assertThat(lap.shares()).as("limits").containsOnlyKeys(Limit.SLIDE);
        double speed = slideSpeed(car, circle.surface());
        assertThat(lap.topMps()).isCloseTo(speed, within(1e-6 * speed));
        assertThat(lap.slowestMps()).isCloseTo(speed, within(1e-6 * speed));
    }

    private static void assertRowsAgree(SetUp car, Surface surface) {
        double speed = slideSpeed(car, surface);
        assertThat(speed).as(car.name()).isCloseTo(byBisection(car, surface), within(1e-9 * speed));
    }

    private static double slideSpeed(SetUp car, Surface surface) {
        return SetUpNumbers.of(car, surface, 12).holding().slideSpeedMps().orElseThrow();
    }

    private static double byBisection(SetUp car, Surface surface) {
        Track circle = circle(surface);
        TrailedLane lane = new TrailedLane(circle.cells(circle.lanes().get(0), 40));
        lane.follow(car.chassis().guideToRearAxleMm().value() / 1e3);
        ForceRows forces = new ForceRows(lane);
        forces.take(lane, ResolvedCar.of(car, surface));
        forces.fill(0);
        double low = 0;
        double high = 1000;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (holds(forces, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.sqrt(low);
    }

    /** Whether the rear holds in the first cell at u = 0. */
    private static boolean holds(ForceRows forces, double w) {
        double side = steady(forces, ForceRows.SIDE, w);
        double push = steady(forces, ForceRows.PUSH, w);
        double rear = steady(forces, ForceRows.REAR, w);
        return rear > 0 && side * side + push * push <= forces.gripSquared * rear * rear;
    }

    private static double steady(ForceRows forces, int form, double w) {
        double[] rows = forces.rows.blocks[0];
        return rows[form + ForceRows.W] * w + rows[form + ForceRows.FREE_OF_BOTH];
    }

    private static Track circle(Surface surface) {
        return new Track(
                "circle",
                surface,
                List.of(new Lane("only", 0)),
                new Power(60, 0, 0, List.of(0.0), OptionalDouble.of(0)),
                new PieceLayout(List.of(new Piece.Turn(SetUpNumbers.CIRCLE_MM, 360, true, 0, 0))));
    }
}
