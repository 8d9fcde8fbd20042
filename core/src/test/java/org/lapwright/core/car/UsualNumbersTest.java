package org.lapwright.core.car;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

class UsualNumbersTest {
    private static final List<NumberKey> MEASURED = List.of(
            Chassis.GUIDE_TO_REAR_AXLE,
            Chassis.REAR_TRACK,
            WeighedCar.TOTAL,
            RearTyre.DIAMETER,
            Gears.PINION_TEETH,
            Gears.AXLE_TEETH,
            Motor.TEST_VOLTAGE,
            Motor.NO_LOAD_RPM,
            Motor.STALL_CURRENT);

    private static List<NumberKey> keys() {
        List<NumberKey> keys = new ArrayList<>();
        List.of(Chassis.KEYS, WeighedCar.KEYS, Guide.KEYS, RearTyre.KEYS, Gears.KEYS, Motor.KEYS, Drag.KEYS)
                .forEach(keys::addAll);
        keys.add(SetUp.PICKUP);
        keys.removeAll(MEASURED);
        return keys;
    }

    @ParameterizedTest
    @EnumSource(ModelScale.class)
    void whatIsNotMeasuredHasAUsualNumberInItsRangeWithADoubt(ModelScale scale) {
        for (UsualNumbers.Measured car : List.of(
                new UsualNumbers.Measured(5, 20, 10, 5, 0.5, 500),
                new UsualNumbers.Measured(78, 98, 50, 20, 12, 20_500),
                new UsualNumbers.Measured(2000, 300, 200, 80, 0.5, 200_000))) {
            UsualNumbers usual = UsualNumbers.of(scale, car);
            for (NumberKey key : keys()) {
                Reading reading = usual.find(key).orElseThrow();
                assertThat(reading.value()).as(key.path()).isBetween(key.min(), key.max());
                assertThat(reading.plusMinus()).as(key.path()).isPositive();
            }
        }
    }

    @Test
    void aTorqueThatStaysInTheCanDoesNotDependOnTheWinding() {
        // Twice the speed at the same volts: half the turns, twice the torque.
        assertThat(stall(10_000) * 2).isEqualTo(stall(20_000));
    }

    private static double stall(double rpm) {
        return UsualNumbers.of(ModelScale.ONE_43, new UsualNumbers.Measured(40, 70, 35, 14, 12, rpm))
                .find(Motor.STALL_TORQUE)
                .orElseThrow()
                .value();
    }

    @Test
    void instrumentsHaveTheirDoubt() {
        assertThat(InstrumentDoubt.of(WeighedCar.TOTAL, 78)).isEqualTo(0.5);
        assertThat(InstrumentDoubt.of(Chassis.WHEELBASE, 82)).isEqualTo(0.5);
        assertThat(InstrumentDoubt.of(Motor.NO_LOAD_RPM, 20_000)).isEqualTo(2000);
        assertThat(InstrumentDoubt.of(Gears.PINION_TEETH, 11)).isZero();
        assertThat(InstrumentDoubt.of(Motor.TEST_VOLTAGE, 12)).isZero();
        assertThat(InstrumentDoubt.of(Magnet.DOWNFORCE, 100)).isEqualTo(5);
        assertThat(InstrumentDoubt.of(WeighedCar.CG_LEFT, -3)).isEqualTo(0.5);
    }
}
