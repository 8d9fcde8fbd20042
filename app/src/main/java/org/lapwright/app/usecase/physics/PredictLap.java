package org.lapwright.app.usecase.physics;

import java.util.List;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.LapOutcome;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Track;

/** What is the best lap that a set-up could do on a track, with its numbers as written? */
public final class PredictLap {
    /**
     * The best lap on one lane.
     *
     * @param lane the lane
     * @param lengthM its length, m
     * @param outcome the lap, or why there is none
     */
    public record OnLane(Lane lane, double lengthM, LapOutcome outcome) {}

    /** The best lap on each lane of a track. */
    public List<OnLane> predict(SetUp setUp, Track track) {
        return track.lanes().stream().map(lane -> predict(setUp, track, lane)).toList();
    }

    /** The best lap on one lane. */
    public OnLane predict(SetUp setUp, Track track, Lane lane) {
        LaneCells cells = track.cells(lane);
        LapOutcome outcome = new LapSolver(cells).solve(ResolvedCar.of(setUp, track.surface()));
        return new OnLane(lane, cells.lapM(), outcome);
    }
}
