package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Track;

/**
 * Work and energy along predicted laps on the flat. The solver's forces come from moments and sums of forces; kinetic energy is
 * reckoned here from the plain motion of a body whose guide is in the slot and whose rear axle does not slide sideways, with the
 * hitch angle by Hipparchus' integrator. Everything for unit mass. Banked and hilly tracks are left out: where bank jumps, the
 * model lifts the car's centre at once.
 */
class EnergyLawTest {
    private static final int FINE = 3000;

    /** Without losses the work at the tyre is the gain in kinetic energy, from the timing line to any place. */
    @ParameterizedTest
    @CsvSource({"plain", "magnet", "soft", "tall"})
    void withoutLossesWorkIsKineticEnergy(String name) {
        Lap lap = new Lap(LapFiles.car(name), true);
        double work = 0;
        double turnover = 0;
        double most = 0;
        for (int i = 0; i < lap.lane.count(); i++) {
            double done = lap.motor(i) * lap.cosMiddle[i] * lap.lane.lengthM(i);
            work += done;
            turnover += Math.abs(done);
            most = Math.max(most, lap.kinetic(i + 1));
            assertThat(work)
                    .as("cell %d", i)
                    .isCloseTo(lap.kinetic(i + 1) - lap.kinetic(0), within(1e-4 * lap.kinetic(0)));
        }
        assertThat(turnover).as("something happens on this lap").isGreaterThan(0.5 * most);
    }

    /** With losses, what the motor does in a lap is what slot, braids, air and tyres eat. */
    @ParameterizedTest
    @CsvSource({"plain", "magnet", "soft", "tall"})
    void overALapTheMotorPaysTheLosses(String name) {
        Lap lap = new Lap(LapFiles.car(name), false);
        double work = 0;
        double lost = 0;
        double turnover = 0;
        for (int i = 0; i < lap.lane.count(); i++) {
            double ds = lap.lane.lengthM(i);
            work += lap.motor(i) * lap.cosMiddle[i] * ds;
            lost += lap.losses(i) * ds;
            turnover += Math.abs(lap.motor(i) * lap.cosMiddle[i] * ds);
        }
        assertThat(lost).isGreaterThan(0.05 * turnover);
        assertThat(work).isCloseTo(lost, within(1e-5 * turnover));
    }

    /** A lap on the reference loop with what is needed to do its accounts. */
    private static final class Lap {
        final LaneCells lane;
        final ResolvedCar car;
        final LapTrace trace;
        final ForceRows forces;
        final double[] cosMiddle;
        private final double[] angle;

        Lap(SetUp setUp, boolean lossless) {
            Track track = LapFiles.track("loop");
            Lane first = track.lanes().get(0);
            lane = track.cells(first, FINE);
            ResolvedCar whole = ResolvedCar.of(setUp, track.surface());
            car = lossless ? withoutLosses(whole) : whole;
            trace = ((PredictedLap) new LapSolver(lane).solve(car)).trace();
            TrailedLane trail = new TrailedLane(lane);
            trail.follow(car.body().lengthM());
            CarSweep sweep = new CarSweep(trail);
            sweep.prepare(trail, car, true);
            forces = sweep.forces;
            cosMiddle = new double[lane.count()];
            angle = new double[lane.count() + 1];
            follow();
        }

        private void follow() {
            double length = car.body().lengthM();
            for (int lap = 0; lap < 2; lap++) {
                angle[0] = angle[lane.count()];
                for (int i = 0; i < lane.count(); i++) {
                    double half = lane.lengthM(i) / 2;
                    double middle = HitchOde.after(angle[i], half, lane.curvature(i), length);
                    cosMiddle[i] = Math.cos(middle);
                    angle[i + 1] = HitchOde.after(middle, half, lane.curvature(i), length);
                }
            }
        }

        /** Translation of the centre of gravity, yaw, and the rotor's spin. */
        double kinetic(int edge) {
            double v = trace.speedMps(edge);
            double sin = Math.sin(angle[edge]);
            double cos = Math.cos(angle[edge]);
            double length = car.body().lengthM();
            double yaw = v * sin / length;
            double forward = v * cos;
            double sideways = yaw * car.body().aheadM();
            double mass = car.body().massKg();
            return (forward * forward
                            + sideways * sideways
                            + car.body().yawInertiaKgM2() / mass * yaw * yaw
                            + car.drive().rotorMassKg() / mass * forward * forward)
                    / 2;
        }

        /** What the motor delivers at the tyre, with the friction of the slot put on the right side. */
        double motor(int cell) {
            double wall = affine(ForceRows.WALL, cell);
            double side = forces.rows.get(ForceRows.SIGN, cell);
            double more = car.contact().slotFriction() * (Math.abs(wall) - side * wall) / cosMiddle[cell];
            return affine(ForceRows.MOTOR, cell) + more;
        }

        /** Forces that eat energy, each times the way its point goes for 1 m of the guide. */
        double losses(int cell) {
            double mass = car.body().massKg();
            ResolvedCar.Contact c = car.contact();
            return c.slotFriction() * Math.abs(affine(ForceRows.WALL, cell))
                    + c.braidDragN() / mass
                    + ResolvedCar.AIR_DENSITY * c.dragAreaM2() * square(cell) / (2 * mass)
                    + c.rollingResistance() * affine(ForceRows.REAR, cell) * cosMiddle[cell];
        }

        private double affine(int row, int cell) {
            double from = trace.speedMps(cell);
            double to = trace.speedMps(cell + 1);
            double pace = (to * to - from * from) / (2 * lane.lengthM(cell));
            return forces.rows.get(row, cell) * pace
                    + forces.rows.get(row + ForceRows.W, cell) * square(cell)
                    + forces.rows.get(row + ForceRows.FREE_OF_BOTH, cell);
        }

        private double square(int cell) {
            double from = trace.speedMps(cell);
            double to = trace.speedMps(cell + 1);
            return (from * from + to * to) / 2;
        }

        private static ResolvedCar withoutLosses(ResolvedCar car) {
            ResolvedCar.Contact c = car.contact();
            return new ResolvedCar(
                    car.body(),
                    new ResolvedCar.Contact(c.grip(), 0, 0, c.minGuideLoadN(), c.magnetN(), c.magnetAheadM(), 0, 0),
                    car.drive());
        }
    }
}
