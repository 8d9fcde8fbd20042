package org.lapwright.core.prediction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.doubt.SampledDoubt;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Surface;
import org.lapwright.core.units.Interval;

/**
 * Forecasts what a change of a car does to its fastest lap on one lane. Before and after are the same car drawn: what nobody knows
 * of it is as unknown on both sides, and most of that cancels. Not safe for use by several threads.
 */
public final class ChangeForecaster {
    private static final int FEWEST = 2;

    private final LapSolver solverBefore;
    private final LapSolver solverAfter;
    private final Surface surface;

    /** A forecaster for changes of a car that runs on a lane on a surface. */
    public ChangeForecaster(LaneCells lane, Surface surface) {
        solverBefore = new LapSolver(lane);
        solverAfter = solverBefore;
        this.surface = surface;
    }

    /** A forecaster where the lane changes too, as by another voltage. */
    public ChangeForecaster(LaneCells before, LaneCells after, Surface surface) {
        solverBefore = new LapSolver(before);
        solverAfter = new LapSolver(after);
        this.surface = surface;
    }

    /**
     * What a change brings.
     *
     * @param beforeS lap of the car as written, s; infinite where it gets no lap
     * @param afterS the same after the change
     * @param differenceS after less before, with the interval that the doubts about the car leave; empty where too few of the
     *     cars drawn get round both before and after
     * @param lost share of the cars drawn that get round before and not after
     */
    public record ChangeForecast(double beforeS, double afterS, Optional<Interval> differenceS, double lost) {
        /** After less before for the car as written, s; not finite where one of them gets no lap. */
        public double centralS() {
            return afterS - beforeS;
        }
    }

    private record Pair(ResolvedCar before, ResolvedCar after) {}

    /**
     * Forecasts a change.
     *
     * @param before the car
     * @param change makes the car after it of any car within the doubts; may refuse with {@link IllegalArgumentException}
     * @param settings how many cars to draw, the level, and where chance begins
     * @throws IllegalArgumentException if the change cannot be made to the car as written, or hardly any car drawn makes sense
     */
    public ChangeForecast forecast(SetUp before, UnaryOperator<SetUp> change, LapForecaster.Settings settings) {
        double[] written = {
            laps(solverBefore, List.of(resolved(before)))[0],
            laps(solverAfter, List.of(resolved(change.apply(before))))[0]
        };
        SetUpDoubt doubt = new SetUpDoubt(before);
        if (doubt.doubtful().isEmpty()) {
            double difference = written[1] - written[0];
            Optional<Interval> exact =
                    Double.isFinite(difference) ? Optional.of(new Interval(difference, difference)) : Optional.empty();
            return new ChangeForecast(written[0], written[1], exact, 0);
        }
        List<Pair> pairs = doubt.draw(
                        settings.draws(),
                        new SplittableRandom(settings.seed()),
                        car -> new Pair(resolved(car), resolved(change.apply(car))))
                .drawn();
        return gathered(
                written,
                laps(solverBefore, pairs.stream().map(Pair::before).toList()),
                laps(solverAfter, pairs.stream().map(Pair::after).toList()),
                settings.level());
    }

    private ResolvedCar resolved(SetUp car) {
        return ResolvedCar.of(car, surface);
    }

    private static double[] laps(LapSolver solver, List<ResolvedCar> cars) {
        double[] lapS = new double[cars.size()];
        solver.lapTimes(cars, 0, lapS.length, lapS);
        return lapS;
    }

    private static ChangeForecast gathered(double[] written, double[] before, double[] after, double level) {
        List<Double> differences = new ArrayList<>();
        int lost = 0;
        for (int i = 0; i < before.length; i++) {
            if (Double.isFinite(before[i]) && Double.isFinite(after[i])) {
                differences.add(after[i] - before[i]);
            } else if (Double.isFinite(before[i])) {
                lost++;
            }
        }
        Optional<Interval> interval = differences.size() < FEWEST
                ? Optional.empty()
                : Optional.of(SampledDoubt.of(differences.stream()
                                .mapToDouble(Double::doubleValue)
                                .toArray())
                        .interval(level));
        return new ChangeForecast(written[0], written[1], interval, (double) lost / before.length);
    }
}
