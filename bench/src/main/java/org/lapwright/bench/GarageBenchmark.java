package org.lapwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.lapwright.app.store.SqliteGarage;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Saves a second: each a comparison of 60 laps, synced to disk. The disk counts for most of it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class GarageBenchmark {
    private Path folder = Path.of("");
    private Optional<SqliteGarage> store = Optional.empty();
    private int kept;

    /** An empty garage. */
    @Setup
    public void open() throws IOException {
        folder = Files.createTempDirectory("garage");
        store = Optional.of(SqliteGarage.open(folder.resolve("garage.db")));
    }

    /** One save. */
    @Benchmark
    public long keep() {
        kept++;
        return store.orElseThrow()
                .keep(GarageFiller.comparison(kept), GarageFiller.VERDICT, "key " + kept, Instant.ofEpochSecond(kept))
                .id();
    }

    /** Leaves nothing behind. */
    @TearDown
    public void delete() throws IOException {
        store.orElseThrow().close();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
