package org.lapwright.core.car.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.car.change.SampleCar;
import org.lapwright.core.units.Reading;

/** What is allowed and what is told of it are the same, and two sets of rules together allow what both do. */
class ClassLimitsLawTest {
    private static final List<String> NAMES = List.of("soft", "Hard", "n 22");

    @Provide
    Arbitrary<ClassLimits> limits() {
        Arbitrary<Optional<Double>> mass =
                Arbitraries.doubles().between(60, 110).optional();
        Arbitrary<Optional<Double>> width =
                Arbitraries.doubles().between(40, 70).optional();
        Arbitrary<Optional<Double>> tyre = Arbitraries.doubles().between(17, 23).optional();
        Arbitrary<Map<PartPlace, List<String>>> parts =
                Arbitraries.of(NAMES).list().uniqueElements().map(names -> Map.of(PartPlace.REAR_TYRES, names));
        return Combinators.combine(mass, width, tyre, Arbitraries.of(true, false), parts)
                .as((heavy, wide, large, magnet, named) -> {
                    Map<ClassNumber, Double> numbers = new EnumMap<>(ClassNumber.class);
                    heavy.ifPresent(g -> numbers.put(g > 85 ? ClassNumber.MOST_MASS : ClassNumber.LEAST_MASS, g));
                    wide.ifPresent(mm -> numbers.put(ClassNumber.MOST_WIDTH, mm));
                    large.ifPresent(mm -> numbers.put(mm > 20 ? ClassNumber.MOST_TYRE : ClassNumber.LEAST_TYRE, mm));
                    return new ClassLimits(numbers, magnet, named);
                });
    }

    @Provide
    Arbitrary<Build> cars() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.1, 25),
                        Arbitraries.of(true, false),
                        Arbitraries.of(NAMES).optional())
                .as((grams, magnet, tyre) -> {
                    SetUp sample = SampleCar.setUp();
                    Ballast piece = new Ballast(
                            "lead", Reading.exact(grams), Reading.exact(40), Reading.exact(0), Reading.exact(4));
                    Build car = Build.of(
                            (magnet ? sample : sample.withMagnet(Optional.empty())).withBallast(List.of(piece)));
                    return car.with(car.trim().withFitted(PartPlace.REAR_TYRES, tyre.orElse("")));
                });
    }

    @Property(tries = 500)
    void whatIsNotAllowedIsTold(@ForAll("limits") ClassLimits limits, @ForAll("cars") Build car) {
        assertThat(limits.broken(car).isEmpty()).isEqualTo(limits.allow(car));
    }

    @Property(tries = 500)
    void bothTogetherAllowWhatBothDo(
            @ForAll("limits") ClassLimits one, @ForAll("limits") ClassLimits other, @ForAll("cars") Build car) {
        ClassLimits numbersOnly = new ClassLimits(other.numbers(), other.magnetAllowed(), Map.of());
        boolean least = one.limit(ClassNumber.LEAST_MASS).orElse(0.0)
                <= numbersOnly.limit(ClassNumber.MOST_MASS).orElse(1e9);
        assertThat(least).isTrue();
        ClassLimits both = one.and(numbersOnly);
        assertThat(both.allow(car)).isEqualTo(one.allow(car) && numbersOnly.allow(car));
        assertThat(numbersOnly.and(one)).isEqualTo(both);
    }

    @Property(tries = 200)
    void aLimitJustAtTheCarIsKept(@ForAll("cars") Build car, @ForAll @DoubleRange(min = 0.01, max = 5) double more) {
        double mass = car.setUp().massProperties().totalG();
        assertThat(new ClassLimits(Map.of(ClassNumber.LEAST_MASS, mass, ClassNumber.MOST_MASS, mass), true, Map.of())
                        .allow(car))
                .isTrue();
        assertThat(new ClassLimits(Map.of(ClassNumber.LEAST_MASS, mass + more), true, Map.of()).allow(car))
                .isFalse();
        assertThat(new ClassLimits(Map.of(ClassNumber.MOST_MASS, mass - more), true, Map.of()).allow(car))
                .isFalse();
    }
}
