package org.lapwright.app.usecase.physics;

import java.util.List;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.prediction.LapForecast;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;

/** How sure is the best lap that a set-up could do on a track, and what makes it unsure? */
public final class ForecastLap {
    private final LapForecaster.Settings settings;

    /** By the usual number of drawn cars. */
    public ForecastLap() {
        this(LapForecaster.Settings.USUAL);
    }

    /** By settings of one's own. */
    public ForecastLap(LapForecaster.Settings settings) {
        this.settings = settings;
    }

    /**
     * A forecast for one lane.
     *
     * @param lane the lane
     * @param lapForecast the lap, its interval, and what each number brings to it
     */
    public record OnLane(Lane lane, LapForecast lapForecast) {}

    /**
     * The forecast for each lane of a track.
     *
     * @throws IllegalArgumentException if the model cannot drive such a car, with the reason
     */
    public List<OnLane> forecast(SetUp setUp, Track track) {
        return track.lanes().stream()
                .map(lane -> new OnLane(
                        lane, new LapForecaster(track.cells(lane), track.surface()).forecast(setUp, settings)))
                .toList();
    }
}
