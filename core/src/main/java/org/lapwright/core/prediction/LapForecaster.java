package org.lapwright.core.prediction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.doubt.LinearDoubt;
import org.lapwright.core.doubt.SampledDoubt;
import org.lapwright.core.dynamics.LapOutcome;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Surface;
import org.lapwright.core.units.Interval;

/**
 * Forecasts the fastest lap of set-ups on one lane, with an interval. Like the {@link LapSolver} it keeps, it is not safe for
 * use by several threads; what it says does not depend on what was asked before.
 */
public final class LapForecaster {
    /** How far the ends of the two intervals may be apart, in standard deviations of the lap time: a choice. */
    private static final double TOLERANCE = 0.2;

    /** Beyond the doubt, as a share of the lap: what rounding may do. */
    private static final double ROUNDING = 1e-9;

    private static final int FEWEST_DRAWS = 2;

    /** Cars sent round at once; after each lot it is seen whether enough have got stuck. */
    private static final int LOT = 40;

    /** With so many stuck the chance is known well enough, and to find that a car is stuck takes hundreds of times as long. */
    private static final int ENOUGH_STUCK = 40;

    private final LapSolver solver;
    private final Surface surface;

    /** A forecaster for a lane on a surface. */
    public LapForecaster(LaneCells lane, Surface surface) {
        solver = new LapSolver(lane);
        this.surface = surface;
    }

    /**
     * How to forecast.
     *
     * @param level of the intervals, above 0 and below 1
     * @param draws how many cars to draw, 2 to 1,000,000; fewer are sent round when many get stuck
     * @param seed where chance begins; the same seed gives the same forecast
     */
    public record Settings(double level, int draws, long seed) {
        /** 90 % by 1 000 cars; an end is then off by about 0.07 standard deviations. */
        public static final Settings USUAL = new Settings(0.9, 1000, 1);

        /** Checks each. */
        public Settings {
            if (!(level > 0 && level < 1) || draws < FEWEST_DRAWS) {
                throw new IllegalArgumentException(
                        "a forecast at level %s by %d draws is asked for; the level must be above 0 and below 1, and there must be at least 2 draws"
                                .formatted(level, draws));
            }
        }
    }

    /**
     * Forecasts the lap of a set-up.
     *
     * @throws IllegalArgumentException if the set-up has more grip for its height than the model can drive, or hardly any car
     *     drawn within its doubts makes sense
     */
    public LapForecast forecast(SetUp setUp, Settings settings) {
        SetUpDoubt doubt = new SetUpDoubt(setUp);
        LapOutcome central = solver.solve(ResolvedCar.of(setUp, surface));
        Optional<LinearDoubt> linear = Double.isFinite(central.lapS())
                ? Optional.of(doubt.linear(
                        car -> solver.solve(ResolvedCar.of(car, surface)).lapS()))
                : Optional.empty();
        // Without a doubt every car drawn is this one.
        int draws = doubt.doubtful().isEmpty() ? FEWEST_DRAWS : settings.draws();
        SetUpDraws<ResolvedCar> cars =
                doubt.draw(draws, new SplittableRandom(settings.seed()), car -> ResolvedCar.of(car, surface));
        double[] lapS = drive(cars.drawn());
        return gathered(doubt, central, linear, new Sample(lapS, cars.refused()), settings.level());
    }

    private double[] drive(List<ResolvedCar> cars) {
        double[] lapS = new double[cars.size()];
        int stuck = 0;
        int driven = 0;
        while (driven < lapS.length && stuck < ENOUGH_STUCK) {
            int to = Math.min(lapS.length, driven + LOT);
            solver.lapTimes(cars, driven, to, lapS);
            for (; driven < to; driven++) {
                stuck += Double.isFinite(lapS[driven]) ? 0 : 1;
            }
        }
        return Arrays.copyOf(lapS, driven);
    }

    private static LapForecast gathered(
            SetUpDoubt doubt, LapOutcome central, Optional<LinearDoubt> linear, Sample sample, double level) {
        Optional<Interval> linearS = linear.map(found -> found.interval(level));
        Optional<Interval> sampledS = sample.doubt().map(found -> found.interval(level));
        List<ForecastCaveat> caveats = new ArrayList<>();
        if (doubt.doubtful().isEmpty()) {
            caveats.add(new ForecastCaveat.NothingInDoubt());
        }
        LapForecast.Draws draws = sample.draws();
        if (draws.stuck() > 0) {
            caveats.add(new ForecastCaveat.MayNotGetRound(draws.chanceOfNoLap()));
        }
        if (linear.isPresent() && sample.doubt().isPresent()) {
            parting(linear.orElseThrow(), sample.doubt().orElseThrow(), level).ifPresent(caveats::add);
        }
        return new LapForecast(
                central, linearS, sampledS, linear.map(doubt::shares).orElse(List.of()), draws, caveats);
    }

    /** The comparison of JCGM 101:2008, clause 8, with room for the draws' own scatter. */
    private static Optional<ForecastCaveat> parting(LinearDoubt linear, SampledDoubt sampled, double level) {
        Interval a = linear.interval(level);
        Interval b = sampled.interval(level);
        double apart = Math.max(Math.abs(a.low() - b.low()), Math.abs(a.high() - b.high()));
        double allowed =
                TOLERANCE * sampled.standardDeviation() + 2 * sampled.endError(level) + ROUNDING * linear.value();
        return apart > allowed ? Optional.of(new ForecastCaveat.MethodsPart(apart, allowed)) : Optional.empty();
    }

    /** Laps of drawn cars. */
    private record Sample(double[] lapS, int refused) {
        Optional<SampledDoubt> doubt() {
            return count() < 2 ? Optional.empty() : Optional.of(SampledDoubt.of(lapS));
        }

        LapForecast.Draws draws() {
            Optional<SampledDoubt> found = doubt();
            return new LapForecast.Draws(
                    lapS.length,
                    lapS.length - count(),
                    refused,
                    found.map(SampledDoubt::mean),
                    found.map(SampledDoubt::standardDeviation).orElse(0.0));
        }

        private int count() {
            return (int) Arrays.stream(lapS).filter(Double::isFinite).count();
        }
    }
}
