package org.lapwright.core.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.LapFiles;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Surface;
import org.lapwright.core.units.Reading;

/** What a set-up works out to, against formulas done by hand. */
class SetUpNumbersTest {
    private static final Surface RAILS = new Surface(1, true);
    private static final Offset<Double> EXACT = within(1e-9);

    /** Moments about the rear axle, in gram-force: guide = (m x_c + F x_M)/L, the rest on the tyres. */
    @Test
    void loadsAtRestFollowFromMoments() {
        SetUp car = magnetCar(40, 100, 60, 15);
        SetUpNumbers.Standing onRails = SetUpNumbers.of(car, RAILS, 12).standing();
        assertThat(onRails.guideLoadG()).isCloseTo((78 * 40.0 + 60 * 15) / 100, EXACT);
        assertThat(onRails.rearLoadG()).isCloseTo(78 + 60 - onRails.guideLoadG(), EXACT);
        SetUpNumbers.Standing onBench = SetUpNumbers.onBench(car).standing();
        assertThat(onBench.guideLoadG()).isCloseTo(78 * 0.4, EXACT);
        assertThat(onBench.totalG()).isCloseTo(78, EXACT);
    }

    /** 28/11 teeth, 20 mm tyres, and a motor that turns 20 500 rpm at its test voltage of 12 V. */
    @Test
    void gearingFollowsFromTeethAndTyre() {
        SetUp car = bare("plain")
                .with("gears.pinion_teeth", Reading.exact(11))
                .with("gears.axle_teeth", Reading.exact(28))
                .with("rear_tyre.diameter_mm", Reading.exact(20))
                .with("motor.test_voltage_v", Reading.exact(12))
                .with("motor.no_load_rpm", Reading.exact(20500));
        SetUpNumbers.Gearing gearing = SetUpNumbers.onBench(car).gearing();
        assertThat(gearing.ratio()).isCloseTo(28.0 / 11, EXACT);
        assertThat(gearing.mmPerMotorTurn()).isCloseTo(Math.PI * 20 * 11 / 28, EXACT);
        assertThat(gearing.freeSpeedMps()).isCloseTo(20500 / 60.0 * gearing.mmPerMotorTurn() / 1000, EXACT);
    }

    /** Too little voltage to overcome the no-load torque: it stands, and does not run backwards. */
    @Test
    void aMotorThatDoesNotTurnHasNoFreeSpeed() {
        SetUp car = bare("plain")
                .with("motor.no_load_current_a", Reading.exact(15))
                .with("motor.stall_torque_gcm", Reading.exact(20));
        assertThat(SetUpNumbers.of(car, RAILS, 0.5).gearing().freeSpeedMps()).isZero();
    }

    /** Without drag and magnet a_y/g = μ c l / (l c + μ κ x_c h): the load that moves forward costs a little grip. */
    @Test
    void slideWithoutDragHasASimpleForm() {
        SetUp car = bare("plain").with("mass.cg_ahead_of_rear_axle_mm", Reading.exact(36));
        double grip = car.rearTyre().grip().value();
        double length = car.chassis().guideToRearAxleMm().value();
        double behind = length - 36;
        double height = car.massProperties().heightMm();
        double cos = Math.sqrt(1 - length * length / 9e4);
        double expected = grip * cos * behind / (behind * cos + grip * 36 * height / 300);
        SetUpNumbers.Holding holding = SetUpNumbers.onBench(car).holding();
        assertThat(holding.slideG().orElseThrow()).isCloseTo(expected, EXACT);
        assertThat(holding.slideOfGuideG().orElseThrow()).isCloseTo(expected / cos, EXACT);
    }

    /** L → 0: a point mass slides at μ (1 + F_M/(m g)) when the magnet pulls at the centre of gravity. */
    @Test
    void aShortCarSlidesLikeAPointMass() {
        double length = 1e-9;
        ResolvedCar.Body body = new ResolvedCar.Body(0.08, length, 0.4 * length, length, 0, 0.05, 0.02, 1);
        double pull = 0.3;
        ResolvedCar.Contact contact = new ResolvedCar.Contact(1.1, 0, 0, 0, pull, 0.4 * length, 0, 0);
        double expected = 1.1 * (1 + pull / (0.08 * 9.80665));
        SteadyCircle.Slide slide = SteadyCircle.slide(body, contact, 0.3).orElseThrow();
        assertThat(slide.acrossG()).isCloseTo(expected, within(1e-8));
        assertThat(slide.speedMps()).isCloseTo(Math.sqrt(expected * 9.80665 * 0.3), within(1e-8));
    }

    @Test
    void theTipIsTheEdgeOverTheHeightAndTheMagnetHolds() {
        SetUp car = magnetCar(40, 100, 60, 15);
        SetUpNumbers.Holding holding = SetUpNumbers.of(car, RAILS, 12).holding();
        double height = car.massProperties().heightMm();
        assertThat(holding.tipWithoutMagnetG()).isCloseTo(car.tippingEdgeMm() / height, EXACT);
        // Equal tracks: the lines run parallel to the car, so the magnet's edge is half the track wherever it sits.
        double half = car.chassis().rearTrackMm().value() / 2;
        assertThat(holding.tipG()).isCloseTo(half / height * (1 + 60.0 / 78), EXACT);
        assertThat(SetUpNumbers.onBench(car).holding().tipG()).isEqualTo(holding.tipWithoutMagnetG());
    }

