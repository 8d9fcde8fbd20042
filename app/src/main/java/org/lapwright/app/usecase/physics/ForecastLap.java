package org.lapwright.app.usecase.physics;

import java.util.List;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.prediction.LapForecast;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Track;

/** How sure is the best lap that a set-up could do on a track, and what makes it unsure? */
public final class ForecastLap {
    /** So many cells are driven through for one forecast; a longer lap gets fewer cars, so that nobody waits long. */
    private static final int CELLS_IN_ALL = 1_500_000;

    private static final int FEWEST_DRAWS = 100;

    private final LapForecaster.Settings settings;

    /** By settings such as how many cars to draw. */
    public ForecastLap(LapForecaster.Settings settings) {
        this.settings = settings;
    }

    /**
     * A forecast for one lane.
     *
     * @param lane the lane
     * @param lengthM its length, m
     * @param forecast the lap or why there is none, its interval, and what each number brings to it
     */
    public record OnLane(Lane lane, double lengthM, LapForecast forecast) {}

    /** Share of the cars within the doubts whose lap lies in the interval. */
    public double level() {
        return settings.level();
    }

    /**
     * The forecast for each lane of a track.
     *
     * @throws IllegalArgumentException if hardly any car within the doubts makes sense, with the reason
     */
    public List<OnLane> forecast(SetUp setUp, Track track) {
        return track.lanes().stream().map(lane -> forecast(setUp, track, lane)).toList();
    }

    /**
     * The forecast for one lane.
     *
     * @throws IllegalArgumentException if hardly any car within the doubts makes sense, with the reason
     */
    public OnLane forecast(SetUp setUp, Track track, Lane lane) {
        LaneCells cells = track.cells(lane);
        int draws = Math.min(settings.draws(), Math.max(FEWEST_DRAWS, CELLS_IN_ALL / cells.count()));
        LapForecast forecast = new LapForecaster(cells, track.surface())
                .forecast(setUp, new LapForecaster.Settings(settings.level(), draws, settings.seed()));
        return new OnLane(lane, cells.lapM(), forecast);
    }
}
