package org.lapwright.core.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.lapwright.core.car.NumberRow;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.doubt.SampledDoubt;
import org.lapwright.core.fit.Learned.Diagnosis;
import org.lapwright.core.fit.Learned.Estimate;
import org.lapwright.core.fit.Learned.Measurement;
import org.lapwright.core.fit.Learned.OnLane;
import org.lapwright.core.fit.Learned.TradeOff;
import org.lapwright.core.track.Lane;

/** Tells what draws of a car's unknowns amount to. */
final class Summary {
    /** Less correlated than this, laps can tell two numbers apart well enough. */
    private static final double TRADED = 0.5;

    /** A measurement that takes away less than this share of the doubt is not worth its while. */
    private static final double WORTH = 0.02;

    private static final int STEPS = 400;

    private final CarLaps laps;
    private final CarUnknowns car;
    private final Belief driver;
    private final CarFit.Settings settings;

    Summary(CarLaps laps, CarUnknowns car, Belief driver, CarFit.Settings settings) {
        this.laps = laps;
        this.car = car;
        this.driver = driver;
        this.settings = settings;
    }

    /**
     * What draws amount to.
     *
     * @param drawn points, of which the first unknown is the driver and the car's follow
     * @param withOwn whether the car has a share of its own after its numbers
     */
    Learned of(Reweighed drawn, Laplace laplace, Chains chains, double misfit, boolean withOwn) {
        double[][] own = Arrays.stream(drawn.points())
                .map(z -> Arrays.copyOfRange(z, 1, 1 + car.size()))
                .toArray(double[][]::new);
        // By unknown and draw: the driver first.
        double[][] values = new double[1 + car.size()][own.length];
        double[] share = new double[own.length];
        for (int i = 0; i < own.length; i++) {
            double[] z = drawn.points()[i];
            values[0][i] = Math.exp(driver.middle() + driver.deviation() * z[0]);
            share[i] = values[0][i] * (withOwn ? Math.exp(CarFit.OWN.at(z[1 + car.size()])) : 1);
            double[] numbers = car.values(own[i]);
            for (int k = 0; k < numbers.length; k++) {
                values[1 + k][i] = numbers[k];
            }
        }
        List<OnLane> lanes = new ArrayList<>();
        double[] mean = new double[own.length];
        for (Lane lane : laps.track().lanes()) {
            double[] lapS = car.laps(laps.car(), List.of(lane), own);
            lanes.add(onLane(Optional.of(lane), lapS, share));
            for (int i = 0; i < mean.length; i++) {
                mean[i] += lapS[i] / laps.track().lanes().size();
            }
        }
        return new Learned(
                numbers(values, laplace),
                lanes,
                onLane(Optional.empty(), mean, share),
                tradeOffs(values),
                measurements(values, mean),
                diagnosis(chains, misfit, drawn.share()),
                setUps(own));
    }

    private OnLane onLane(Optional<Lane> lane, double[] lapS, double[] share) {
        double[] paceS = new double[lapS.length];
        for (int i = 0; i < paceS.length; i++) {
            paceS[i] = lapS[i] / share[i];
        }
        SampledDoubt lap = SampledDoubt.of(lapS);
        SampledDoubt pace = SampledDoubt.of(paceS);
        return new OnLane(
                lane,
                lap.mean(),
                lap.interval(settings.level()),
                pace.mean(),
                pace.interval(settings.level()),
                lane.map(this::measured).orElse(OptionalDouble.empty()));
    }

    /** The pace held with the set-up of now, each run weighed by how sure it is. */
    private OptionalDouble measured(Lane lane) {
        double sum = 0;
        double weights = 0;
        for (HeldPace pace : laps.paces()) {
            if (pace.lanes().equals(List.of(lane)) && pace.setUp().equals(laps.car())) {
                double weight = 1 / (pace.deviation() * pace.deviation());
                sum += weight * pace.paceS();
                weights += weight;
            }
        }
        return weights > 0 ? OptionalDouble.of(sum / weights) : OptionalDouble.empty();
    }

