package org.lapwright.core.car.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

/** What holds for every change to every car that it can be done to. */
final class ChangeLawTest {
    private static final double ROUNDING = 1e-9;

    @Property
    void everyChangeIsRebuiltFromItsValues(@ForAll long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        Build car = driven(chance, 4);
        for (ChangeKind kind : ChangeKind.values()) {
            Optional<Change> made = made(kind, car, chance);
            made.ifPresent(change -> {
                Change again = kind.of(change.values());
                assertThat(again).isEqualTo(change);
                assertThat(outcome(again, car)).isEqualTo(outcome(change, car));
            });
        }
    }

    @Property
    void takingOffWhatWasAddedLeavesTheCarAsItWas(@ForAll long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        Build car = driven(chance, 4);
        Ballast piece = new Ballast("only here", exact(5), exact(40), exact(0), exact(4));
        Build with = new BallastChange.Added(piece).apply(car);
        assertThat(new BallastChange.Removed("only here").apply(with)).isEqualTo(car);
    }

    @Property
    void aShimInAndOutLeavesTheNoseWhereItWas(@ForAll long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        Build car = new NoseChange.FrontGapMeasured(exact(chance.nextDouble(0, 0.5))).apply(driven(chance, 3));
        double shim = chance.nextDouble(0.05, 1);
        Build back = new NoseChange.ShimRemoved(shim).apply(new NoseChange.ShimAdded(shim).apply(car));
        assertThat(back.trim().frontGapMm().orElseThrow())
                .isCloseTo(car.trim().frontGapMm().orElseThrow(), within(ROUNDING));
        assertThat(back.setUp().massProperties().heightMm())
                .isCloseTo(car.setUp().massProperties().heightMm(), within(ROUNDING));
        assertThat(back.trim().shimsMm()).isEqualTo(car.trim().shimsMm());
    }

    @Property
    void noChangeTouchesTheCarBefore(@ForAll long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        Build car = SampleCar.build();
        for (ChangeKind kind : ChangeKind.values()) {
            made(kind, car, chance).ifPresent(change -> outcome(change, car));
        }
        assertThat(car).isEqualTo(SampleCar.build());
    }

    /** The car, or the sentence that says why not: both must come out alike. */
    private static Object outcome(Change change, Build car) {
        try {
            return change.apply(car);
        } catch (IllegalArgumentException refused) {
            return String.valueOf(refused.getMessage());
        }
    }

    /** A car after some changes that could be done to it. */
    private static Build driven(SplittableRandom chance, int changes) {
        List<ChangeKind> kinds = new ArrayList<>(List.of(ChangeKind.values()));
        Build car = SampleCar.build();
        for (int k = 0; k < changes; k++) {
            ChangeKind kind = kinds.get(chance.nextInt(kinds.size()));
            Build now = car;
            car = made(kind, now, chance)
                    .map(change -> outcome(change, now))
                    .filter(Build.class::isInstance)
                    .map(Build.class::cast)
                    .orElse(now);
        }
        return car;
    }

    /** A change with numbers near what is offered; none where there is nothing to choose from. */
    private static Optional<Change> made(ChangeKind kind, Build car, SplittableRandom chance) {
        Values values = Values.NONE;
        for (Ask ask : kind.asks(car)) {
            if (ask.range().isPresent()) {
                values = withNumber(values, ask, ask.range().get(), chance);
            } else if (ask.choices().isEmpty()) {
                values = values.with(ask.key(), ask.required() || chance.nextBoolean() ? "words" : "");
            } else {
                values = values.with(
                        ask.key(),
                        ask.choices().get(chance.nextInt(ask.choices().size())));
            }
        }
        try {
            return Optional.of(kind.of(values));
        } catch (IllegalArgumentException nothingToChoose) {
            assertThat(nothingToChoose.getMessage()).isNotBlank();
            return Optional.empty();
        }
    }

    private static Values withNumber(Values values, Ask ask, NumberKey range, SplittableRandom chance) {
        if (!ask.required() && (ask.offered().isEmpty() || chance.nextBoolean())) {
            return values;
        }
        double offered = ask.offered().map(Double::parseDouble).orElse(range.min());
        double given =
                range.name().endsWith("teeth") ? offered + chance.nextInt(3) : offered * chance.nextDouble(0.8, 1.1);
        return values.with(range, exact(Math.max(range.min(), Math.min(range.max(), given))));
    }

    private static Reading exact(double value) {
        return Reading.exact(value);
    }
}
