package org.lapwright.app.usecase.advice;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.fit.CarFit;
import org.lapwright.core.fit.CarLaps;
import org.lapwright.core.fit.HeldPace;
import org.lapwright.core.fit.Learned;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.session.NoisePrior;

/** What do the laps of a car tell of it? */
public final class LearnCar {
    /** Learned from more cars than this, a driver is known well enough. */
    private static final int MOST_OTHERS = 8;

    private final CarFit.Settings settings;

    /** By settings such as how many draws. */
    public LearnCar(CarFit.Settings settings) {
        this.settings = settings;
    }

    /**
     * A run with what was driven.
     *
     * @param setUp the car as it was
     * @param lane name of the lane; empty when nobody said
     * @param run its laps
     */
    public record LaneRun(SetUp setUp, String lane, TimedRun run) {}

    /**
     * A car with its runs on a track.
     *
     * @param car as it is now
     * @param track where it was driven
     * @param runs in the order driven
     */
    public record Driven(SetUp car, Track track, List<LaneRun> runs) {
        /** Copies the list. */
        public Driven {
            runs = List.copyOf(runs);
        }

        /** How many runs say on which lane they were driven. */
        public long onKnownLanes() {
            return runs.stream().filter(run -> !run.lane().isEmpty()).count();
        }
    }

    /** Share of the draws that lies in the intervals. */
    public double level() {
        return settings.level();
    }

    /**
     * Learns.
     *
     * @param car the car asked about
     * @param others other cars of the same driver
     * @param noise what is known of the driver's noise
     * @throws IllegalArgumentException if a lane is not one of the track's, or the car does not get round, with what would be right
     */
    public Learned learn(Driven car, List<Driven> others, NoisePrior noise) {
        List<CarLaps> rest = others.stream()
                .limit(MOST_OTHERS)
                .map(other -> laps(other, noise))
                .toList();
        return CarFit.learn(laps(car, noise), rest, CarFit.USUAL_DRIVER, settings);
    }

    /** A run of which nobody said the lane may have been driven on any. */
    private static CarLaps laps(Driven driven, NoisePrior noise) {
        List<HeldPace.Driven> runs = new ArrayList<>();
        for (LaneRun run : driven.runs()) {
            List<Lane> lanes = run.lane().isEmpty()
                    ? driven.track().lanes()
                    : List.of(driven.track().requireLane(run.lane()));
            runs.add(new HeldPace.Driven(run.setUp(), lanes, run.run()));
        }
        return new CarLaps(driven.car(), driven.track(), HeldPace.of(runs, noise));
    }
}
