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
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Track;

/** What one more of something does, against the lap solved twice; the signs are those of physics and of the trade. */
final class SensitivityTest {
    private static final Track TRACK = SampleTrack.OVAL;

    private static double lapS(SetUp car, Track track) {
        return new LapSolver(track.cells(track.lanes().get(0)))
                .solve(ResolvedCar.of(car, track.surface()))
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
                .allSatisfy(found -> assertThat(found.lapS())
                        .isCloseTo(
                                lapS(found.what().more(car), found.what().more(TRACK)) - lapS(car, TRACK),
                                within(1e-9)));
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

    @Test
    void aVoltMoreHelpsWhereTheMotorIsTheLimit() {
        Track weak = TRACK.withPower(TRACK.power().withSupplyV(5));
        LapForecaster.Settings settings = new LapForecaster.Settings(0.9, 40, 1);
        List<Sensitivity> found =
                Sensitivity.of(SampleCar.setUp(), weak, weak.lanes().get(0), settings);
        assertThat(of(found, What.VOLT).lapS()).isNegative();
        assertThat(of(found, What.BRAKE).lapS()).isGreaterThan(-1e-9);
        // Where only the tyres are, it does nothing.
        assertThat(of(all(SampleCar.setUp()), What.VOLT).lapS()).isCloseTo(0, within(1e-9));
        Track free = TRACK.withPower(new Power(12, 0.6, 0.08, List.of(0.0), OptionalDouble.empty()));
        assertThat(Sensitivity.of(SampleCar.setUp(), free, free.lanes().get(0), settings))
                .noneMatch(one -> one.what() == What.BRAKE)
                .anyMatch(one -> one.what() == What.VOLT);
    }

    private static Sensitivity of(List<Sensitivity> found, What what) {
        return found.stream().filter(one -> one.what() == what).findFirst().orElseThrow();
    }
}
