package org.lapwright.core.car.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.car.change.SampleCar;

class RaceClassesTest {
    private static final ClassLimits HEAVY = new ClassLimits(
            Map.of(ClassNumber.LEAST_MASS, 500.0), false, Map.of(PartPlace.REAR_TYRES, List.of("soft", "hard")));

    private static RaceClass called(String name, String... cars) {
        return new RaceClass(name, HEAVY, List.of(cars));
    }

    @Test
    void aCarIsRunInOneClassAndCanChange() {
        RaceClasses classes = new RaceClasses(List.of(called("Old", "Plover"), called("New")));
        assertThat(classes.limitsOf("Plover")).isEqualTo(HEAVY);
        assertThat(classes.limitsOf("Heron")).isEqualTo(ClassLimits.NONE);
        RaceClasses moved = classes.with("Plover", "new ");
        assertThat(moved.of("Plover").orElseThrow().name()).isEqualTo("New");
        assertThat(moved.classes().get(0).cars()).isEmpty();
        assertThat(moved.with("Plover", "").of("Plover")).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> classes.with("Plover", "none such"))
                .withMessage("there is no class none such; write it down under Classes first");
    }

    @Test
    void namesAndCarsAreThereOnce() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RaceClasses(List.of(called("Old"), called("OLD "))))
                .withMessage("two classes are called Old; give one another name");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RaceClasses(List.of(called("Old", "Plover"), called("New", "Plover"))))
                .withMessage("Plover is in class Old and in class New; a car is run in one");
    }

    @Test
    void saysWhatIsNotAllowedAndWhatCannotBeTold() {
        Build car = Build.of(SampleCar.setUp());
        assertThat(called("Old").remarks(car))
                .hasSize(3)
                .anyMatch(said -> said.matches(
                        "Not allowed in class Old: it weighs [\\d.]+ g; the class asks for at least 500 g\\."))
                .contains("Not allowed in class Old: it has a magnet; the class allows none.")
                .contains("Class Old allows as rear tyres only: soft, hard. Which are fitted was never noted.");
        Build worn = car.with(car.trim().withFitted(PartPlace.REAR_TYRES, "slick"));
        assertThat(called("Old").remarks(worn))
                .contains("Not allowed in class Old: fitted as rear tyres: slick; the class allows soft, hard.");
        assertThat(HEAVY.broken(car.with(car.trim().withFitted(PartPlace.REAR_TYRES, "Soft"))))
                .noneMatch(said -> said.contains("fitted"));
    }

    @Test
    void limitsThatNoCarKeepsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ClassLimits(
                        Map.of(ClassNumber.LEAST_MASS, 90.0, ClassNumber.MOST_MASS, 80.0), true, Map.of()))
                .withMessage("the least weight is 90 g and the greatest weight is 80 g; no car can keep both");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ClassLimits(Map.of(ClassNumber.MOST_TYRE, 2.0), true, Map.of()))
                .withMessageContaining("most_tyre_mm");
    }
}
