package org.lapwright.core.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.Well19937c;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.rules.ClassLimits;

/**
 * The fastest set-up that can be made of a car with what is adjustable on it and with the parts on the shelf, for one lane, all
 * lanes, or several tracks.
 *
 * <p>The space is a lattice of what a person can set ({@link Knobs}), some ten scales of a few to a hundred marks. It is searched
 * by CMA-ES (Hansen and Ostermeier 2001; Hipparchus') over the scales as if they were continuous, several times from
 * the car as it is, and each time finished on the lattice itself, a mark or a knob at a time. Not safe for use by
 * several threads; the same seed gives the same set-up.
 */
public final class BestSetUp {
    /** A set-up that cannot be, or does not get round: slower than any lap, s. */
    private static final double NEVER = 1e6;

    /** What a change must bring to be kept: less cannot be told from nothing, s. */
    private static final double WORTH_S = 0.001;

    private static final double SIGMA = 0.25;
    private static final int MOST_ITERATIONS = 100_000;
    private static final double STILL = 1e-7;
    private static final int[] STRIDES = {1, 2, 4, 8, 16};

    private final Build car;
    private final ClassLimits bounds;
    private final List<Knob> knobs;
    private final CourseLaps courseLaps;
    private final Map<List<Integer>, Double> known = new HashMap<>();
    private final int[] scales;
    private final int[] rest;

    private Watch watch = (predictions, lapS) -> true;
    private int[] best;
    private double bestS;
    private int predictions;

    /**
     * A search.
     *
     * @param car as it is
     * @param courses the lanes it is made for; the mean of their laps counts
     * @param shelf changes that the parts on the shelf allow; of each kind one is taken at most
     * @param bounds rules of the owner's class
     * @throws IllegalArgumentException if there is no lane
     */
    public BestSetUp(Build car, List<Course> courses, List<Change> shelf, ClassLimits bounds) {
        if (courses.isEmpty()) {
            throw new IllegalArgumentException("there is no lane to make a set-up for; give at least one");
        }
        this.car = car;
        this.bounds = bounds;
        courseLaps = new CourseLaps(List.copyOf(courses));
        knobs = Knobs.of(car, shelf);
        scales = knobs.stream()
                .flatMap(knob -> knob.scales().stream())
                .mapToInt(Integer::intValue)
                .toArray();
        rest = knobs.stream()
                .flatMap(knob -> knob.rest().stream())
                .mapToInt(Integer::intValue)
                .toArray();
        best = rest.clone();
        bestS = NEVER;
    }

    /** Looks on while a search goes on. */
    @FunctionalInterface
    public interface Watch {
        /**
         * Called now and then.
         *
         * @param predictions laps predicted so far
         * @param lapS best so far
         * @return false to end the search with what was found
         */
        boolean goesOn(int predictions, double lapS);
    }

    /**
     * What was found.
     *
     * @param changes what to do, in the order of the knobs; none where the car is as fast as it can be made
     * @param wasS lap of the car as it is, mean of the lanes, s
     * @param lapS lap after all changes, s
     * @param predictions laps predicted
     */
    public record Found(List<Change> changes, double wasS, double lapS, int predictions) {
        /** Copies the list. */
        public Found {
            changes = List.copyOf(changes);
        }
    }

    /** Ends a search from within the optimiser. */
    private static final class Enough extends RuntimeException {
        private static final long serialVersionUID = 1;

        Enough() {
            super("enough", null, false, false);
        }
    }

    /**
     * Searches.
     *
     * @param most laps to predict at most, about
     * @param seed where chance begins
     * @param looksOn told of the progress
     * @throws IllegalArgumentException if the car does not get round as it is, or nothing brings it within the rules
     */
    public Found search(int most, long seed, Watch looksOn) {
        watch = looksOn;
        predictions = 0;
        double was = mean(car);
        if (was >= NEVER) {
            throw new IllegalArgumentException("the car does not get round as it is; predict says where it is stuck");
        }
        best = rest.clone();
        bestS = bounds.allow(car) ? was : NEVER;
        known.put(Arrays.stream(rest).boxed().toList(), bestS);
        try {
            long next = seed;
            while (predictions < most) {
                int before = predictions;
                optimise(most - predictions, next++);
                finish();
                if (predictions == before) {
                    // All of what it came by was known already: another start will not find more.
                    break;
                }
            }
            prune();
        } catch (Enough enough) {
            // What was found so far is what was asked for.
        }
        if (bestS >= NEVER) {
            throw new IllegalArgumentException(
                    "the car breaks a rule of the class as it is, and nothing that can be set on it mends that");
        }
        return new Found(changes(best), was, bestS, predictions);
    }

