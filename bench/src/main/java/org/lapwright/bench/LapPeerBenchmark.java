package org.lapwright.bench;

import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.LaneCells;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What {@link LapSolverBenchmark} is held against. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LapPeerBenchmark {
    private static final double TOLERANCE = 1e-6;
    private static final int NUMBERS = 1024;
    private static final int ROUNDS = 1000;
    private static final int FLOPS = 16 * NUMBERS * ROUNDS;

    private final ResolvedCar car = InventedCars.low();
    private final LaneCells lane = InventedCars.lane(600);
    private final double[] numbers = new double[NUMBERS];

    /**
     * The same car and lane by Hipparchus' Dormand–Prince 5(4): time, square of the speed and hitch angle over one lap,
     * flying start, at all that the motor gives. It stops at every joint, where the curvature jumps, and knows nothing of slide,
     * brake, nose, tip, or of the lap being closed: what a forward integration can do at its cheapest.
     */
    @Benchmark
    public double dormandPrinceOneLapOfPower() {
        double[] state = {0, 9, 0};
        double at = 0;
        int cell = 0;
        while (cell < lane.count()) {
            int from = cell;
            double to = at;
            do {
                to += lane.lengthM(cell++);
            } while (cell < lane.count() && lane.curvature(cell) == lane.curvature(from));
            var integrator = new DormandPrince54Integrator(1e-6, to - at, TOLERANCE, TOLERANCE);
            state = integrator
                    .integrate(new Powered(car, lane, lane.curvature(from)), new ODEState(at, state), to)
                    .getPrimaryState();
            at = to;
        }
        return state[0];
    }

    /** What the machine can do at most from this compiler: 8 multiply-adds a number, independent, in the first-level cache. */
    @Benchmark
    @OperationsPerInvocation(FLOPS)
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public double[] peakFlop() {
        Arrays.fill(numbers, 1);
        for (int r = 0; r < ROUNDS; r++) {
            multiplyAdd(numbers, 0.5 + r * 1e-6);
        }
        return numbers;
    }

    private static void multiplyAdd(double[] v, double a) {
        for (int i = 0; i < NUMBERS; i++) {
            double x = v[i];
            double p = Math.fma(x, a, 0.25);
            double q = Math.fma(x, 0.75, a);
            double r = Math.fma(x, x, a);
            double s = Math.fma(x, a, x);
            v[i] = Math.fma(Math.fma(p, q, r), 0.125, Math.fma(s, 0.0625, Math.fma(r, 0.03125, q)));
        }
    }

    /** Model of docs/model/lap-solver.md on the flat, driven by all that the motor gives. */
    private record Powered(ResolvedCar car, LaneCells lane, double curvature) implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return 3;
        }

        @Override
        public double[] computeDerivatives(double place, double[] y) {
            double w = Math.max(y[1], 0.01);
            double speed = Math.sqrt(w);
            double length = car.body().lengthM();
            double sine = Math.sin(y[2]);
            double cosine = Math.cos(y[2]);
            double turn = curvature - sine / length;
            double atRest = needed(0, w, sine, cosine, turn);
            double slope = needed(1, w, sine, cosine, turn) - atRest;
            double u = (drive(speed * cosine, lane.power().feedLengthM(place, lane.lapM())) - atRest) / slope;
            return new double[] {1 / speed, 2 * u, turn};
        }

        /** What the motor must deliver at the tyre, N. */
        private double needed(double u, double w, double sine, double cosine, double turn) {
            ResolvedCar.Body body = car.body();
            double length = body.lengthM();
            double behind = car.guideToCentreM();
            double yaw = u * sine / length + w * cosine * turn / length;
            double along = u * cosine - curvature * w * sine + behind * w * sine * sine / (length * length);
            double across = u * sine + curvature * w * cosine - behind * yaw;
            double side = (body.massKg() * behind * across - body.yawInertiaKgM2() * yaw) / length;
            double wall = body.massKg()
                            * (curvature * w
                                    - behind * yaw * cosine
                                    - behind * sine * sine * sine * w / (length * length))
                    - side * cosine;
            double drag = car.contact().slotFriction() * Math.abs(wall)
                    + car.contact().braidDragN()
                    + 0.5 * ResolvedCar.AIR_DENSITY * car.contact().dragAreaM2() * w;
            double push =
                    (body.massKg() * (u - behind * yaw * sine + behind * cosine * w * sine * sine / (length * length))
                                    - side * sine
                                    + drag)
                            / cosine;
            double rear =
                    body.massKg() * (ResolvedCar.GRAVITY * (length - body.aheadM()) + along * body.heightM()) / length;
            return push
                    + car.contact().rollingResistance() * rear
                    + car.drive().rotorMassKg() * (u * cosine - w * sine * turn);
        }

        private double drive(double wheel, double feed) {
            var motor = car.drive().motor();
            double gearing = car.drive().gearing();
            double ohm = motor.resistanceOhm()
                    + car.drive().pickupOhm()
                    + lane.power().sourceOhm()
                    + lane.power().railOhmPerM() * feed;
            double current = (lane.power().supplyV() - motor.constantVs() * wheel * gearing) / ohm;
            return gearing * car.drive().efficiency() * motor.constantVs() * (current - motor.noLoadCurrentA());
        }
    }
}
