package org.lapwright.core.car.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.lapwright.core.car.change.SampleCar.exact;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.MassProperties;

/** What each kind does to the numbers, worked by hand. */
final class ChangeTest {
    private static final double EXACT = 1e-12;

    /** Moments about the rear axle: (80 · 40 + 5 · 20 + 5 · 90) / 90 = 41.667 mm. */
    @Test
    void addedBallastMovesTheCentreByItsMoment() {
        Change change = new BallastChange.Added(new Ballast("nose", exact(5), exact(90), exact(0), exact(3)));
        MassProperties after = change.apply(SampleCar.build()).setUp().massProperties();
        assertThat(after.totalG()).isEqualTo(90);
        assertThat(after.aheadMm()).isCloseTo((80 * 40 + 5 * 20 + 5 * 90) / 90.0, within(EXACT));
        assertThat(after.heightMm()).isCloseTo((80 * 14 + 5 * 4 + 5 * 3) / 90.0, within(EXACT));
    }

    @Test
    void twoPiecesOfOneNameAreToldApart() {
        Change change = new BallastChange.Added(new Ballast("pod", exact(5), exact(20), exact(-10), exact(4)));
        assertThat(change.apply(SampleCar.build()).setUp().ballast())
                .extracting(Ballast::name)
                .containsExactly("pod", "pod 2");
    }

    @Test
    void movedBallastKeepsItsMassAndItsPlaceInTheList() {
        Build two = new BallastChange.Added(new Ballast("nose", exact(3), exact(90), exact(0), exact(3)))
                .apply(SampleCar.build());
        Build after = new BallastChange.Moved("pod", exact(-5), exact(0), exact(8)).apply(two);
        assertThat(after.setUp().ballast()).extracting(Ballast::name).containsExactly("pod", "nose");
        assertThat(after.setUp().ballast().get(0).massG()).isEqualTo(exact(5));
        assertThat(after.setUp().ballast().get(0).xMm()).isEqualTo(exact(-5));
    }