    @Test
    void aTallCarTipsAndALowOneSlides() {
        SetUp low = bare("plain").with("mass.cg_height_mm", Reading.exact(8));
        SetUp tall = bare("plain").with("mass.cg_height_mm", Reading.exact(60));
        assertThat(SetUpNumbers.onBench(low).holding().yieldsFirst()).contains(Yield.SLIDE);
        assertThat(SetUpNumbers.onBench(tall).holding().yieldsFirst()).contains(Yield.TIP);
        assertThat(Yield.SLIDE.word()).isEqualTo("slide");
        assertThat(Yield.TIP.word()).isEqualTo("tip");
    }

    /** A low magnet car on rails corners beyond its bare tipping threshold because the magnet holds it down too. */
    @Test
    void theMagnetMayDecideWhatComesFirst() {
        SetUp car = magnetCar(40, 100, 60, 15)
                .with("mass.cg_height_mm", Reading.exact(20))
                .with("rear_tyre.grip", Reading.exact(0.8));
        SetUpNumbers.Holding holding = SetUpNumbers.of(car, RAILS, 12).holding();
        assertThat(holding.slideG().orElseThrow()).isBetween(holding.tipWithoutMagnetG(), holding.tipG());
        assertThat(holding.yieldsFirst()).contains(Yield.SLIDE);
    }

    @Test
    void aCarThatStandsAcrossTheSlotHasNoSlide() {
        SetUp car = bare("plain").with("chassis.guide_to_rear_axle_mm", Reading.exact(291));
        SetUpNumbers.Holding holding = SetUpNumbers.onBench(car).holding();
        assertThat(holding.slideG()).isEmpty();
        assertThat(holding.slideSpeedMps()).isEmpty();
        assertThat(holding.slideOfGuideG()).isEmpty();
        assertThat(holding.yieldsFirst()).isEmpty();
        assertThat(holding.tipG()).isPositive();
    }

    /** Braids that drag harder than the tyres grip, and a magnet that lifts the tail: the rear lets go at once. */
    @Test
    void whatCannotEvenStartSlidesAtOnce() {
        SetUp dragged = bare("plain").with("guide.braid_drag_g", Reading.exact(100));
        assertThat(SetUpNumbers.onBench(dragged).holding().slideG()).hasValue(0);
        SetUp lifted = magnetCar(40, 100, 200, 300);
        SetUpNumbers numbers = SetUpNumbers.of(lifted, RAILS, 12);
        assertThat(numbers.standing().rearLoadG()).isNegative();
        assertThat(numbers.holding().slideG()).hasValue(0);
        assertThat(numbers.holding().yieldsFirst()).contains(Yield.SLIDE);
    }

    @Test
    void aVoltageThatNoSupplyGivesIsRefused() {
        assertThatThrownBy(() -> SetUpNumbers.of(bare("plain"), RAILS, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("voltage for the free speed is NaN V; it must be from 0.5 to 60 V");
    }

    /** Ballast counts: 2 g at the very place of the guide load it entirely. */
    @Test
    void ballastCounts() {
        SetUp car = bare("plain");
        double length = car.chassis().guideToRearAxleMm().value();
        SetUp loaded = car.withBallast(List.of(
                new Ballast("nose", Reading.exact(2), Reading.exact(length), Reading.exact(0), Reading.exact(3))));
        SetUpNumbers.Standing before = SetUpNumbers.onBench(car).standing();
        SetUpNumbers.Standing after = SetUpNumbers.onBench(loaded).standing();
        assertThat(after.guideLoadG()).isCloseTo(before.guideLoadG() + 2, EXACT);
        assertThat(after.rearLoadG()).isCloseTo(before.rearLoadG(), EXACT);
    }

    /** A reference car without ballast, magnet, drag. */
    private static SetUp bare(String name) {
        return LapFiles.car(name)
                .withBallast(List.of())
                .withMagnet(Optional.empty())
                .with("guide.slot_friction", Reading.exact(0))
                .with("guide.braid_drag_g", Reading.exact(0))
                .with("drag.drag_area_cm2", Reading.exact(0));
    }

    private static SetUp magnetCar(double aheadMm, double lengthMm, double pullG, double xMm) {
        return LapFiles.car("magnet")
                .withBallast(List.of())
                .with("chassis.guide_to_rear_axle_mm", Reading.exact(lengthMm))
                .with("chassis.front_track_mm", Reading.exact(50))
                .with("chassis.rear_track_mm", Reading.exact(50))
                .with("mass.total_g", Reading.exact(78))
                .with("mass.cg_ahead_of_rear_axle_mm", Reading.exact(aheadMm))
                .with("magnet.downforce_g", Reading.exact(pullG))
                .with("magnet.x_mm", Reading.exact(xMm));
    }
}