    private void optimise(int most, long seed) {
        int n = scales.length;
        double[] start = new double[n];
        double[] sigma = new double[n];
        double[] high = new double[n];
        for (int i = 0; i < n; i++) {
            start[i] = (rest[i] + 0.5) / scales[i];
            sigma[i] = SIGMA;
            high[i] = 1;
        }
        CMAESOptimizer optimiser = new CMAESOptimizer(
                MOST_ITERATIONS, 0, true, 0, 0, new Well19937c(seed), false, new SimpleValueChecker(-1, STILL));
        try {
            optimiser.optimize(
                    new MaxEval(Math.max(1, most / courseLaps.count())),
                    new ObjectiveFunction(point -> lapS(marks(point))),
                    GoalType.MINIMIZE,
                    new InitialGuess(start),
                    new SimpleBounds(new double[n], high),
                    new CMAESOptimizer.Sigma(sigma),
                    new CMAESOptimizer.PopulationSize(2 * (4 + (int) (3 * Math.log(n)))));
        } catch (MathIllegalStateException spent) {
            // No laps left: the best so far is kept as they come.
        }
    }

    private int[] marks(double[] point) {
        int[] marks = new int[point.length];
        for (int i = 0; i < point.length; i++) {
            marks[i] = Math.max(0, Math.min(scales[i] - 1, (int) (point[i] * scales[i])));
        }
        return marks;
    }

    /** A mark, or several, to either side on each scale, and back to rest on each knob, until nothing is better. */
    private void finish() {
        boolean better = true;
        while (better) {
            double before = bestS;
            for (int i = 0; i < scales.length; i++) {
                for (int stride : STRIDES) {
                    tryMark(i, best[i] - stride);
                    tryMark(i, best[i] + stride);
                }
            }
            for (int k = 0; k < knobs.size(); k++) {
                lapS(rested(k));
            }
            better = bestS < before;
        }
    }

    private void tryMark(int scale, int mark) {
        if (mark >= 0 && mark < scales[scale]) {
            int[] tried = best.clone();
            tried[scale] = mark;
            lapS(tried);
        }
    }

    private int[] rested(int knob) {
        int[] tried = best.clone();
        int first = first(knob);
        for (int i = 0; i < knobs.get(knob).scales().size(); i++) {
            tried[first + i] = rest[first + i];
        }
        return tried;
    }

    private int first(int knob) {
        return knobs.stream().limit(knob).mapToInt(each -> each.scales().size()).sum();
    }

    /** Takes back what hardly matters, the least first. */
    private void prune() {
        while (true) {
            int[] least = best;
            double leastS = bestS + WORTH_S;
            for (int k = 0; k < knobs.size(); k++) {
                int[] tried = rested(k);
                if (!Arrays.equals(tried, best)
                        && changes(tried).size() < changes(best).size()) {
                    double lapS = lapS(tried);
                    if (lapS < leastS) {
                        least = tried;
                        leastS = lapS;
                    }
                }
            }
            if (least == best) {
                return;
            }
            best = least;
            bestS = leastS;
        }
    }

    private List<Change> changes(int[] marks) {
        List<Change> changes = new ArrayList<>();
        int first = 0;
        for (Knob knob : knobs) {
            int next = first + knob.scales().size();
            knob.at(Arrays.copyOfRange(marks, first, next)).ifPresent(changes::add);
            first = next;
        }
        return changes;
    }

    /** The lap with some marks, the mean of the lanes; keeps it where it is the best so far. */
    private double lapS(int[] marks) {
        List<Integer> key = Arrays.stream(marks).boxed().toList();
        Double before = known.get(key);
        if (before != null) {
            return before;
        }
        double lapS = Possible.of(() -> car.after(changes(marks)))
                .filter(bounds::allow)
                .map(this::mean)
                .orElse(NEVER);
        known.put(key, lapS);
        if (lapS < bestS) {
            best = marks.clone();
            bestS = lapS;
        }
        if (!watch.goesOn(predictions, bestS)) {
            throw new Enough();
        }
        return lapS;
    }

    private double mean(Build build) {
        Optional<Double> lapS = Possible.of(() -> courseLaps.meanS(build.setUp()));
        predictions += lapS.isPresent() ? courseLaps.count() : 0;
        return lapS.filter(Double::isFinite).orElse(NEVER);
    }
}
