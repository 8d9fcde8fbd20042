package org.lapwright.core.laps;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Labelled streams of a lap counter: what the rules call a lap against what it was. The streams were made by an
 * independent program in R with known truth; a lap slow after an off is rightly called clean.
 */
class LapKindReferenceTest {
    private static final String FOLDER = "/reference/statistics/";
    private static final List<String> STREAMS = List.of(
            "sessions/stream-1",
            "sessions/stream-2",
            "sessions/stream-3",
            "streams/stream-01",
            "streams/stream-02",
            "streams/stream-03",
            "streams/stream-04",
            "streams/stream-05",
            "streams/stream-06");

    private enum Truth {
        OK(Set.of(LapKind.CLEAN)),
        RECOVERY(Set.of(LapKind.CLEAN)),
        DESLOT(Set.of(LapKind.OFF, LapKind.OFF_OR_MISSED, LapKind.FIRST, LapKind.SLOW)),
        MISSED_TRIGGER(Set.of(LapKind.MISSED, LapKind.OFF_OR_MISSED)),
        DOUBLE_TRIGGER(Set.of(LapKind.DOUBLE));

        private final Set<LapKind> right;

        Truth(Set<LapKind> right) {
            this.right = right;
        }
    }

    private record Count(int right, int all) {
        Count plus(boolean isRight) {
            return new Count(right + (isRight ? 1 : 0), all + 1);
        }

        double share() {
            return all == 0 ? 1 : right / (double) all;
        }
    }

    private static List<String> lines(String name) throws IOException, URISyntaxException {
        URL url = Objects.requireNonNull(LapKindReferenceTest.class.getResource(FOLDER + name), name);
        return Files.readAllLines(Path.of(url.toURI()));
    }

    private static double[] column(String name) throws IOException, URISyntaxException {
        return lines(name).stream()
                .skip(1)
                .mapToDouble(line -> Double.parseDouble(line.split(",")[1]))
                .toArray();
    }

    @Test
    void cleanLapsAreKeptAndFaultsAreFound() throws IOException, URISyntaxException {
        Map<Truth, Count> counts = new EnumMap<>(Truth.class);
        Count excluded = new Count(0, 0);
        for (String stream : STREAMS) {
            List<Lap> laps =
                    Sorting.sort(List.of(TimedRun.of(column(stream + ".csv")))).get(0);
            List<String> truth = lines(stream + ".truth.csv");
            for (int i = 0; i < laps.size(); i++) {
                Truth label = Truth.valueOf(truth.get(i + 1).split(",")[1].toUpperCase(Locale.ROOT));
                LapKind kind = laps.get(i).kind();
                counts.merge(
                        label,
                        new Count(0, 0).plus(label.right.contains(kind)),
                        (a, b) -> new Count(a.right() + b.right(), a.all() + b.all()));
                if (label.ordinal() >= Truth.DESLOT.ordinal()) {
                    excluded = excluded.plus(!kind.counts());
                }
            }
        }
        assertThat(counts.getOrDefault(Truth.OK, new Count(0, 0)).share())
                .as("clean laps kept, %s", counts)
                .isGreaterThanOrEqualTo(0.99);
        assertThat(excluded.share()).as("faults left out").isGreaterThanOrEqualTo(0.99);
        int right = 0;
        int all = 0;
        for (Truth fault : List.of(Truth.DESLOT, Truth.MISSED_TRIGGER, Truth.DOUBLE_TRIGGER)) {
            right += counts.getOrDefault(fault, new Count(0, 0)).right();
            all += counts.getOrDefault(fault, new Count(0, 0)).all();
        }
        assertThat(right / (double) all).as("faults named, %s", counts).isGreaterThanOrEqualTo(0.9);
    }

    @Test
    void everyTruncationKeepsCleanLaps() throws IOException, URISyntaxException {
        for (String stream : STREAMS) {
            double[] all = column(stream + ".csv");
            List<String> truth = lines(stream + ".truth.csv");
            int kept = 0;
            int clean = 0;
            for (int n = LapSorter.FEW; n <= all.length; n++) {
                double[] soFar = Arrays.copyOf(all, n);
                List<Lap> laps = new ArrayList<>(
                        Sorting.sort(List.of(TimedRun.of(soFar))).get(0));
                for (int i = 0; i < n; i++) {
                    if (truth.get(i + 1).split(",")[1].equals("ok")) {
                        clean++;
                        kept += laps.get(i).counts() ? 1 : 0;
                    }
                }
            }
            assertThat(kept / (double) clean).as(stream).isGreaterThan(0.99);
        }
    }
}
