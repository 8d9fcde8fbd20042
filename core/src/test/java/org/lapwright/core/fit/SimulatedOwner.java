package org.lapwright.core.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import org.lapwright.core.car.NumberRow;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.SampleCar;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.units.Reading;

/**
 * An invented owner: his car is drawn from what is believed of it, he holds a share of its best lap, and his laps scatter, alike from
 * lap to lap and from run to run.
 */
final class SimulatedOwner {
    static final Track TRACK = new Track(
            "loop",
            new Surface(1, true),
            List.of(new Lane("left", 50), new Lane("right", -50)),
            new Power(12, 0.6, 0.08, List.of(0.0), OptionalDouble.of(0.2)),
            new PieceLayout(List.of(
                    new Piece.Straight(1800, 0),
                    new Piece.Turn(300, 180, true, 0, 0),
                    new Piece.Straight(600, 0),
                    new Piece.Turn(220, 90, false, 0, 0),
                    new Piece.Turn(220, 90, true, 0, 0),
                    new Piece.Straight(760, 0),
                    new Piece.Turn(300, 180, true, 0, 0))));

    static final double SCATTER = 0.012;
    private static final double AUTOCORRELATION = 0.25;

    final SetUp believed;
    final double[] truth;
    final double share;
    final CarLaps laps;

    private SimulatedOwner(SetUp believed, double[] truth, double share, CarLaps laps) {
        this.believed = believed;
        this.truth = truth;
        this.share = share;
        this.laps = laps;
    }

    /** Grip known to 10 %, the rest as usual; no magnet. */
    static SetUp car() {
        SetUp sample = SampleCar.setUp();
        return sample.withMagnet(Optional.empty())
                .withRearTyre(new RearTyre(Reading.exact(20), new Reading(1.05, 0.1)));
    }

    /**
     * An owner.
     *
     * @param runs how many on each lane with each set-up
     * @param lapsEach laps of each
     * @param setUps what he drove, the last being that of now
     */
    static SimulatedOwner draw(List<SetUp> setUps, int runs, int lapsEach, RandomGenerator chance) {
        SetUp now = setUps.get(setUps.size() - 1);
        CarUnknowns car = new CarUnknowns(now, TRACK);
        double[] z = new double[car.size()];
        for (int i = 0; i < z.length; i++) {
            z[i] = chance.nextGaussian();
        }
        double share = Math.exp(CarFit.USUAL_DRIVER.at(chance.nextGaussian()));
        List<HeldPace.Driven> driven = new ArrayList<>();
        for (Lane lane : TRACK.lanes()) {
            double misfit = PaceTarget.LANE_MISFIT * chance.nextGaussian();
            for (SetUp setUp : setUps) {
                double bestS = car.laps(setUp, List.of(lane), new double[][] {z})[0];
                if (!Double.isFinite(bestS)) {
                    return draw(setUps, runs, lapsEach, chance);
                }
                for (int run = 0; run < runs; run++) {
                    double paceS = bestS / share * Math.exp(misfit);
                    driven.add(new HeldPace.Driven(setUp, List.of(lane), run(paceS, lapsEach, chance)));
                }
            }
        }
        return new SimulatedOwner(
                now, car.values(z), share, new CarLaps(now, TRACK, HeldPace.of(driven, NoisePrior.DEFAULT)));
    }

    /** The car as it truly is. */
    SetUp trueCar() {
        SetUp car = believed;
        List<Unknown> unknowns = Unknown.of(believed, true);
        for (int i = 0; i < truth.length; i++) {
            car = new NumberRow(car).with(unknowns.get(i).path(), Reading.exact(truth[i]));
        }
        return car;
    }

    private static TimedRun run(double paceS, int laps, RandomGenerator chance) {
        double level = SCATTER * Math.sqrt(NoisePrior.DEFAULT.runShare()) * chance.nextGaussian();
        double innovation = SCATTER * Math.sqrt(1 - AUTOCORRELATION * AUTOCORRELATION);
        double[] lapS = new double[laps];
        double off = SCATTER * chance.nextGaussian();
        for (int i = 0; i < laps; i++) {
            lapS[i] = paceS * Math.exp(level + off);
            off = AUTOCORRELATION * off + innovation * chance.nextGaussian();
        }
        return TimedRun.of(lapS);
    }
}
