package org.lapwright.core.dynamics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import org.lapwright.core.car.Balance;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.Drag;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Guide;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.MotorStrength;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Layout;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PlanPoint;
import org.lapwright.core.track.PointLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

/** Cars and tracks by chance, from tame to absurd, all of them valid. */
final class RandomGarage {
    private final RandomGenerator chance;

    RandomGarage(RandomGenerator chance) {
        this.chance = chance;
    }

    SetUp car() {
        double length = in(60, 130);
        double mass = in(40, 160);
        double height = in(6, 30);
        return new SetUp(
                "by chance",
                new Chassis(
                        exact(length),
                        exact(in(0.6, 1.0) * length),
                        exact(in(35, 70)),
                        exact(in(30, 65)),
                        maybe() ? FrontWheels.TOUCHING : FrontWheels.CLEAR),
                new WeighedCar(
                        exact(mass),
                        new Balance.AsLength(exact(length * in(0.2, 0.6))),
                        exact(in(-3, 3)),
                        exact(height),
                        maybe() ? Optional.empty() : Optional.of(exact(mass * length * length * in(0.05, 0.15)))),
                maybe()
                        ? List.of()
                        : List.of(new Ballast(
                                "b", exact(in(-5, 15)), exact(in(0, length)), exact(in(-15, 15)), exact(in(2, 20)))),
                new Guide(exact(6), exact(in(0, 0.4)), exact(in(0, 4)), exact(in(0, 3))),
                new RearTyre(exact(in(16, 24)), exact(in(0.3, 1.8))),
                new Gears(exact(chance.nextInt(8, 15)), exact(chance.nextInt(20, 40)), exact(in(0.6, 1))),
                new Motor(
                        exact(12),
                        exact(in(9000, 30000)),
                        exact(in(0, 0.4)),
                        new MotorStrength.StallTorque(exact(in(40, 400))),
                        exact(in(0, 300))),
                maybe() ? Optional.empty() : Optional.of(new Magnet(exact(in(0, 300)), exact(in(-5, 40)))),
                new Drag(exact(in(0, 0.06)), exact(in(0, 15))),
                exact(in(0, 0.5)));
    }

    Track track() {
        double offset = in(20, 60);
        Layout layout = chance.nextInt(4) == 0 ? points() : pieces();
        return new Track(
                "by chance",
                new Surface(in(0.6, 1.2), maybe()),
                List.of(new Lane("left", offset), new Lane("right", -offset)),
                new Power(
                        in(6, 16),
                        in(0, 1.5),
                        in(0, 0.3),
                        maybe() ? List.of(0.0) : List.of(0.1, 0.6),
                        maybe() ? OptionalDouble.of(in(0, 2)) : OptionalDouble.empty()),
                layout);
    }

    private Layout pieces() {
        List<Piece> pieces = new ArrayList<>();
        int count = chance.nextInt(1, 14);
        for (int i = 0; i < count; i++) {
            double rise = chance.nextInt(4) == 0 ? in(-60, 60) : 0;
            if (maybe()) {
                pieces.add(new Piece.Straight(in(100, 2500), rise));
            } else {
                double bank = chance.nextInt(3) == 0 ? in(-10, 30) : 0;
                double radius = in(180, 900);
                double angle = in(20, 200);
                double most = 0.2 * (radius - 60) * Math.toRadians(angle);
                pieces.add(new Piece.Turn(radius, angle, maybe(), bank, Math.min(Math.max(rise, -most), most)));
            }
        }
        return new PieceLayout(pieces);
    }

    private Layout points() {
        int count = chance.nextInt(8, 16);
        List<PlanPoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double angle = 2 * Math.PI * i / count;
            double radius = in(1100, 1400);
            points.add(new PlanPoint(1.5 * radius * Math.cos(angle), radius * Math.sin(angle)));
        }
        return new PointLayout(points);
    }

    private boolean maybe() {
        return chance.nextBoolean();
    }

    private double in(double low, double high) {
        return chance.nextDouble(low, high);
    }

    private static Reading exact(double value) {
        return Reading.exact(value);
    }
}
