package org.lapwright.app.usecase.physics;

import java.util.List;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.LapOutcome;
import org.lapwright.core.prediction.LapForecast;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Track;

/** What is the best lap that a set-up could do on a track, and how sure is that? */
public final class PredictLap {
    /** Share of the cars within the doubts whose lap lies in the interval. */
    public static final double LEVEL = LapForecaster.Settings.USUAL.level();

    /**
     * The best lap on one lane.
     *
     * @param lane the lane
     * @param lengthM its length, m
     * @param forecast the lap, or why there is none, and how sure it is
     */
    public record OnLane(Lane lane, double lengthM, LapForecast forecast) {
        /** The lap with the numbers as written, or why there is none. */
        public LapOutcome outcome() {
            return forecast.central();
        }
    }

    /**
     * The best lap on each lane of a track.
     *
     * @throws IllegalArgumentException if the model cannot drive such a car, with the reason
     */
    public List<OnLane> predict(SetUp setUp, Track track) {
        return track.lanes().stream().map(lane -> predict(setUp, track, lane)).toList();
    }

    /**
     * The best lap on one lane.
     *
     * @throws IllegalArgumentException if the model cannot drive such a car, with the reason
     */
    public OnLane predict(SetUp setUp, Track track, Lane lane) {
        LaneCells cells = track.cells(lane);
        LapForecast forecast = new LapForecaster(cells, track.surface()).forecast(setUp, LapForecaster.Settings.USUAL);
        return new OnLane(lane, cells.lapM(), forecast);
    }
}
