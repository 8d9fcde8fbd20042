package org.lapwright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.lapwright.app.files.Answers;
import org.lapwright.app.files.LapReading;
import org.lapwright.app.files.LapText;
import org.lapwright.app.files.ReadRun;
import org.lapwright.core.laps.Sorting;
import org.lapwright.core.laps.Stint;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Reading a CSV of laps and describing it; beside it the peer: mean, deviation and median of the same by Hipparchus. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class LapFileBenchmark {
    /** Laps in the file. */
    @Param({"1000", "100000"})
    private int laps;

    private String csv = "";
    private double[] seconds = {};

    /** Makes the file. */
    @Setup
    public void write() {
        csv = InventedLaps.csv(laps);
        seconds = InventedLaps.seconds(laps, 7, 1);
    }

    /** Reading alone. */
    @Benchmark
    public LapReading read() {
        return LapText.read(csv, Answers.NONE);
    }

    /** Reading and describing. */
    @Benchmark
    public Stint readAndDescribe() {
        List<ReadRun> runs = LapText.read(csv, Answers.NONE).runs();
        return Stint.of(Sorting.sort(runs.stream().map(ReadRun::run).toList()).stream()
                .flatMap(List::stream)
                .toList());
    }

    /** The peer. */
    @Benchmark
    public double describeByHipparchus() {
        DescriptiveStatistics statistics = new DescriptiveStatistics();
        for (double lap : seconds) {
            statistics.addValue(lap);
        }
        return statistics.getMean() + statistics.getStandardDeviation() + statistics.getPercentile(50);
    }
}
