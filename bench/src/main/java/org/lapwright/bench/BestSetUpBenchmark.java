package org.lapwright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.lapwright.app.usecase.advice.FindBestSetUp;
import org.lapwright.core.advice.Course;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.rules.ClassLimits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A best set-up by 200,000 predicted laps on one lane, two searches side by side. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 4)
@Fork(1)
public class BestSetUpBenchmark {
    private static final int PREDICTIONS = 200_000;
    private static final int DRAWS = 200;

    private final FindBestSetUp.Question question = new FindBestSetUp.Question(
            Build.of(InventedCars.lowSetUp()), Course.all(InventedCars.track()), List.of(), ClassLimits.NONE);

    /** The whole search. */
    @Benchmark
    public FindBestSetUp.Answer search() {
        return new FindBestSetUp(PREDICTIONS, DRAWS).answer(question, share -> true);
    }
}
