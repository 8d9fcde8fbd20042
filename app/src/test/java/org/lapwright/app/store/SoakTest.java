package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.capture.Gates;
import org.lapwright.app.capture.Sent;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.DriveStore.Press;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeepComparison;
import org.lapwright.app.usecase.KnownDriver;
import org.lapwright.app.usecase.run.DriveLive;
import org.lapwright.app.usecase.run.Progress;
import org.lapwright.app.usecase.run.Standing;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.trial.session.RunPlan;

/** A day at the track in a minute: eight lanes, a heartbeat each second, a clock that is set by an hour now and then. */
class SoakTest {
    private static final int LANES = 8;
    private static final int HOURS = 24;
    private static final int HOUR_S = 3600;
    private static final int LAP_S = 6;
    private static final int LAPS_A_RUN = 480;
    private static final int STEPS = 3;

    /** A run takes 481 passes of its lane, so it ends with such a batch unless the clock was set in it. */
    private static final int TOGETHER = 13 * LANES;

    private static final long ROOM_BYTES = 24_000_000;

    private final List<Pass> waiting = new ArrayList<>();
    private final List<Long> usedBytes = new ArrayList<>();

    @TempDir
    Path folder;

    /** The lines of the day, made as they are read. */
    private final class Day extends InputStream {
        private byte[] block = new byte[0];
        private int at;
        private int second;
        private long sequence;
        private long setS;

        @Override
        public int read() {
            return at < block.length || next() ? block[at++] : -1;
        }

        @Override
        public int read(byte[] into, int from, int most) {
            if (at == block.length && !next()) {
                return -1;
            }
            int count = Math.min(most, block.length - at);
            System.arraycopy(block, at, into, from, count);
            at += count;
            return count;
        }

        private boolean next() {
            if (second == HOURS * HOUR_S) {
                return false;
            }
            if (second % HOUR_S == 0) {
                measure();
            }
            // Set forward in the sixth hour and back in the twelfth and eighteenth, between two seconds.
            setS += second == 6 * HOUR_S ? HOUR_S : second == 12 * HOUR_S || second == 18 * HOUR_S ? -HOUR_S : 0;
            StringBuilder lines = new StringBuilder(Sent.beat("day", 10_000 + second + setS)).append('\n');
            for (int lane = 1; lane <= LANES && second % LAP_S == 0; lane++) {
                long us = Math.round((10_000 + second + setS + 0.01 * lane) * 1e6);
                lines.append(Sent.line("P,%d,%d,%d,1".formatted(sequence++, lane, us)))
                        .append('\n');
            }
            block = lines.toString().getBytes(StandardCharsets.US_ASCII);
            at = 0;
            second++;
            return true;
        }
    }

    private void measure() {
        System.gc();
        usedBytes.add(Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory());
    }

    @Test
    void aDayOfPassesLosesNoLapInventsNoneAndTakesNoRoom() throws IOException {
        try (SqliteGarage garage = SqliteGarage.open(folder.resolve("garage.db"))) {
            KnownDriver driver = new KnownDriver(garage);
            JudgeChange judge = new JudgeChange();
            Clock clock = Clock.systemUTC();
            DriveLive driveLive =
                    new DriveLive(garage, judge, new KeepComparison(garage, judge, driver, clock), driver, clock);
            driveLive.begin(
                    new NewDrive(
                            "Dunlin",
                            "",
                            "Shed loop",
                            "",
                            3,
                            "",
                            "",
                            RunPlan.parse("AB".repeat(20) + " x " + LAPS_A_RUN),
                            0),
                    "soak");
            Sent news = new Sent();
            new Gates(System::nanoTime).lines(new Day()).listen(passes -> take(passes, driveLive), news);
            hand(driveLive);
            List<TimedLap> laps = driveLive.open().orElseThrow().progress().session().runs().stream()
                    .flatMap(run -> run.run().laps().stream())
                    .toList();
            // No lap goes over a setting of the clock nor over a change of runs. In lines that do not come live only a
            // step back is told.
            int passes = HOURS * HOUR_S / LAP_S;
            int runs = driveLive.open().orElseThrow().progress().run();
            assertThat(laps).allSatisfy(lap -> assertThat(lap.seconds()).isEqualTo(LAP_S));
            assertThat(laps.size()).isBetween(passes - 1 - runs - STEPS * (1 + TOGETHER / LANES), passes - 1 - STEPS);
            assertThat(news.told()).containsOnly("stepped").hasSize(2);
            assertThat(usedBytes.get(HOURS - 1) - usedBytes.get(2)).isLessThan(ROOM_BYTES);
        }
    }

    private boolean take(List<Pass> passes, DriveLive driveLive) {
        waiting.addAll(passes);
        if (waiting.size() >= TOGETHER) {
            hand(driveLive);
        }
        return true;
    }

    private void hand(DriveLive driveLive) {
        Standing open = driveLive.open().orElseThrow();
        Progress before = open.progress();
        if (before.isRunDone()) {
            driveLive.happened(open.id(), List.of(new DriveEvent.Pressed(Press.NEXT_RUN, "next " + before.run())));
        }
        driveLive.happened(
                open.id(),
                waiting.stream().<DriveEvent>map(DriveEvent.Passed::new).toList());
        waiting.clear();
    }
}