    @Test
    void aPieceThatIsNotThereIsNamedWithThoseThatAre() {
        assertThatThrownBy(() -> new BallastChange.Removed("nose").apply(SampleCar.build()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'nose'")
                .hasMessageContaining("pod");
    }

    /**
     * The chassis turns about the rear axle: a shim t under a pivot 100 mm ahead lifts a front axle 80 mm ahead by
     * 80 sin(asin(t/100)) = 0.8 t, and the centre of gravity at 40 mm by 0.4 t.
     */
    @Test
    void aShimLiftsWhatSitsAheadOfTheAxleByItsShare() {
        Build gapped = new NoseChange.FrontGapMeasured(exact(-0.2)).apply(SampleCar.build());
        assertThat(gapped.setUp().chassis().frontWheels()).isEqualTo(FrontWheels.TOUCHING);
        Build after = new NoseChange.ShimAdded(0.5).apply(gapped);
        double front = 80 * Math.sin(Math.asin(0.5 / 100));
        assertThat(after.trim().frontGapMm().orElseThrow()).isCloseTo(-0.2 + front, within(EXACT));
        assertThat(after.setUp().mass().cgHeightMm().value()).isCloseTo(14 + 0.4 * 0.5, within(EXACT));
        assertThat(after.setUp().ballast().get(0).zMm().value()).isCloseTo(4 + 0.2 * 0.5, within(EXACT));
        assertThat(after.setUp().chassis().frontWheels()).isEqualTo(FrontWheels.CLEAR);
        assertThat(after.trim().shimStackMm()).isEqualTo(0.5);
    }

    @Test
    void aGapOfATenthStillTouches() {
        assertThat(new NoseChange.FrontGapMeasured(exact(0.1))
                        .apply(SampleCar.build())
                        .setUp()
                        .chassis()
                        .frontWheels())
                .isEqualTo(FrontWheels.TOUCHING);
    }

    @Test
    void onlyAShimThatIsThereComesOut() {
        Build shimmed = new NoseChange.ShimAdded(0.25).apply(SampleCar.build());
        assertThatThrownBy(() -> new NoseChange.ShimRemoved(0.5).apply(shimmed))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.25 mm");
        assertThat(new NoseChange.ShimRemoved(0.25).apply(shimmed).trim().shimsMm())
                .isEmpty();
    }

    /** Truing 20 to 19 mm drops the axle by 0.5 mm, the centre at 40 mm of 100 by 0.5 · 0.6, the front axle by 0.5 · 0.2. */
    @Test
    void truedTyresDropTheTail() {
        Build gapped = SampleCar.build().withFrontGap(OptionalDouble.of(0.05));
        Build after = new TyreChange.Trued(exact(19)).apply(gapped);
        assertThat(after.setUp().mass().cgHeightMm().value()).isCloseTo(14 - 0.5 * 0.6, within(EXACT));
        assertThat(after.trim().frontGapMm().orElseThrow()).isCloseTo(0.05 - 0.5 * 0.2, within(EXACT));
        assertThat(after.setUp().rearTyre().grip()).isEqualTo(exact(1.05));
    }

    @Test
    void truingCannotMakeATyreLarger() {
        assertThatThrownBy(() -> new TyreChange.Trued(exact(20.5)).apply(SampleCar.build()))
                .hasMessageContaining("20.5")
                .hasMessageContaining("20 mm");
    }

    /** Two scales, 32 and 48 g over 100 mm: 40 mm. The pivot goes to 105 mm, the weight stays at 40 mm. */
    @Test
    void aLongerLeadLeavesTheWeightWhereItIs() {
        Change change = new NoseChange.GuideFitted("long", exact(7), Optional.of(exact(105)), Optional.empty());
        Build after = change.apply(SampleCar.build());
        assertThat(after.setUp().mass().balance().aheadOfRearAxleMm(105)).isCloseTo(40, within(EXACT));
        assertThat(after.setUp().mass().massProperties(105).aheadMm()).isCloseTo(40, within(EXACT));
        assertThat(after.trim().fittedAt(PartPlace.GUIDE)).contains("long");
    }

    @Test
    void aMagnetTakenOutTakesItsWeightWithIt() {
        Build after = new MagnetChange.Removed(Optional.of(exact(3))).apply(SampleCar.build());
        assertThat(after.setUp().magnet()).isEmpty();
        assertThat(after.setUp().massProperties().totalG()).isEqualTo(82);
        assertThatThrownBy(() -> new MagnetChange.Removed(Optional.empty()).apply(after))
                .hasMessageContaining("no magnet");
    }

    @Test
    void aHeavierTyreIsAPointMassAtTheAxle() {
        Change change = new TyreChange.Fitted(
                "soft", new org.lapwright.core.car.RearTyre(exact(20), exact(1.2)), Optional.of(exact(2)));
        Build after = change.apply(SampleCar.build());
        assertThat(after.setUp().massProperties().totalG()).isEqualTo(87);
        assertThat(after.setUp().massProperties().aheadMm()).isCloseTo((80 * 40 + 5 * 20) / 87.0, within(EXACT));
    }

    @Test
    void whatASwappedPartWeighsMoreIsNoLooseBallast() {
        Build once = new MagnetChange.Removed(Optional.of(exact(3))).apply(SampleCar.build());
        Change heavier = new NoseChange.GuideFitted("", exact(7), Optional.empty(), Optional.of(exact(0.5)));
        Build twice = heavier.apply(heavier.apply(once));
        assertThat(twice.setUp().ballast()).hasSize(4);
        assertThat(twice.looseBallast()).extracting(Ballast::name).containsExactly("pod");
    }

    @Test
    void whatPhysicsDoesNotKnowIsSaidAndChangesNoNumber() {
        List<Change> unknown = List.of(
                new ChassisChange.BodyFloat(Optional.of(exact(1.5)), "rear edge"),
                new DriveChange.MotorBedded(Optional.of(exact(10)), Optional.of(exact(3)), ""),
                new OtherChange.Oiled("axle"),
                new OtherChange.Noted("new lamp"));
        for (Change change : unknown) {
            assertThat(change.unforeseen()).as(change.kind().code()).isPresent();
            assertThat(change.apply(SampleCar.build()).setUp()).isEqualTo(SampleCar.setUp());
        }
    }

    @Test
    void sentencesSayWhatWasDone() {
        Build car = SampleCar.build();
        assertThat(new BallastChange.Added(new Ballast("a", exact(5), exact(-3), exact(-12), exact(4))).sentence(car))
                .isEqualTo("5 g added 3 mm behind the axle, 12 mm right");
        assertThat(new TyreChange.Trued(exact(19.6)).sentence(car)).isEqualTo("tyres trued from 20 to 19.6 mm");
        assertThat(new DriveChange.GearsFitted(exact(10), exact(28)).sentence(car))
                .isEqualTo("gears 10/28 instead of 11/28");
    }
}
