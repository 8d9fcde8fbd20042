package org.lapwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.fit.CarFit;
import org.lapwright.core.fit.CarLaps;
import org.lapwright.core.fit.HeldPace;
import org.lapwright.core.fit.Learned;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.session.NoisePrior;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Learning a car from ten runs of thirty laps; the peer is the same number of laps driven by the solver alone. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class FitBenchmark {
    private static final int RUNS = 10;
    private static final int LAPS = 30;

    private final SetUp car = InventedCars.lowSetUp();
    private final Track track = InventedCars.track();
    private final CarLaps laps = laps();

    private CarLaps laps() {
        SplittableRandom chance = new SplittableRandom(1);
        List<HeldPace.Driven> runs = new ArrayList<>();
        for (int run = 0; run < RUNS; run++) {
            double[] lapS = new double[LAPS];
            for (int i = 0; i < LAPS; i++) {
                lapS[i] = 2.9 * Math.exp(0.012 * chance.nextGaussian());
            }
            runs.add(new HeldPace.Driven(car, track.lanes(), TimedRun.of(lapS)));
        }
        return new CarLaps(car, track, HeldPace.of(runs, NoisePrior.DEFAULT));
    }

    /** All of it: surface, Laplace, chains, exact laps. */
    @Benchmark
    public Learned fit() {
        return CarFit.learn(laps, List.of(), CarFit.USUAL_DRIVER, CarFit.Settings.USUAL);
    }
}
