package org.lapwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.lapwright.app.store.SqliteGarage;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Opening a garage in a program that has just started: one call in each new Java process, nothing loaded before. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(10)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class GarageOpenBenchmark {
    /** Comparisons of 60 laps in the garage; -1: there is no garage yet. */
    @Param({"-1", "0", "20", "1700"})
    public int comparisons;

    private Path folder = Path.of("");

    /** Makes the garage in another process, so that this one stays cold. */
    @Setup(Level.Trial)
    public void fill() throws IOException, InterruptedException {
        folder = Files.createTempDirectory("garage-open");
        if (comparisons >= 0) {
            List<String> command = List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp",
                    System.getProperty("java.class.path"),
                    GarageFiller.class.getName(),
                    file().toString(),
                    Integer.toString(comparisons));
            int status = new ProcessBuilder(command).inheritIO().start().waitFor();
            if (status != 0) {
                throw new IllegalStateException("filling ended with " + status);
            }
        }
    }

    private Path file() {
        return folder.resolve("garage.db");
    }

    /** Up to where a page can ask. */
    @Benchmark
    public void open() {
        SqliteGarage.open(file()).close();
    }

    /** Up to the list that the first page shows. */
    @Benchmark
    public int openAndList() {
        try (SqliteGarage store = SqliteGarage.open(file())) {
            return store.comparisons().size();
        }
    }

    /** Leaves nothing behind. */
    @TearDown(Level.Trial)
    public void delete() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
