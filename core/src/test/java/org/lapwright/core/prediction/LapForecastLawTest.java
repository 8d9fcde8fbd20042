package org.lapwright.core.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.LapFiles;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Interval;

/** What has to hold for the forecast of every car. */
class LapForecastLawTest {
    private static final LapForecaster.Settings USUAL = LapForecaster.Settings.USUAL;
    private static final LapForecaster.Settings QUICK = new LapForecaster.Settings(0.9, 200, 3);

    @Test
    void nothingInDoubtNoWidth() {
        LapForecast forecast = forecaster("loop").forecast(LapFiles.car("plain"), QUICK);
        assertThat(width(forecast.linearS().orElseThrow())).isZero();
        assertThat(width(forecast.sampledS().orElseThrow())).isZero();
        assertThat(forecast.shares()).isEmpty();
        assertThat(forecast.caveats()).containsExactly(new ForecastCaveat.NothingInDoubt());
    }

    @ParameterizedTest
    @CsvSource({"plain,loop", "magnet,loop", "soft,long", "tall,hill"})
    void smallDoubtsAreLinear(String car, String track) {
        LapForecast forecast = forecaster(track).forecast(Doubts.everywhere(car, 0.003), USUAL);
        Interval linear = forecast.linearS().orElseThrow();
        Interval drawn = forecast.sampledS().orElseThrow();
        double u = forecast.draws().deviationS();
        assertThat(drawn.low()).isCloseTo(linear.low(), within(0.25 * u));
        assertThat(drawn.high()).isCloseTo(linear.high(), within(0.25 * u));
        assertThat(forecast.caveats()).isEmpty();
        assertThat(forecast.draws().meanS().orElseThrow())
                .isCloseTo(forecast.central().lapS(), within(0.15 * u));
    }

    @ParameterizedTest
    @CsvSource({"plain,loop", "magnet,loop", "soft,long", "tall,hill"})
    void twiceTheDoubtTwiceTheWidth(String car, String track) {
        LapForecaster forecaster = forecaster(track);
        double once = width(forecaster
                .forecast(Doubts.everywhere(car, 0.001), QUICK)
                .linearS()
                .orElseThrow());
        double twice = width(forecaster
                .forecast(Doubts.everywhere(car, 0.002), QUICK)
                .linearS()
                .orElseThrow());
        assertThat(once).isPositive();
        assertThat(twice / once).isCloseTo(2, within(0.04));
    }

    /** Each further doubt leaves the interval as it is or widens it. */
    @Test
    void oneMoreDoubtNeverNarrows() {
        LapForecaster forecaster = forecaster("loop");
        SetUp exact = LapFiles.car("magnet");
        SetUp all = Doubts.everywhere(exact, 0.01);
        SetUp some = exact;
        double before = 0;
        for (var number : all.numbers()) {
            some = some.with(number.path(), number.reading());
            double now = width(forecaster
                    .forecast(some, new LapForecaster.Settings(0.9, 2, 1))
                    .linearS()
                    .orElseThrow());
            assertThat(now).as(number.path()).isGreaterThanOrEqualTo(before * (1 - 1e-12));
            before = now;
        }
        assertThat(before).isPositive();
    }

    @Test
    void oneSeedOneForecast() {
        SetUp car = Doubts.everywhere("soft", 0.02);
        LapForecast first = forecaster("loop").forecast(car, QUICK);
        LapForecaster used = forecaster("loop");
        used.forecast(Doubts.everywhere("tall", 0.01), QUICK);
        assertThat(used.forecast(car, QUICK).sampledS()).isEqualTo(first.sampledS());
        assertThat(used.forecast(car, new LapForecaster.Settings(0.9, 200, 4)).sampledS())
                .isNotEqualTo(first.sampledS());
    }

    /** The shares' squares add up to the square of the linear interval's half-width over its factor, 1.6449 at 90 %. */
    @Test
    void sharesAddUpAndComeInOrder() {
        LapForecast forecast = forecaster("loop").forecast(Doubts.everywhere("plain", 0.01), QUICK);
        double sum = 0;
        double last = Double.POSITIVE_INFINITY;
        for (NumberShare share : forecast.shares()) {
            assertThat(Math.abs(share.amount())).isLessThanOrEqualTo(last);
            assertThat(share.amount())
                    .isCloseTo(share.perUnit() * share.number().reading().plusMinus(), within(1e-12));
            last = Math.abs(share.amount());
            sum += share.amount() * share.amount();
        }
        assertThat(width(forecast.linearS().orElseThrow()) / 2 / Math.sqrt(sum)).isCloseTo(1.6448536, within(1e-6));
        NumberShare grip = forecast.shares().stream()
                .filter(share -> share.number().path().equals("rear_tyre.grip"))
                .findFirst()
                .orElseThrow();
        assertThat(grip.perUnit()).as("more grip is faster").isNegative();
    }

    /**
     * True cars by chance, each measured with error: the interval about the measured car holds the lap of the true one about nine
     * times in ten. 300 cars: three standard errors of a share of 0.9 are 0.052.
     */
    @Test
    void intervalsHoldTheTruth() {
        Track track = LapFiles.track("loop");
        LapForecaster forecaster = forecaster("loop");
        LapSolver solver = new LapSolver(track.cells(track.lanes().get(0)));
        SetUp shelf = Doubts.everywhere("plain", 0.02);
        SplittableRandom chance = new SplittableRandom(11);
        int cars = 300;
        int byLine = 0;
        int byDraws = 0;
        for (SetUp truth : new SetUpDoubt(shelf).draw(cars, chance, car -> car).drawn()) {
            double lapS = solver.solve(ResolvedCar.of(truth, track.surface())).lapS();
            SetUp measured =
                    new SetUpDoubt(truth).draw(1, chance, car -> car).drawn().get(0);
            LapForecast forecast = forecaster.forecast(measured, QUICK);
            byLine += forecast.linearS().orElseThrow().contains(lapS) ? 1 : 0;
            byDraws += forecast.sampledS().orElseThrow().contains(lapS) ? 1 : 0;
        }
        assertThat((double) byLine / cars).isCloseTo(0.9, within(0.052));
        assertThat((double) byDraws / cars).isCloseTo(0.9, within(0.052));
    }

    private static LapForecaster forecaster(String name) {
        Track track = LapFiles.track(name);
        return new LapForecaster(track.cells(track.lanes().get(0)), track.surface());
    }

    private static double width(Interval interval) {
        return interval.high() - interval.low();
    }
}
