package org.lapwright.app.web.track.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.PredictLap;
import org.lapwright.app.usecase.physics.PredictionInWords;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;

/**
 * What a car could do on the track as it is drawn.
 *
 * @param cars to choose from
 * @param car chosen; empty when there is none
 * @param lanes its best lap on each lane, a sentence each
 * @param first on the first lane, to colour the drawing by
 */
public record DrawnLaps(List<String> cars, String car, List<String> lanes, Optional<PredictedLap> first) {
    /** No car has its numbers written down. */
    public static final DrawnLaps NONE = new DrawnLaps(List.of(), "", List.of(), Optional.empty());

    /** Copies the lists. */
    public DrawnLaps {
        cars = List.copyOf(cars);
        lanes = List.copyOf(lanes);
    }

    /**
     * A car's laps.
     *
     * @param cars to choose from
     * @param car chosen
     * @param track as drawn; empty while it cannot be understood
     * @param predict the best lap on a lane
     */
    public static DrawnLaps of(
            List<String> cars, String car, Optional<Track> track, BiFunction<Track, Lane, PredictLap.OnLane> predict) {
        List<String> lanes = new ArrayList<>();
        Optional<PredictedLap> first = Optional.empty();
        if (track.isPresent()) {
            for (Lane lane : track.get().lanes()) {
                Said said = said(car, track.get(), lane, predict);
                lanes.add(said.sentence());
                first = lanes.size() == 1 ? said.lap() : first;
            }
        }
        return new DrawnLaps(cars, car, lanes, first);
    }

    private record Said(String sentence, Optional<PredictedLap> lap) {}

    private static Said said(String car, Track track, Lane lane, BiFunction<Track, Lane, PredictLap.OnLane> predict) {
        try {
            PredictLap.OnLane found = predict.apply(track, lane);
            if (found.outcome() instanceof PredictedLap lap) {
                return new Said(
                        "%s on lane %s could do %s, slowest %s m/s, fastest %s m/s"
                                .formatted(
                                        car,
                                        lane.name(),
                                        Figures.seconds(lap.lapS()),
                                        Figures.fixed(lap.slowestMps(), 2),
                                        Figures.fixed(lap.topMps(), 2)),
                        Optional.of(lap));
            }
            return new Said(
                    "lane %s: %s".formatted(lane.name(), PredictionInWords.noLap(found.outcome())), Optional.empty());
        } catch (IllegalArgumentException impossible) {
            return new Said("lane %s: %s".formatted(lane.name(), impossible.getMessage()), Optional.empty());
        }
    }
}
