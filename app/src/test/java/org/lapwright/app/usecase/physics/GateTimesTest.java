package org.lapwright.app.usecase.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Gate;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

class GateTimesTest {
    private static Track track(Gate... gates) {
        return new Track(
                "gated",
                new Surface(1, false),
                List.of(new Lane("one", 0)),
                new Power(12, 0.5, 0.1, List.of(0.0), OptionalDouble.empty()),
                new PieceLayout(List.of(new Piece.Turn(300, 360, true, 0, 0))),
                List.of(gates));
    }

    private static PredictedLap lap() {
        Track track = track();
        SetUp car = CarFile.read(Reference.text("plain.car.json"))
                .accepted()
                .orElseThrow()
                .setUp();
        return (PredictedLap)
                new LapSolver(track.cells(track.lanes().get(0))).solve(ResolvedCar.of(car, track.surface()));
    }

    /** On a circle the speed is the same everywhere, so a section takes its share of the lap. */
    @Test
    void sectionsAddUpToTheLap() {
        PredictedLap lap = lap();
        List<GateTimes.Section> sections = GateTimes.of(track(new Gate("b", 0.5), new Gate("a", 0.2)), lap.trace());
        assertThat(sections).extracting(GateTimes.Section::name).containsExactly("a", "b", "to the timing line");
        assertThat(sections.get(0).seconds()).isCloseTo(0.2 * lap.lapS(), within(1e-3));
        assertThat(sections.stream().mapToDouble(GateTimes.Section::seconds).sum())
                .isCloseTo(lap.lapS(), within(1e-9));
    }

    @Test
    void withoutGatesThereAreNoSections() {
        assertThat(GateTimes.of(track(), lap().trace())).isEmpty();
    }
}
