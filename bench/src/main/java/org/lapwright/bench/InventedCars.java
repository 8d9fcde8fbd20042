package org.lapwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.lapwright.core.car.Balance;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.Drag;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Guide;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.MotorStrength;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

/** A lane and cars to measure the lap solver with. Always the same. */
final class InventedCars {
    private static final double LENGTH_MM = 98;
    private static final double LOW_MM = 13;
    private static final double TALL_MM = 24;

    private InventedCars() {}

    /** The left lane of a loop of about 6.5 m with an S in it. */
    static LaneCells lane(int cells) {
        Track track = track();
        return track.cells(track.lanes().get(0), cells);
    }

    /** The loop itself. */
    static Track track() {
        return new Track(
                "loop",
                new Surface(1, false),
                List.of(new Lane("left", 50)),
                new Power(12, 0.6, 0.08, List.of(0.0), OptionalDouble.of(0.2)),
                new PieceLayout(List.of(
                        new Piece.Straight(2092.82, 0),
                        new Piece.Turn(300, 180, true, 0, 0),
                        new Piece.Straight(700, 0),
                        new Piece.Turn(400, 60, false, 0, 0),
                        new Piece.Turn(400, 60, true, 0, 0),
                        new Piece.Straight(700, 0),
                        new Piece.Turn(500, 180, true, 0, 0))));
    }

    /** A car that never comes near to tipping. */
    static ResolvedCar low() {
        return car(LENGTH_MM, LOW_MM, 1.05, 78, 11, 190);
    }

    /** A car that tips before it slides. */
    static ResolvedCar tall() {
        return car(LENGTH_MM, TALL_MM, 1.5, 78, 11, 190);
    }

    /** Cars that differ in grip, mass, ballast, gears and motor, and in length if that is wanted. */
    static List<ResolvedCar> fleet(int count, boolean lengths) {
        SplittableRandom random = new SplittableRandom(1);
        List<ResolvedCar> cars = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            cars.add(car(
                    LENGTH_MM + (lengths ? random.nextDouble(-15, 15) : 0),
                    LOW_MM,
                    random.nextDouble(0.9, 1.2),
                    random.nextDouble(65, 95),
                    random.nextInt(9, 13),
                    random.nextDouble(150, 250)));
        }
        return cars;
    }

    private static ResolvedCar car(
            double lengthMm, double heightMm, double grip, double massG, int pinion, double torqueGcm) {
        return ResolvedCar.of(setUp(lengthMm, heightMm, grip, massG, pinion, torqueGcm), new Surface(1, false));
    }

    /** The low car as somebody wrote it down. */
    static SetUp lowSetUp() {
        return setUp(LENGTH_MM, LOW_MM, 1.05, 78, 11, 190);
    }

    private static SetUp setUp(
            double lengthMm, double heightMm, double grip, double massG, int pinion, double torqueGcm) {
        return new SetUp(
                "invented",
                new Chassis(exact(lengthMm), exact(0.84 * lengthMm), exact(50), exact(50), FrontWheels.TOUCHING),
                new WeighedCar(
                        exact(massG),
                        new Balance.AsLength(exact(0.367 * lengthMm)),
                        exact(0),
                        exact(heightMm),
                        Optional.of(exact(62_000))),
                List.of(new Ballast("lead", exact(massG - 60), exact(40), exact(0), exact(3))),
                new Guide(exact(6.5), exact(0.15), exact(1), exact(2)),
                new RearTyre(exact(20), exact(grip)),
                new Gears(exact(pinion), exact(28), exact(0.88)),
                new Motor(
                        exact(12),
                        exact(20_500),
                        exact(0.12),
                        new MotorStrength.StallTorque(exact(torqueGcm)),
                        exact(150)),
                Optional.empty(),
                new Drag(exact(0.02), exact(8)),
                exact(0.2));
    }

    private static Reading exact(double value) {
        return Reading.exact(value);
    }
}
