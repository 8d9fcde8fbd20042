package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.PhysicsFiles;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/** Published vehicles on a straight, through the force rows and the limits of the lap solver. */
class SmallCarReferenceTest {
    /** Volts of the supply; the published force line knows none, any will do. */
    private static final double VOLTS = 1;

    /**
     * Load on the front axle at 5 m/s², 55 % of the weight in front at rest: Council of Engineers (Thailand), licence exam
     * bank 2209, printed answer 4600 N.
     */
    @Test
    void loadMovesBackUnderAcceleration() {
        JsonNode example = PhysicsFiles.entry(PhysicsFiles.json("statics_and_tyre_examples.json"), "LT1");
        JsonNode in = example.get("inputs");
        double mass = in.get("m_kg").asDouble();
        double length = in.get("wheelbase_m").asDouble() / 20;
        ResolvedCar car = car(
                new ResolvedCar.Body(
                        mass,
                        length,
                        in.get("front_fraction").asDouble() * length,
                        in.get("h_m").asDouble() / 20,
                        mass * length * length / 12,
                        0.1,
                        0.05,
                        1),
                0,
                0,
                new MotorLine(1, 1, 0));
        ForceRows forces = onStraight(car);
        double[] rows = forces.rows.blocks[0];
        double rear =
                rows[ForceRows.REAR] * in.get("a_mps2").asDouble() + rows[ForceRows.REAR + ForceRows.FREE_OF_BOTH];
        double front = mass * (ResolvedCar.GRAVITY - rear);
        double expected = example.get("expected").get("front_axle_N").asDouble();
        assertThat(front).isCloseTo(expected, within(0.002 * expected));
        // The printed answer is rounded to the hundred.
        assertThat(front)
                .isCloseTo(example.get("expected").get("published_option_N").asDouble(), within(50.0));
    }

    /**
     * The 1:43 car of Liniger, Domahidi and Morari, Optim. Control Appl. Meth. 36(5) 2015, 628–647: drive force
     * C_m1 − C_m2 v − C_r0 − C_r2 v² at full throttle. Launch 5.74 m/s² and top speed 4.20 m/s follow. The force line is
     * a motor's (K g V/R, K² g²/R), C_r0 stands as braid drag, C_r2 as air.
     */
    @Test
    void launchAndTopSpeedOfASmallCar() {
        JsonNode published =
                PhysicsFiles.entry(PhysicsFiles.json("small_scale_cars.json").get("cars"), "C43");
        double stall = published.get("Cm1").asDouble();
        double geared = published.get("Cm2").asDouble() * VOLTS / stall;
        double lf = published.get("lf").asDouble();
        double lr = published.get("lr").asDouble();
        double mass = published.get("m").asDouble();
        ResolvedCar car = car(
                new ResolvedCar.Body(
                        mass, lf + lr, lr, 0.01, published.get("Iz").asDouble(), 0.05, 0.025, 1),
                published.get("Cr0").asDouble(),
                2 * published.get("Cr2").asDouble() / ResolvedCar.AIR_DENSITY,
                new MotorLine(geared, geared * VOLTS / stall, 0));
        JsonNode derived = published.get("derived");
        ForceRows forces = onStraight(car);
        FeasibleRange range = new FeasibleRange(forces, new LineRows(forces));
        range.widthAt(0, 0);
        double launch = derived.get("launch_accel_mps2").asDouble();
        assertThat(range.highLimit).isEqualTo(Limit.POWER);
        assertThat(range.high).isCloseTo(launch, within(0.001 * launch));
        Track straight = straight();
        PredictedLap lap =
                (PredictedLap) new LapSolver(straight.cells(straight.lanes().get(0), 100)).solve(car);
        double top = derived.get("top_speed_mps").asDouble();
        assertThat(lap.topMps()).isCloseTo(top, within(0.001 * top));
    }

    /** Plenty of grip, so that the motor decides; wheels of 1 m and no gears, so that the motor's line is the force's. */
    private static ResolvedCar car(ResolvedCar.Body body, double dragN, double dragAreaM2, MotorLine motor) {
        return new ResolvedCar(
                body,
                new ResolvedCar.Contact(3, 0, dragN, 0, 0, 0, 0, dragAreaM2),
                new ResolvedCar.Drive(motor, 1, 1, 1, 0, 0));
    }

    private static ForceRows onStraight(ResolvedCar car) {
        Track straight = straight();
        TrailedLane lane = new TrailedLane(straight.cells(straight.lanes().get(0), 20));
        lane.follow(car.body().lengthM());
        ForceRows forces = new ForceRows(lane);
        forces.take(lane, car);
        forces.fill(0);
        return forces;
    }

    /** A straight that starts again where it ends: a lap on it is driven at one speed. */
    private static Track straight() {
        return new Track(
                "straight",
                Surface.BENCH,
                List.of(new Lane("only", 0)),
                new Power(VOLTS, 0, 0, List.of(0.0), OptionalDouble.empty()),
                new PieceLayout(List.of(new Piece.Straight(5000, 0))));
    }
}
