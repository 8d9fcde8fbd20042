package org.lapwright.core.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.track.Lane;
import org.lapwright.core.units.Check;

/**
 * Learns a car, and its driver, from the paces that were held: with those of the driver's other cars where there are any, because
 * the hand is the same.
 */
public final class CarFit {
    /**
     * What is believed of a driver: the logarithm of the share that he holds of the best lap that physics allows, some 94 ± 4 %, never
     * more than all of it. Common practice, no source; laps of other cars narrow it.
     */
    public static final Belief USUAL_DRIVER = new Belief(-0.06, 0.045, Math.log(0.5), 0);

    /** How much better or worse one car may suit the driver than another, as a logarithm: a choice. */
    static final Belief OWN = Belief.normal(0, 0.015);

    /** One step in so many goes to the first round, and to settling. */
    private static final int PILOT = 4;

    private static final int SETTLING = 10;

    private final Settings settings;
    private final SplittableRandom chance;
    private final List<CarUnknowns> cars = new ArrayList<>();
    private final List<Key> keys = new ArrayList<>();
    private final Belief driver;
    private final List<CarLaps> all;
    private final int[] from;
    private final int size;

    /**
     * How to fit.
     *
     * @param chains how many chains are drawn, 2 to 64
     * @param steps of each that are kept, 50 to 100,000
     * @param exact how many draws are driven by the solver itself, 50 to the number of draws
     * @param level of the intervals, above 0 and below 1
     * @param seed where chance begins; the same seed learns the same
     */
    public record Settings(int chains, int steps, int exact, double level, long seed) {
        /** Four chains of 4,000 steps, 400 of them driven, intervals of 90 %. */
        public static final Settings USUAL = new Settings(4, 4000, 400, 0.9, 1);

        /** Checks each. */
        public Settings {
            Check.inRange(chains, 2, 64, "chains");
            Check.inRange(steps, 50, 100_000, "steps of a chain");
            Check.inRange(exact, 50, chains * steps, "draws that are driven");
            Check.inRange(level, 0.01, 0.99, "level of the intervals", "");
        }
    }

    /** A set-up on some lanes: what has a best lap. */
    private record Key(int car, SetUp setUp, List<Lane> lanes) {}

    private CarFit(List<CarLaps> all, Belief driver, Settings settings) {
        this.all = all;
        this.driver = driver;
        this.settings = settings;
        chance = new SplittableRandom(settings.seed());
        from = new int[all.size()];
        int next = 1;
        for (int c = 0; c < all.size(); c++) {
            CarUnknowns car = new CarUnknowns(all.get(c).car(), all.get(c).track());
            cars.add(car);
            from[c] = next;
            // With several cars each has a share of its own beside the driver's.
            next += car.size() + (all.size() > 1 ? 1 : 0);
            for (HeldPace pace : all.get(c).paces()) {
                Key key = new Key(c, pace.setUp(), pace.lanes());
                if (!keys.contains(key)) {
                    keys.add(key);
                }
            }
        }
        size = next;
    }

    /**
     * Learns a car.
     *
     * @param car the car with its paces; without any it learns from those of the others, or nothing
     * @param others the driver's other cars
     * @param driver what is believed of the driver before any lap: the logarithm of his share of the best lap
     * @throws IllegalArgumentException if hardly any car within what is known gets round
     */
    public static Learned learn(CarLaps car, List<CarLaps> others, Belief driver, Settings settings) {
        List<CarLaps> all = new ArrayList<>();
        all.add(car);
        others.stream().filter(other -> !other.paces().isEmpty()).forEach(all::add);
        return new CarFit(all, driver, settings).learn();
    }

    private Learned learn() {
        PaceTarget rough = target(curves(unitBall()));
        Laplace near = Laplace.of(rough);
        Map<Key, LapCurve> curves = curves(near);
        PaceTarget target = target(curves);
        Laplace laplace = Laplace.of(target);
        // A first round tells the true width where the density is bent; the second is the one that counts.
        Laplace wide = Laplace.fromDraws(chains(target, laplace, settings.steps() / PILOT));
        Chains chains = chains(target, wide, settings.steps());
        double misfit =
                curves.values().stream().mapToDouble(LapCurve::misfit).max().orElse(0);
        Summary summary = new Summary(all.get(0), cars.get(0), driver, settings);
        return summary.of(exact(target, chains), laplace, chains, misfit, all.size() > 1);
    }

