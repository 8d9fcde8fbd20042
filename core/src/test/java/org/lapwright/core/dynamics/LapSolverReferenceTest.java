package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Track;

/**
 * Laps of an independent program for the same model: exact backward reachability and a greedy forward sweep on 4 000 equal
 * cells, itself checked against the same problem as a nonlinear programme solved by the interior-point optimiser IPOPT
 * 3.11.9. Agreement is asked within 0.3 % in time and 0.5 % in speeds; constructed cars and tracks.
 */
class LapSolverReferenceTest {
    @ParameterizedTest
    @CsvSource({"plain,loop", "magnet,loop", "soft,long", "tall,hill"})
    void agreesWithTheIndependentSolver(String carName, String trackName) {
        SetUp car = LapFiles.car(carName);
        Track track = LapFiles.track(trackName);
        ResolvedCar resolved = ResolvedCar.of(car, track.surface());
        for (JsonNode expected : LapFiles.json("lap/" + carName + "-" + trackName + ".expected.json")
                .get("lanes")) {
            Lane lane = track.requireLane(expected.get("lane").asText());
            LaneCells cells = track.cells(lane);
            PredictedLap lap = (PredictedLap) new LapSolver(cells).solve(resolved);
            String what = carName + " on " + trackName + ", " + lane.name();
            assertThat(cells.lapM())
                    .as(what + ", length")
                    .isCloseTo(expected.get("length_m").asDouble(), within(1e-5));
            assertClose(what + ", lap", lap.lapS(), expected.get("lap_s").asDouble(), 0.003);
            assertClose(
                    what + ", top", lap.topMps(), expected.get("top_speed_m_s").asDouble(), 0.005);
            assertClose(
                    what + ", slowest",
                    lap.slowestMps(),
                    expected.get("slowest_m_s").asDouble(),
                    0.005);
        }
    }

    /** The result must not hang on the number of cells: within 0.1 % from about 600 to about 6 000. */
    @ParameterizedTest
    @CsvSource({"plain,loop", "magnet,loop", "soft,long", "tall,hill"})
    void sixHundredCellsAreAsGoodAsSixThousand(String carName, String trackName) {
        Track track = LapFiles.track(trackName);
        ResolvedCar resolved = ResolvedCar.of(LapFiles.car(carName), track.surface());
        for (Lane lane : track.lanes()) {
            double coarse =
                    new LapSolver(track.cells(lane, 600)).solve(resolved).lapS();
            double fine = new LapSolver(track.cells(lane, 6000)).solve(resolved).lapS();
            assertClose(carName + " on " + trackName + ", " + lane.name(), coarse, fine, 0.001);
        }
    }

    private static void assertClose(String what, double found, double expected, double share) {
        assertThat(found).as(what).isCloseTo(expected, within(share * expected));
    }
}
