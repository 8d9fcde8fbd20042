package org.lapwright.app.usecase.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.Drag;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Guide;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.ModelScale;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.UsualNumbers;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.units.NumberKey;

class NumberWordsTest {
    static Stream<NumberKey> keys() {
        return Stream.of(
                        Chassis.KEYS,
                        WeighedCar.KEYS,
                        WeighedCar.SCALE_KEYS,
                        Guide.KEYS,
                        RearTyre.KEYS,
                        Gears.KEYS,
                        Motor.KEYS,
                        Magnet.KEYS,
                        Drag.KEYS,
                        Ballast.KEYS,
                        List.of(SetUp.PICKUP))
                .flatMap(List::stream);
    }

    @ParameterizedTest
    @MethodSource("keys")
    void everyNumberHasWordsAndAWayToMeasureIt(NumberKey key) {
        NumberWords words = NumberWords.of(key);
        assertThat(words.label()).isNotBlank().doesNotContain("_");
        assertThat(words.measure()).endsWith(".");
    }

    /** Exactly the numbers that a usual value stands in for say where it comes from. */
    @ParameterizedTest
    @MethodSource("keys")
    void whatHasAUsualValueSaysWhereItComesFrom(NumberKey key) {
        boolean usual = UsualNumbers.of(ModelScale.ONE_32, new UsualNumbers.Measured(78, 98, 50, 20, 12, 20_500))
                .find(key)
                .isPresent();
        assertThat(!NumberWords.of(key).usual().isEmpty()).isEqualTo(usual);
    }
}
