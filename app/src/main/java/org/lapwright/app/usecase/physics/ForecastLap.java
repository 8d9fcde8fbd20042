package org.lapwright.app.usecase.physics;

import java.util.Optional;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.prediction.LapForecaster.Settings;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Interval;

/** How sure is the best lap of a set-up? */
public final class ForecastLap {
    /** A lap of more cells would keep the page waiting: a thousand cars are sent round it. */
    private static final int MOST_CELLS = 1500;

    /**
     * Where the best lap lies, nine times in ten, given how sure the numbers of the set-up are.
     *
     * @return empty when no number is in doubt, when there is no lap, when the lap is longer than 30 m, or when hardly any car
     *     within the doubts makes sense
     */
    public Optional<Interval> interval(SetUp setUp, Track track, Lane lane) {
        LaneCells cells = track.cells(lane);
        if (cells.count() > MOST_CELLS) {
            return Optional.empty();
        }
        try {
            return new LapForecaster(cells, track.surface())
                    .forecast(setUp, Settings.USUAL)
                    .intervalS()
                    .filter(interval -> interval.high() > interval.low());
        } catch (IllegalArgumentException senseless) {
            return Optional.empty();
        }
    }
}