    private Chains chains(PaceTarget target, Laplace near, int steps) {
        EllipticalSlice slice = new EllipticalSlice(target::lnDensity, near);
        double[][][] draws = new double[settings.chains()][][];
        for (int c = 0; c < draws.length; c++) {
            draws[c] = slice.chain(steps / SETTLING, steps, chance);
        }
        return new Chains(draws);
    }

    /** The belief itself. */
    private Laplace unitBall() {
        double[][] unit = new double[size][size];
        for (int i = 0; i < size; i++) {
            unit[i][i] = 1;
        }
        return new Laplace(new double[size], unit);
    }

    private Map<Key, LapCurve> curves(Laplace near) {
        Map<Key, LapCurve> curves = new LinkedHashMap<>();
        for (Key key : keys) {
            CarUnknowns car = cars.get(key.car());
            Laplace own = near.of(from[key.car()], from[key.car()] + car.size());
            curves.put(
                    key,
                    LapCurve.about(
                            own.mode(),
                            own.root(),
                            points -> car.lnLaps(key.setUp(), key.lanes(), points),
                            chance.split()));
        }
        return curves;
    }

    private PaceTarget target(Map<Key, LapCurve> curves) {
        List<PaceTarget.Row> rows = new ArrayList<>();
        List<List<Object>> courses = new ArrayList<>();
        for (int c = 0; c < all.size(); c++) {
            for (HeldPace pace : all.get(c).paces()) {
                List<Object> course = List.of(c, pace.lanes());
                if (!courses.contains(course)) {
                    courses.add(course);
                }
                int to = from[c] + cars.get(c).size();
                rows.add(new PaceTarget.Row(
                        Objects.requireNonNull(curves.get(new Key(c, pace.setUp(), pace.lanes()))),
                        from[c],
                        to,
                        all.size() > 1 ? to : -1,
                        courses.indexOf(course),
                        Math.log(pace.paceS()),
                        pace.deviation()));
            }
        }
        return new PaceTarget(size, driver, OWN, rows);
    }

    /**
     * Some of the draws, weighed by what the solver says of them against what the curves said, and drawn again so that all are
     * alike likely. Only the laps of the car itself are driven; those of the others only tell of the driver.
     */
    private Reweighed exact(PaceTarget target, Chains chains) {
        double[][] points = new double[settings.exact()][];
        double[][] own = new double[settings.exact()][];
        for (int i = 0; i < points.length; i++) {
            points[i] = chains.draw((int) ((long) i * chains.count() / points.length));
            own[i] =
                    Arrays.copyOfRange(points[i], from[0], from[0] + cars.get(0).size());
        }
        double[] lnWeights = new double[points.length];
        if (!all.get(0).paces().isEmpty()) {
            Map<Key, double[]> laps = new LinkedHashMap<>();
            keys.stream()
                    .filter(key -> key.car() == 0)
                    .forEach(key -> laps.put(key, cars.get(0).lnLaps(key.setUp(), key.lanes(), own)));
            for (int i = 0; i < points.length; i++) {
                lnWeights[i] = lnWeight(target, points[i], laps, i);
            }
        }
        return Reweighed.of(points, lnWeights, chance.split());
    }

    private double lnWeight(PaceTarget target, double[] z, Map<Key, double[]> laps, int draw) {
        double[] byCurve = target.residuals(z);
        double[] bySolver = byCurve.clone();
        List<HeldPace> paces = all.get(0).paces();
        for (int r = 0; r < paces.size(); r++) {
            Key key = new Key(0, paces.get(r).setUp(), paces.get(r).lanes());
            double curve = target.lnLap(r, z);
            bySolver[r] += curve - laps.getOrDefault(key, new double[0])[draw];
        }
        return target.lnLikelihood(bySolver) - target.lnLikelihood(byCurve);
    }
}
