package org.lapwright.app.usecase.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.prediction.LapForecast;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

class ForecastInWordsTest {
    private static final Track LOOP = TrackFile.read(Reference.text("loop.track.json"))
            .accepted()
            .orElseThrow()
            .track();
    private static final SetUp PLAIN = CarFile.read(Reference.text("plain.car.json"))
            .accepted()
            .orElseThrow()
            .setUp();

    private static LapForecast forecast(SetUp car) {
        return new ForecastLap(new LapForecaster.Settings(0.9, 60, 1))
                .forecast(car, LOOP)
                .get(0)
                .forecast();
    }

    @Test
    void theNumberThatBringsMostComesFirstWithTheWayToKnowItBetter() {
        SetUp car = PLAIN.with("rear_tyre.grip", new Reading(1.05, 0.1))
                .with("motor.stall_torque_gcm", new Reading(190, 20))
                .with("guide.blade_depth_mm", new Reading(6.5, 0.5));
        LapForecast forecast = forecast(car);
        List<ForecastInWords.Cause> causes = ForecastInWords.causes(forecast);
        assertThat(causes).extracting(ForecastInWords.Cause::label).startsWith("Grip of the rear tyres");
        assertThat(causes).extracting(ForecastInWords.Cause::path).doesNotContain("guide.blade_depth_mm");
        assertThat(causes.get(0).measure()).startsWith("Tilt board");
        assertThat(causes.get(0).written()).isEqualTo("1.05 ± 0.1");
        assertThat(causes.get(0).width()).isEqualTo("100%");
        assertThat(ForecastInWords.interval(forecast)).matches("9 in 10 between \\d\\.\\d\\d and \\d\\.\\d\\d s");
        assertThat(ForecastInWords.lap(forecast))
                .hasValueSatisfying(lap -> assertThat(lap).endsWith(" s"));
    }

    @Test
    void withoutAnyDoubtNothingIsSaidOfHowSure() {
        LapForecast forecast = forecast(PLAIN);
        assertThat(ForecastInWords.interval(forecast)).isEmpty();
        assertThat(ForecastInWords.causes(forecast)).isEmpty();
        assertThat(ForecastInWords.caveats(forecast)).anyMatch(said -> said.contains("No number of the car has a ±"));
    }
}
