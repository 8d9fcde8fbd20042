package org.lapwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.lapwright.app.store.SqliteGarage;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;
import org.lapwright.core.trial.session.RunPlan;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Passes a second that a drive takes, on eight lanes, in batches that are each synced to disk; the peer is one at a time. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class PassBenchmark {
    private static final int BATCH = 500;
    private static final int LANES = 8;
    private static final long EVERY_NS = 25_000_000;
    private static final Instant AT = Instant.parse("2026-01-01T20:00:00Z");

    private Path folder = Path.of("");
    private Optional<SqliteGarage> store = Optional.empty();
    private long drive;
    private long sequence;

    /** A garage with a drive that has begun. */
    @Setup
    public void begin() throws IOException {
        folder = Files.createTempDirectory("passes");
        SqliteGarage garage = SqliteGarage.open(folder.resolve("garage.db"));
        store = Optional.of(garage);
        drive = garage.begin(
                        new NewDrive("car", "", "track", "", 1, "", "", RunPlan.parse("ABBA x 500"), 0), "begin", AT)
                .id();
    }

    private DriveEvent pass() {
        long number = sequence++;
        PassStamp stamp = new PassStamp(PassClock.DEVICE, number * EVERY_NS, number * EVERY_NS, 0.0001);
        return new DriveEvent.Passed(new Pass("gate", "boot", number, (int) (number % LANES) + 1, 0, stamp));
    }

    /** A batch of {@value #BATCH}, counted pass by pass. */
    @Benchmark
    @OperationsPerInvocation(BATCH)
    public int batches() {
        List<DriveEvent> batch = new ArrayList<>(BATCH);
        for (int i = 0; i < BATCH; i++) {
            batch.add(pass());
        }
        return store.orElseThrow().happened(drive, batch, AT).fresh().size();
    }

    /** The peer: each pass by itself. */
    @Benchmark
    public int oneByOne() {
        return store.orElseThrow().happened(drive, List.of(pass()), AT).fresh().size();
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
