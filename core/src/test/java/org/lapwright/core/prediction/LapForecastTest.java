package org.lapwright.core.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.NumberRow;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.doubt.JointDoubt;
import org.lapwright.core.dynamics.LapFiles;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

/** Doubts at the edges of what makes sense. */
class LapForecastTest {
    private static final LapForecaster.Settings USUAL = LapForecaster.Settings.USUAL;
    private static final SetUp PLAIN = LapFiles.car("plain");

    /** A resistance cannot be below 0: half of the line is not there, and the methods part. */
    @Test
    void methodsThatPartSaySo() {
        SetUp car = LapFiles.car("magnet").with("pickup_ohm", new Reading(0, 1));
        LapForecast forecast = loop().forecast(car, USUAL);
        assertThat(forecast.draws().refused()).isZero();
        assertThat(forecast.sampledS().orElseThrow().low())
                .isGreaterThanOrEqualTo(forecast.central().lapS() - 1e-9);
        assertThat(forecast.linearS().orElseThrow().low())
                .isLessThan(forecast.central().lapS() - 0.001);
        assertThat(forecast.caveats()).hasAtLeastOneElementOfType(ForecastCaveat.MethodsPart.class);
        assertThat(forecast.intervalS()).isEqualTo(forecast.sampledS());
    }

    /** A guide that may need more load than the nose has cannot always be driven. */
    @Test
    void carsThatDoNotGetRoundAreCounted() {
        LapForecast forecast = loop().forecast(
                        Doubts.one(PLAIN, "guide.min_guide_load_g", 15), new LapForecaster.Settings(0.9, 200, 1));
        assertThat(forecast.central()).isInstanceOf(PredictedLap.class);
        assertThat(forecast.draws().chanceOfNoLap()).isBetween(0.001, 0.5);
        assertThat(forecast.caveats())
                .contains(new ForecastCaveat.MayNotGetRound(forecast.draws().chanceOfNoLap()));
        assertThat(forecast.sampledS().orElseThrow().isBounded()).isTrue();
    }

    /** A car that gets round only if its numbers are a little off has no line but may have drawn laps. */
    @Test
    void noCentralLapNoLine() {
        SetUp car = PLAIN.with("guide.min_guide_load_g", new Reading(60, 30));
        LapForecast forecast = loop().forecast(car, new LapForecaster.Settings(0.9, 400, 1));
        assertThat(forecast.central().lapS()).isInfinite();
        assertThat(forecast.linearS()).isEmpty();
        assertThat(forecast.shares()).isEmpty();
        assertThat(forecast.draws().chanceOfNoLap()).isGreaterThan(0.5);
        assertThat(forecast.draws().count()).as("enough have got stuck").isLessThan(200);
        assertThat(forecast.sampledS()).isPresent();
    }

    @Test
    void senselessDrawsAreDrawnAgain() {
        SetUp car = Doubts.one(PLAIN, "mass.cg_ahead_of_rear_axle_mm", 60);
        SetUpDraws<SetUp> draws = new SetUpDoubt(car).draw(500, new SplittableRandom(2), drawn -> drawn);
        assertThat(draws.drawn()).hasSize(500);
        assertThat(draws.refused()).isBetween(50, 500);
        SetUpDoubt hopeless = new SetUpDoubt(car);
        assertThatThrownBy(() -> hopeless.draw(1, new SplittableRandom(2), drawn -> {
                    throw new IllegalArgumentException("too tall");
                }))
                .hasMessageContaining("too tall")
                .hasMessageContaining("plus_minus");
    }

    /** Two outputs of one computation: masses and their centre, against the moments by hand. */
    @Test
    void severalNumbersAtOnce() {
        SetUp car = Doubts.one(Doubts.one(PLAIN, "mass.total_g", 0.5), "mass.cg_ahead_of_rear_axle_mm", 0.4);
        JointDoubt joint = new SetUpDoubt(car).linearOfMany(2, drawn -> new double[] {
            drawn.massProperties().totalG(), drawn.massProperties().aheadMm()
        });
        double weighed = car.mass().totalG().value();
        double all = joint.outputs().get(0).value();
        assertThat(joint.outputs().get(0).standardUncertainty()).isCloseTo(0.5, within(1e-9));
        double ahead = joint.outputs().get(1).value();
        double byMass = 0.5 * (car.mass().balance().aheadOfRearAxleMm(0) - ahead) / all;
        double byPlace = 0.4 * weighed / all;
        assertThat(joint.outputs().get(1).standardUncertainty()).isCloseTo(Math.hypot(byMass, byPlace), within(1e-4));
    }

    /** Numbers laid out and put back give the same car; all at once may pass where one by one could not. */
    @Test
    void layingOutAndPuttingBack() {
        for (String name : new String[] {"plain", "magnet", "soft", "tall"}) {
            SetUp car = Doubts.everywhere(name, 0.01);
            NumberRow numbers = new NumberRow(car);
            assertThat(numbers.withAll(
                            numbers.all().stream().map(NamedReading::reading).toList()))
                    .isEqualTo(car);
            for (NamedReading number : numbers.all()) {
                assertThat(number.path()).endsWith(number.key().name());
                number.key().check(number.reading());
            }
        }
        assertThatThrownBy(() -> PLAIN.with("mass.colour", Reading.exact(1))).hasMessageContaining("mass.colour");
    }

    private static LapForecaster loop() {
        Track track = LapFiles.track("loop");
        return new LapForecaster(track.cells(track.lanes().get(0)), track.surface());
    }
}
