package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Track;

/**
 * Six laps against a second independent solver, in Python with numpy and scipy: {@code reference/lap-second/lap_check.py}, which
 * holds every limit as it is written down and searches where the Java code has closed forms.
 */
class SecondSolverReferenceTest {
    static List<JsonNode> cases() {
        List<JsonNode> cases = new ArrayList<>();
        LapFiles.json("lap-second/expected.json").forEach(cases::add);
        return cases;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theLapIsThatOfTheSecondSolver(JsonNode expected) {
        String name = "lap-second/" + expected.get("case").asText();
        Track track = LapFiles.trackAt(name);
        ResolvedCar car = ResolvedCar.of(LapFiles.carAt(name), track.surface());
        LaneCells cells = track.cells(track.lanes().get(0));
        PredictedLap lap = (PredictedLap) new LapSolver(cells).solve(car);
        double coarse = expected.get("lap_s").get(0).asDouble();
        double fine = expected.get("lap_s").get(1).asDouble();
        assertThat(cells.lapM()).isCloseTo(expected.get("length_m").asDouble(), within(1e-6));
        assertThat(lap.lapS()).isCloseTo(2 * fine - coarse, withinPercentage(0.06));
        assertThat(lap.topMps()).isCloseTo(expected.get("top_speed_m_s").asDouble(), withinPercentage(0.3));
    }
}
