package org.lapwright.core.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.MotorStrength;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.units.Reading;

final class CarFitTest {
    private static final CarFit.Settings FEW = new CarFit.Settings(4, 2000, 400, 0.9, 3);

    private static Learned learn(CarLaps laps, List<CarLaps> others) {
        return CarFit.learn(laps, others, CarFit.USUAL_DRIVER, FEW);
    }

    private static Learned.Parameter number(Learned learned, String name) {
        return learned.numbers().stream()
                .filter(number -> number.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static SimulatedOwner owner(long seed) {
        return SimulatedOwner.draw(List.of(SimulatedOwner.car()), 2, 20, new SplittableRandom(seed));
    }

    @Test
    void withoutLapsTheBeliefStays() {
        SetUp car = SimulatedOwner.car();
        Learned learned = learn(new CarLaps(car, SimulatedOwner.TRACK, List.of()), List.of());
        for (Learned.Parameter number : learned.numbers()) {
            double width = number.before().plusMinus();
            assertThat(number.after().value()).isCloseTo(number.before().value(), within(0.2 * width));
            assertThat(number.after().plusMinus()).isCloseTo(width, Percentage.withPercentage(12));
            assertThat(number.laplace().plusMinus()).isCloseTo(width, Percentage.withPercentage(2));
        }
        assertThat(learned.diagnosis().exactShare()).isCloseTo(1, within(1e-12));
        assertThat(learned.lanes()).allMatch(lane -> lane.measuredS().isEmpty());
    }

    @Test
    void theSameSeedLearnsTheSame() {
        CarLaps laps = owner(1).laps;
        Learned first = learn(laps, List.of());
        Learned second = learn(laps, List.of());
        assertThat(second.numbers()).isEqualTo(first.numbers());
        assertThat(second.lap()).isEqualTo(first.lap());
    }

    /** One pace cannot tell whether the tyres grip less or the hand holds back; a tilt board can. */
    @Test
    void gripAndDriverTradeOffAndATiltTestWouldTell() {
        Learned learned = learn(owner(4).laps, List.of());
        assertThat(learned.tradeOffs()).isNotEmpty();
        assertThat(List.of(
                        learned.tradeOffs().get(0).first(),
                        learned.tradeOffs().get(0).second()))
                .containsExactly(Learned.DRIVER, "grip");
        assertThat(learned.tradeOffs().get(0).correlation()).isLessThan(-0.8);
        assertThat(learned.measurements().get(0).name()).isEqualTo("grip");
        assertThat(learned.measurements().get(0).lessBy()).isGreaterThan(0.2);
    }

    /** What a measurement is said to leave is what it leaves when it is made. */
    @Test
    void aMeasurementNarrowsByWhatWasSaid() {
        SimulatedOwner owner = owner(4);
        Learned before = learn(owner.laps, List.of());
        Learned.Measurement said = before.measurements().get(0);
        SetUp measured = owner.believed.withRearTyre(new RearTyre(
                owner.believed.rearTyre().diameterMm(),
                new Reading(number(before, "grip").after().value(), 0.03 * 1.05)));
        List<HeldPace> paces = owner.laps.paces().stream()
                .map(pace -> new HeldPace(measured, pace.lanes(), pace.paceS(), pace.deviation(), pace.laps()))
                .toList();
        Learned after = learn(new CarLaps(measured, owner.laps.track(), paces), List.of());
        double width = (after.lap().intervalS().high() - after.lap().intervalS().low()) / (2 * 1.645);
        assertThat(width).isCloseTo(said.lapPlusMinusS(), Percentage.withPercentage(35));
    }

    /** Two set-ups of one car see its motor from two sides: gears change how much of the lap it limits. */
    @Test
    void anotherGearTellsOfTheMotor() {
        SetUp car = SimulatedOwner.car();
        SetUp shorter = car.withGears(
                new Gears(Reading.exact(17), Reading.exact(20), car.gears().efficiency()));
        SimulatedOwner one = SimulatedOwner.draw(List.of(car), 4, 30, new SplittableRandom(8));
        SimulatedOwner two = SimulatedOwner.draw(List.of(shorter, car), 2, 30, new SplittableRandom(8));
        double alone = number(learn(one.laps, List.of()), "stall_torque_gcm").learned();
        double both = number(learn(two.laps, List.of()), "stall_torque_gcm").learned();
        assertThat(both).isGreaterThan(alone + 0.1);
    }

    /** The hand is the same on every car: what the others tell of it narrows this one. */
    @Test
    void otherCarsTellOfTheDriver() {
        List<CarLaps> others = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            // Cars whose grip was measured well tell most of the driver.
            SetUp car = SimulatedOwner.car().withRearTyre(new RearTyre(Reading.exact(20), new Reading(1.05, 0.01)));
            others.add(SimulatedOwner.draw(List.of(car), 2, 20, new SplittableRandom(20 + i)).laps);
        }
        CarLaps laps = owner(4).laps;
        Learned alone = learn(laps, List.of());
        Learned pooled = learn(laps, others);
        assertThat(number(pooled, Learned.DRIVER).after().plusMinus())
                .isLessThan(0.8 * number(alone, Learned.DRIVER).after().plusMinus());
    }

    @Test
    void laplaceAndDrawsAgreeWhereTheDensityIsNearlyNormal() {
        Learned learned = learn(owner(9).laps, List.of());
        for (Learned.Parameter number : learned.numbers()) {
            assertThat(number.after().value())
                    .as(number.name())
                    .isCloseTo(
                            number.laplace().value(),
                            within(0.5 * number.after().plusMinus()));
        }
    }

    @Test
    void aCarThatCannotGetRoundIsToldSo() {
        Motor motor = SimulatedOwner.car().motor();
        SetUp weak = SimulatedOwner.car()
                .withMotor(new Motor(
                        motor.testVoltageV(),
                        motor.noLoadRpm(),
                        motor.noLoadCurrentA(),
                        new MotorStrength.StallTorque(new Reading(0.1, 0.001)),
                        motor.rotorInertiaGmm2()));
        HeldPace pace = new HeldPace(weak, SimulatedOwner.TRACK.lanes(), 3, 0.01, 20);
        assertThatThrownBy(() -> learn(new CarLaps(weak, SimulatedOwner.TRACK, List.of(pace)), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("get round");
    }

    /** A run of mean m of n laps: σ² (1 + φ)/((1 − φ) n) + σ² γ, over the efficiency of the Hodges–Lehmann estimate. */
    @Test
    void paceOfARun() {
        double[] laps = new double[40];
        SplittableRandom chance = new SplittableRandom(1);
        for (int i = 0; i < laps.length; i++) {
            laps[i] = 5 * Math.exp(0.02 * chance.nextGaussian());
        }
        laps[20] = 13;
        HeldPace pace = HeldPace.of(
                        List.of(new HeldPace.Driven(
                                SimulatedOwner.car(), SimulatedOwner.TRACK.lanes(), TimedRun.of(laps))),
                        NoisePrior.DEFAULT)
                .get(0);
        assertThat(pace.laps()).isEqualTo(39);
        assertThat(pace.paceS()).isCloseTo(5, within(0.05));
        double expected = 0.02 * Math.sqrt((1.25 / 0.75 / 39 + 0.1) * Math.PI / 3);
        assertThat(pace.deviation()).isCloseTo(expected, Percentage.withPercentage(20));
    }

    @Test
    void aRunWithoutACleanLapTellsNothing() {
        assertThat(HeldPace.of(
                        List.of(new HeldPace.Driven(SimulatedOwner.car(), SimulatedOwner.TRACK.lanes(), TimedRun.of())),
                        NoisePrior.DEFAULT))
                .isEmpty();
    }
}
