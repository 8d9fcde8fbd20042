package org.lapwright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Predicted laps: one car, many cars, a car that tips; the peer of many cars is the same solver car by car. Another peer,
 * and what the machine can do at most, are in {@link LapPeerBenchmark}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LapSolverBenchmark {
    private static final int CARS = 256;

    /** Cells of the lane. */
    @Param({"600", "6000"})
    private int cells = 600;

    private final ResolvedCar low = InventedCars.low();
    private final ResolvedCar tall = InventedCars.tall();
    private final List<ResolvedCar> likeLength = InventedCars.fleet(CARS, false);
    private final List<ResolvedCar> ownLength = InventedCars.fleet(CARS, true);
    private final double[] lapS = new double[CARS];
    private LapSolver solver = new LapSolver(InventedCars.lane(600));

    /** Makes the solver. */
    @Setup
    public void lay() {
        solver = new LapSolver(InventedCars.lane(cells));
    }

    /** One car, with its trace. */
    @Benchmark
    public double single() {
        return solver.solve(low).lapS();
    }

    /** One car that tips before it slides. */
    @Benchmark
    public double tipping() {
        return solver.solve(tall).lapS();
    }

    /** Cars of one length in a batch, time for each. */
    @Benchmark
    @OperationsPerInvocation(CARS)
    public double[] batch() {
        solver.lapTimes(likeLength, 0, CARS, lapS);
        return lapS;
    }

    /** Cars of different lengths in a batch, time for each. */
    @Benchmark
    @OperationsPerInvocation(CARS)
    public double[] batchOfLengths() {
        solver.lapTimes(ownLength, 0, CARS, lapS);
        return lapS;
    }

    /** The peer: the cars of {@link #batch} one after the other. */
    @Benchmark
    @OperationsPerInvocation(CARS)
    public double[] carByCar() {
        for (int i = 0; i < CARS; i++) {
            lapS[i] = solver.solve(likeLength.get(i)).lapS();
        }
        return lapS;
    }
}
