package org.lapwright.core.car.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lapwright.core.car.MotorStrength;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.SampleCar;
import org.lapwright.core.units.Reading;

/** Each measurement lands in the car's numbers by its formula; moments and trigonometry are worked by hand. */
final class GuidedMeasurementTest {
    private static final SetUp CAR = SampleCar.setUp();

    private static Map<String, Reading> read(Object... codesAndValues) {
        Map<String, Reading> read = new HashMap<>();
        for (int i = 0; i < codesAndValues.length; i += 2) {
            read.put((String) codesAndValues[i], new Reading(((Number) codesAndValues[i + 1]).doubleValue(), 0.3));
        }
        return read;
    }

    /** 100 mm between the scales, 30 g and 50 g: 80 g balance 37.5 mm ahead of the rear axle. */
    @Test
    void twoScales() {
        SetUp car = GuidedMeasurement.TWO_SCALES.into(CAR.withBallast(List.of()), read("guide", 30, "rear", 50));
        assertThat(car.massProperties().totalG()).isCloseTo(80, within(1e-12));
        assertThat(car.massProperties().aheadMm()).isCloseTo(37.5, within(1e-12));
        assertThat(car.mass().totalG().plusMinus()).isCloseTo(0.3 * Math.sqrt(2), within(1e-6));
    }

    /** 26 g on the left and 22 g on the right wheel, 50 mm apart, 80 g in all: 25 × 4 / 80 = 1.25 mm to the left. */
    @Test
    void sideScales() {
        SetUp car = GuidedMeasurement.SIDE_SCALES.into(CAR, read("left", 26, "right", 22));
        assertThat(car.mass().cgLeftMm().value()).isCloseTo(1.25, within(1e-12));
    }

    /** A car that tips at 45° has its weight as high as the tipping line is far; and it tips there again. */
    @Test
    void tiltTest() {
        SetUp car = GuidedMeasurement.TILT_TEST.into(CAR, read("angle", 45));
        assertThat(car.mass().cgHeightMm().value()).isCloseTo(CAR.tippingEdgeMm(), within(1e-9));
    }

    /** tan 50° = 1.19175; its slope is 1 + tan², 0.3° are 0.0052 rad. */
    @Test
    void tiltBoard() {
        SetUp car = GuidedMeasurement.TILT_BOARD.into(CAR, read("angle", 50));
        assertThat(car.rearTyre().grip().value()).isCloseTo(1.19175, within(1e-5));
        assertThat(car.rearTyre().grip().plusMinus())
                .isCloseTo(Math.toRadians(0.3) * (1 + 1.19175 * 1.19175), within(1e-5));
    }

    /** Ten turns over 628.3 mm: 20 mm across. */
    @Test
    void rollOut() {
        SetUp car = GuidedMeasurement.ROLL_OUT.into(CAR, read("distance", 200 * Math.PI, "turns", 10));
        assertThat(car.rearTyre().diameterMm().value()).isCloseTo(20, within(1e-9));
    }

    @Test
    void motorAndRotor() {
        SetUp car = GuidedMeasurement.MOTOR.into(CAR, read("volts", 12, "free", 0.12, "held", 2.4, "speed", 20_000));
        assertThat(car.motor().strength()).isInstanceOf(MotorStrength.StallCurrent.class);
        assertThat(car.motor().noLoadRpm().value()).isEqualTo(20_000);
        assertThat(car.motor().testVoltageV().isUncertain()).isFalse();
        assertThatThrownBy(() -> GuidedMeasurement.MOTOR.into(
                        CAR, read("volts", 12, "free", 2.4, "held", 0.12, "speed", 20_000)))
                .hasMessageContaining("must be above motor.no_load_current_a");
        // 0.9 × 14 g × (12 mm)² / 8 = 226.8 g mm².
        SetUp spun = GuidedMeasurement.ROTOR.into(CAR, read("mass", 14, "diameter", 12));
        assertThat(spun.motor().rotorInertiaGmm2().value()).isCloseTo(226.8, within(1e-9));
    }

    /** The sample weighs 85 g with its ballast: at 150 g on the thread the magnet holds 65 g. */
    @Test
    void magnet() {
        SetUp car = GuidedMeasurement.MAGNET.into(CAR, read("lift", 150));
        assertThat(car.magnet().orElseThrow().downforceG().value()).isCloseTo(65, within(1e-9));
        assertThatThrownBy(() -> GuidedMeasurement.MAGNET.into(CAR, read("lift", 80)))
                .hasMessageContaining("nothing is left for the magnet");
        assertThat(GuidedMeasurement.MAGNET
                        .into(CAR.withMagnet(Optional.empty()), read("lift", 150))
                        .magnet())
                .isPresent();
    }

    @ParameterizedTest
    @EnumSource(GuidedMeasurement.class)
    void whatWasNotReadIsNamed(GuidedMeasurement measurement) {
        assertThatThrownBy(() -> measurement.into(CAR, Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("was not read");
        assertThat(GuidedMeasurement.find(measurement.code())).contains(measurement);
    }

    /** Guide 100 mm and front axle 80 mm ahead of the rear: a shim lifts the front wheels by 0.8 of itself. */
    @Test
    void shimsUntilTheFrontWheelsJustTouch() {
        Build car = SampleCar.build();
        Build pressed = car.with(car.trim().withFrontGap(OptionalDouble.of(-0.4)));
        ShimStack stack = ShimStack.of(pressed, List.of(0.1, 0.25, 0.5)).orElseThrow();
        assertThat(stack.shimsMm()).containsExactly(0.5);
        assertThat(stack.gapMm()).isCloseTo(0, within(1e-9));
        ShimStack fine = ShimStack.of(pressed, List.of(0.1, 0.25)).orElseThrow();
        assertThat(fine.shimsMm()).containsExactly(0.25, 0.25);
        assertThat(ShimStack.of(car, List.of(0.1))).isEmpty();
        Build right = car.with(car.trim().withFrontGap(OptionalDouble.of(0)));
        assertThat(ShimStack.of(right, List.of(0.1)).orElseThrow().shimsMm()).isEmpty();
    }
}
