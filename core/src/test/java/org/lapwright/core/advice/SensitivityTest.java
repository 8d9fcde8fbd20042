package org.lapwright.core.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.lapwright.core.advice.Sensitivity.What;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.SampleCar;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/** What one more of something does, against the lap solved twice; the signs are those of physics and of the trade. */
final class SensitivityTest {
    private static final Track TRACK = new Track(
            "loop",
            new Surface(1, true),
            List.of(new Lane("left", 50)),
            new Power(12, 0.6, 0.08, List.of(0.0), OptionalDouble.of(0.2)),
            new PieceLayout(List.of(
                    new Piece.Straight(1500, 0),
                    new Piece.Turn(300, 180, true, 0, 0),
                    new Piece.Straight(1500, 0),
                    new Piece.Turn(300, 180, true, 0, 0))));

    private static double lapS(SetUp car) {
        return new LapSolver(TRACK.cells(TRACK.lanes().get(0)))
                .solve(ResolvedCar.of(car, TRACK.surface()))
                .lapS();
    }

    private static List<Sensitivity> all(SetUp car) {
        return Sensitivity.of(car, TRACK, TRACK.lanes().get(0), new LapForecaster.Settings(0.9, 40, 1));
    }

    @Test
    void eachIsTheDifferenceOfTwoLaps() {
        SetUp car = SampleCar.setUp();
        assertThat(all(car))
                .hasSize(What.values().length)
                .allSatisfy(found ->
                        assertThat(found.lapS()).isCloseTo(lapS(found.what().more(car)) - lapS(car), within(1e-9)));
    }

    @Test
    void gripAndMagnetHelpHereAndTheyAreTheSurest() {
        List<Sensitivity> found = all(SampleCar.setUp());
        assertThat(of(found, What.GRIP).intervalS().high()).isNegative();
        assertThat(of(found, What.MAGNET).intervalS().high()).isNegative();
    }

    @Test
    void withoutAMagnetThereIsNoneToTellOf() {
        assertThat(all(SampleCar.setUp().withMagnet(java.util.Optional.empty())))
                .noneMatch(found -> found.what() == What.MAGNET);
    }

    private static Sensitivity of(List<Sensitivity> found, What what) {
        return found.stream().filter(one -> one.what() == what).findFirst().orElseThrow();
    }
}
