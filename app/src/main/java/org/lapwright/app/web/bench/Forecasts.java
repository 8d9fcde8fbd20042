package org.lapwright.app.web.bench;

import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.physics.ForecastInWords;
import org.lapwright.app.usecase.physics.ForecastLap;
import org.lapwright.app.usecase.physics.PredictionInWords;
import org.lapwright.app.web.bench.CarPage.LaneView;

/** Forecasts as the page shows them. */
public final class Forecasts {
    private Forecasts() {}

    /** One for each lane. */
    public static List<LaneView> of(List<ForecastLap.OnLane> lanes) {
        return lanes.stream().map(Forecasts::of).toList();
    }

    private static LaneView of(ForecastLap.OnLane lane) {
        Optional<String> lap = ForecastInWords.lap(lane.forecast());
        String why = PredictionInWords.noLap(lane.forecast().central());
        return new LaneView(
                lane.lane().name(),
                lap,
                lap.isPresent() ? howSure(lane) : Character.toUpperCase(why.charAt(0)) + why.substring(1) + ".",
                ForecastInWords.causes(lane.forecast()),
                ForecastInWords.caveats(lane.forecast()));
    }

    private static String howSure(ForecastLap.OnLane lane) {
        String interval = ForecastInWords.interval(lane.forecast());
        return interval.isEmpty() ? "how sure is not known" : interval;
    }
}
