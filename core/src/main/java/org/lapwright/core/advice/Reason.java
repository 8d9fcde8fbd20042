package org.lapwright.core.advice;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.Limit;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;

/**
 * Where on a lap a change gains, by what limits the car there before it.
 *
 * @param gainS time gained in the places limited by each, s; they add up to the gain on the lap
 */
public record Reason(Map<Limit, Double> gainS) {
    /** Copies the map. */
    public Reason {
        gainS = Map.copyOf(gainS);
    }

    /**
     * Works it out from both laps, cell by cell.
     *
     * @return empty when one of the cars does not get round
     */
    public static Optional<Reason> of(SetUp before, SetUp after, Track track, Lane lane) {
        LapSolver solver = new LapSolver(track.cells(lane));
        if (!(solver.solve(ResolvedCar.of(before, track.surface())) instanceof PredictedLap was)
                || !(solver.solve(ResolvedCar.of(after, track.surface())) instanceof PredictedLap is)) {
            return Optional.empty();
        }
        Map<Limit, Double> gains = new EnumMap<>(Limit.class);
        for (int i = 0; i < was.trace().cells(); i++) {
            gains.merge(was.trace().limit(i), was.trace().cellS(i) - is.trace().cellS(i), Double::sum);
        }
        return Optional.of(new Reason(gains));
    }

    /** Where most is gained. */
    public Optional<Limit> most() {
        return gainS.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey);
    }
}
