package org.lapwright.core.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * Sessions with known truth, made by an independent program in R (A B B A A B, ten laps a run, realistic noise, timing
 * faults), and what an independent monitor written in R made of the first two files: 1 of 40 and 31 of 40.
 */
class JudgeReferenceTest {
    private static final TrialSettings PLANNED = TrialSettings.DEFAULT.withPlan(RunPlan.parse("ABBAAB x 10"));

    private static List<Session> sessions(String name) throws IOException, URISyntaxException {
        URL url = Objects.requireNonNull(
                JudgeReferenceTest.class.getResource("/reference/statistics/sessions/" + name), name);
        List<String> lines = Files.readAllLines(Path.of(url.toURI()));
        List<String> names = List.of(lines.get(0).split(","));
        Map<String, TreeMap<Integer, List<String>>> bySession = new LinkedHashMap<>();
        for (String line : lines.subList(1, lines.size())) {
            bySession
                    .computeIfAbsent(line.split(",")[0], session -> new TreeMap<>())
                    .computeIfAbsent(Integer.parseInt(line.split(",")[names.indexOf("run")]), run -> new ArrayList<>())
                    .add(line);
        }
        return bySession.values().stream()
                .map(runs -> new Session(
                        runs.values().stream().map(rows -> run(rows, names)).toList()))
                .toList();
    }

    private static DrivenRun run(List<String> rows, List<String> names) {
        int side = Math.max(names.indexOf("side"), names.indexOf("arm"));
        String code = rows.get(0).split(",")[side];
        double[] seconds = rows.stream()
                .mapToDouble(row -> Double.parseDouble(row.split(",")[names.indexOf("lap_s")]))
                .toArray();
        return new DrivenRun(code.equals("B") || code.equals("after") ? Side.AFTER : Side.BEFORE, TimedRun.of(seconds));
    }

    private static long decided(String name, TrialSettings settings) throws IOException, URISyntaxException {
        return sessions(name).stream()
                .map(session -> Judge.judge(session, settings).decision())
                .filter(decision -> decision == Decision.FASTER || decision == Decision.SLOWER)
                .count();
    }

    /** A count that 5 % of false alarms would exceed once in a hundred. */
    private static int limit(int sessions) {
        return new BinomialDistribution(sessions, 0.05).inverseCumulativeProbability(0.99);
    }

    @Test
    void noChangeIsSeldomCalledOne() throws IOException, URISyntaxException {
        for (TrialSettings settings : List.of(PLANNED, TrialSettings.DEFAULT)) {
            assertThat(decided("ab-null.csv", settings)).isLessThanOrEqualTo(limit(40));
            assertThat(decided("sessions-null.csv", settings)).isLessThanOrEqualTo(limit(40));
        }
    }

    @Test
    void onePercentIsFoundAsOftenAsTheIndependentMonitorFoundIt() throws IOException, URISyntaxException {
        assertThat(decided("ab-1pct.csv", PLANNED)).isBetween(29L, 34L);
        assertThat(decided("sessions-1pct.csv", PLANNED)).isGreaterThanOrEqualTo(12);
    }

    @Test
    void aGainIsNeverCalledALoss() throws IOException, URISyntaxException {
        for (String name : List.of("ab-1pct.csv", "sessions-1pct.csv")) {
            assertThat(sessions(name))
                    .allSatisfy(session ->
                            assertThat(Judge.judge(session, PLANNED).decision()).isNotEqualTo(Decision.SLOWER));
        }
    }
}