    private List<Learned.Parameter> numbers(double[][] values, Laplace laplace) {
        List<Learned.Parameter> numbers = new ArrayList<>();
        for (int k = 0; k < values.length; k++) {
            SampledDoubt after = SampledDoubt.of(values[k]);
            numbers.add(new Learned.Parameter(
                    name(k),
                    k == 0 ? Optional.empty() : Optional.of(car.all().get(k - 1).path()),
                    k == 0 ? estimate(z -> Math.exp(driver.at(z))) : believed(k),
                    new Estimate(after.mean(), after.standardDeviation()),
                    after.interval(settings.level()),
                    k == 0 ? driver(laplace) : number(k, laplace)));
        }
        return numbers;
    }

    private Estimate believed(int k) {
        Belief belief = car.all().get(k - 1).belief();
        return new Estimate(belief.mean(), belief.spread());
    }

    /** A normal z carried through the belief's bends and cuts. */
    private Estimate number(int k, Laplace laplace) {
        Belief belief = car.all().get(k - 1).belief();
        double middle = laplace.mode()[k];
        double deviation = Math.sqrt(laplace.covariance()[k][k]);
        return estimate(z -> belief.at(middle + deviation * z));
    }

    private Estimate driver(Laplace laplace) {
        Belief after = new Belief(
                Math.min(driver.middle() + driver.deviation() * laplace.mode()[0], driver.high()),
                driver.deviation() * Math.sqrt(laplace.covariance()[0][0]),
                driver.low(),
                driver.high());
        return estimate(z -> Math.exp(after.at(z)));
    }

    /** Mean and deviation of what becomes of a standard normal number. */
    private static Estimate estimate(DoubleUnaryOperator of) {
        StreamingStatistics sums = new StreamingStatistics();
        for (int i = 0; i < STEPS; i++) {
            sums.addValue(of.applyAsDouble(Belief.quantile((i + 0.5) / STEPS)));
        }
        return new Estimate(sums.getMean(), sums.getStandardDeviation());
    }

    private List<TradeOff> tradeOffs(double[][] values) {
        List<TradeOff> found = new ArrayList<>();
        for (int a = 0; a < values.length; a++) {
            for (int b = a + 1; b < values.length; b++) {
                double correlation = new PearsonsCorrelation().correlation(values[a], values[b]);
                if (Math.abs(correlation) >= TRADED) {
                    found.add(new TradeOff(name(a), name(b), correlation));
                }
            }
        }
        found.sort(Comparator.comparingDouble((TradeOff pair) -> -Math.abs(pair.correlation())));
        return found;
    }

    /** By the linear rule for normal numbers: measuring x leaves Var(lap) − Cov(lap, x)² / (Var(x) + bench²). */
    private List<Measurement> measurements(double[][] values, double[] lapS) {
        double[] finite = IntStream.range(0, lapS.length)
                .mapToDouble(i -> lapS[i])
                .filter(Double::isFinite)
                .toArray();
        double whole = SampledDoubt.of(finite).standardDeviation();
        List<Measurement> found = new ArrayList<>();
        for (int k = 1; k < values.length; k++) {
            double[] each = values[k];
            double[] known = IntStream.range(0, lapS.length)
                    .filter(i -> Double.isFinite(lapS[i]))
                    .mapToDouble(i -> each[i])
                    .toArray();
            double deviation = SampledDoubt.of(known).standardDeviation();
            double bench = car.all().get(k - 1).benchDeviation();
            double correlation = new PearsonsCorrelation().correlation(known, finite);
            double taken = correlation * correlation * deviation * deviation / (deviation * deviation + bench * bench);
            double left = whole * Math.sqrt(Math.max(0, 1 - taken));
            if (1 - left / whole >= WORTH) {
                found.add(new Measurement(name(k), left, 1 - left / whole));
            }
        }
        found.sort(Comparator.comparingDouble((Measurement each) -> -each.lessBy()));
        return found;
    }

    private Diagnosis diagnosis(Chains chains, double misfit, double exactShare) {
        double greatest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k <= car.size(); k++) {
            greatest = Math.max(greatest, chains.splitRHat(k));
            least = Math.min(least, chains.effectiveSize(k));
        }
        return new Diagnosis(laps.paces().size(), greatest, least, misfit, exactShare);
    }

    private List<SetUp> setUps(double[][] own) {
        NumberRow numbers = new NumberRow(laps.car());
        return Arrays.stream(own).map(z -> car.setUp(numbers, z)).toList();
    }

    private String name(int k) {
        return k == 0 ? Learned.DRIVER : car.all().get(k - 1).name();
    }
}
