package org.lapwright.core.prediction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.NumberRow;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.doubt.Input;
import org.lapwright.core.doubt.InputDistribution;
import org.lapwright.core.doubt.JointDoubt;
import org.lapwright.core.doubt.LinearDoubt;
import org.lapwright.core.doubt.LinearPropagation;
import org.lapwright.core.units.Reading;

/**
 * Carries the doubt of a set-up's numbers through a computation. Each number that has a doubt is taken as normal, cut off where
 * its key ends, and independent of the others.
 */
public final class SetUpDoubt {
    private static final int MOST_DRAWS = 1_000_000;
    private static final int MOST_TRIES_EACH = 100;

    private final NumberRow numbers;
    private final List<Reading> row;

    /** Places of the numbers in doubt. */
    private final int[] places;

    private final List<InputDistribution> distributions;
    private final LinearPropagation linear;

    /** Looks at what is in doubt. */
    public SetUpDoubt(SetUp setUp) {
        numbers = new NumberRow(setUp);
        row = numbers.all().stream().map(NamedReading::reading).toList();
        int[] found = new int[row.size()];
        int count = 0;
        for (int i = 0; i < row.size(); i++) {
            if (row.get(i).isUncertain()) {
                found[count++] = i;
            }
        }
        places = Arrays.copyOf(found, count);
        List<NamedReading> doubtful = doubtful();
        distributions = doubtful.stream().map(SetUpDoubt::distribution).toList();
        linear = new LinearPropagation(doubtful.stream()
                .map(number ->
                        Input.of(number.reading().value(), number.reading().plusMinus()))
                .toList());
    }

    /** The numbers in doubt, in the order of the car file. */
    public List<NamedReading> doubtful() {
        return Arrays.stream(places).mapToObj(numbers.all()::get).toList();
    }

    /**
     * The doubt about one number, by the law of propagation.
     *
     * @param measure computes it; away from the set-up as written it may refuse with {@link IllegalArgumentException} or give a
     *     number that is not finite
     */
    public LinearDoubt linear(ToDoubleFunction<SetUp> measure) {
        return linear.through(values -> {
            try {
                return measure.applyAsDouble(at(values));
            } catch (IllegalArgumentException senseless) {
                return Double.NaN;
            }
        });
    }

    /**
     * The doubt about several numbers, by the law of propagation.
     *
     * @param outputs how many
     * @param measure computes them; may refuse as in {@link #linear}
     */
    public JointDoubt linearOfMany(int outputs, Function<SetUp, double[]> measure) {
        return linear.throughMany(values -> {
            try {
                return measure.apply(at(values));
            } catch (IllegalArgumentException senseless) {
                double[] none = new double[outputs];
                Arrays.fill(none, Double.NaN);
                return none;
            }
        });
    }

    /** What each number in doubt brings, the most first. */
    public List<NumberShare> shares(LinearDoubt doubt) {
        List<NamedReading> doubtful = doubtful();
        List<NumberShare> shares = new ArrayList<>();
        for (int i = 0; i < places.length; i++) {
            LinearDoubt.Part part = doubt.parts().get(i);
            shares.add(new NumberShare(doubtful.get(i), part.sensitivity(), part.amount()));
        }
        shares.sort(Comparator.comparingDouble((NumberShare share) -> -Math.abs(share.amount())));
        return List.copyOf(shares);
    }

    /**
     * Draws set-ups, for the caller to compute with many at once. A draw that makes no sense as a car is drawn again.
     *
     * @param count how many, 1 to 1,000,000
     * @param chance where chance comes from; the same seed gives the same set-ups
     * @param use what to make of each; may refuse with {@link IllegalArgumentException}, which counts as making no sense
     * @throws IllegalArgumentException if hardly any draw makes sense
     */
    public <T> SetUpDraws<T> draw(int count, RandomGenerator chance, Function<SetUp, T> use) {
        if (count < 1 || count > MOST_DRAWS) {
            throw new IllegalArgumentException(
                    "%d draws are asked for; it must be from 1 to %d".formatted(count, MOST_DRAWS));
        }
        List<T> drawn = new ArrayList<>(count);
        double[] values = new double[places.length];
        int refused = 0;
        while (drawn.size() < count) {
            for (int i = 0; i < values.length; i++) {
                values[i] = distributions.get(i).draw(chance);
            }
            try {
                drawn.add(use.apply(at(values)));
            } catch (IllegalArgumentException senseless) {
                refused++;
                if (refused > MOST_TRIES_EACH * (drawn.size() + 1)) {
                    throw new IllegalArgumentException(
                            ("of %d cars drawn within the doubts only %d make sense (%s); check the plus_minus of the numbers"
                                            + " named there")
                                    .formatted(refused + drawn.size(), drawn.size(), senseless.getMessage()),
                            senseless);
                }
            }
        }
        return new SetUpDraws<>(drawn, refused);
    }

    private SetUp at(double[] values) {
        List<Reading> moved = new ArrayList<>(row);
        for (int i = 0; i < places.length; i++) {
            moved.set(places[i], row.get(places[i]).withValue(values[i]));
        }
        return numbers.withAll(moved);
    }

    private static InputDistribution distribution(NamedReading number) {
        return new InputDistribution.Normal(
                number.reading().value(),
                number.reading().plusMinus(),
                number.key().min(),
                number.key().max());
    }
}
