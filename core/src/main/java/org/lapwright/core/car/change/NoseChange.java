package org.lapwright.core.car.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.car.Balance;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.Guide;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.units.Reading;

/** What is done at the nose: guide, shims under it, braids. */
public sealed interface NoseChange extends Change {
    /**
     * Another guide.
     *
     * @param name what the racer calls it; may be empty
     * @param bladeDepthMm depth of its blade
     * @param guideToRearAxleMm pivot to rear axle, where the new guide moves it
     * @param heavierG how much more it weighs than the old one
     */
    record GuideFitted(
            String name, Reading bladeDepthMm, Optional<Reading> guideToRearAxleMm, Optional<Reading> heavierG)
            implements NoseChange {
        static GuideFitted of(Values values) {
            return new GuideFitted(
                    values.text(ChangeKeys.NAME),
                    values.require(Guide.BLADE_DEPTH),
                    values.find(Chassis.GUIDE_TO_REAR_AXLE),
                    values.find(ChangeKeys.HEAVIER));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.GUIDE_FITTED;
        }

        @Override
        public Values values() {
            return Values.NONE
                    .with(ChangeKeys.NAME, name)
                    .with(Guide.BLADE_DEPTH, bladeDepthMm)
                    .with(Chassis.GUIDE_TO_REAR_AXLE, guideToRearAxleMm)
                    .with(ChangeKeys.HEAVIER, heavierG);
        }

        @Override
        public Build apply(Build before) {
            SetUp was = before.setUp();
            Guide guide = was.guide();
            SetUp longer =
                    guideToRearAxleMm.map(length -> lengthened(was, length)).orElse(was);
            Build fitted = before.with(longer.withGuide(
                            new Guide(bladeDepthMm, guide.slotFriction(), guide.braidDragG(), guide.minGuideLoadG())))
                    .with(before.trim().withFitted(PartPlace.GUIDE, name));
            double nose = longer.chassis().guideToRearAxleMm().value();
            return PartMass.added(fitted, PartMass.GUIDE, heavierG, nose, 5);
        }

        @Override
        public String sentence(Build before) {
            String pivot = guideToRearAxleMm
                    .map(length -> ", pivot %s mm from the rear axle".formatted(Say.number(length)))
                    .orElse("");
            return "guide%s fitted, blade %s mm deep%s".formatted(Say.named(name), Say.number(bladeDepthMm), pivot);
        }
    }

    /**
     * A shim put under the guide: the nose rises by it.
     *
     * @param shimMm its thickness
     */
    record ShimAdded(double shimMm) implements NoseChange {
        static ShimAdded of(Values values) {
            return new ShimAdded(values.require(Trim.SHIM).value());
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.SHIM_ADDED;
        }

        @Override
        public Values values() {
            return Values.NONE.with(Trim.SHIM, Reading.exact(shimMm));
        }

        @Override
        public Build apply(Build before) {
            List<Double> stack = new ArrayList<>(before.trim().shimsMm());
            stack.add(shimMm);
            return before.raised(shimMm, 0).withShims(stack);
        }

        @Override
        public String sentence(Build before) {
            return "shim of %s mm under the guide".formatted(Say.number(shimMm));
        }
    }

    /**
     * A shim taken from under the guide: the nose sinks by it.
     *
     * @param shimMm its thickness
     */
    record ShimRemoved(double shimMm) implements NoseChange {
        static ShimRemoved of(Values values) {
            return new ShimRemoved(values.require(Trim.SHIM).value());
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.SHIM_REMOVED;
        }

        @Override
        public Values values() {
            return Values.NONE.with(Trim.SHIM, Reading.exact(shimMm));
        }

        @Override
        public Build apply(Build before) {
            List<Double> stack = new ArrayList<>(before.trim().shimsMm());
            if (!stack.remove((Double) shimMm)) {
                throw new IllegalArgumentException(
                        "shim_mm is %s mm, and no such shim is noted under the guide; noted are %s"
                                .formatted(
                                        Say.number(shimMm),
                                        stack.isEmpty()
                                                ? "none"
                                                : String.join(
                                                        ", ",
                                                        stack.stream()
                                                                .map(mm -> Say.number(mm) + " mm")
                                                                .toList())));
            }
            return before.raised(-shimMm, 0).withShims(stack);
        }

        @Override
        public String sentence(Build before) {
            return "shim of %s mm taken from under the guide".formatted(Say.number(shimMm));
        }
    }

    /**
     * The gap under the front tyres measured, car level, guide seated.
     *
     * @param gapMm lowest point of the tyres above the track
     */
    record FrontGapMeasured(Reading gapMm) implements NoseChange {
        static FrontGapMeasured of(Values values) {
            return new FrontGapMeasured(values.require(Trim.FRONT_GAP));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.FRONT_GAP;
        }

        @Override
        public Values values() {
            return Values.NONE.with(Trim.FRONT_GAP, gapMm);
        }

        @Override
        public Build apply(Build before) {
            return before.withFrontGap(java.util.OptionalDouble.of(gapMm.value()));
        }

        @Override
        public String sentence(Build before) {
            return "front wheels measured %s mm above the track".formatted(Say.number(gapMm));
        }
    }

    /**
     * Other braids.
     *
     * @param name what the racer calls them; may be empty
     * @param braidDragG their drag along the rails, where measured
     * @param pickupOhm resistance of braids and leads, where measured
     */
    record BraidFitted(String name, Optional<Reading> braidDragG, Optional<Reading> pickupOhm) implements NoseChange {
        static BraidFitted of(Values values) {
            return new BraidFitted(
                    values.text(ChangeKeys.NAME), values.find(Guide.BRAID_DRAG), values.find(SetUp.PICKUP));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.BRAID_FITTED;
        }

        @Override
        public Values values() {
            return Values.NONE
                    .with(ChangeKeys.NAME, name)
                    .with(Guide.BRAID_DRAG, braidDragG)
                    .with(SetUp.PICKUP, pickupOhm);
        }

        @Override
        public Build apply(Build before) {
            Guide guide = before.setUp().guide();
            Guide other = new Guide(
                    guide.bladeDepthMm(),
                    guide.slotFriction(),
                    braidDragG.orElse(guide.braidDragG()),
                    guide.minGuideLoadG());
            SetUp setUp = before.setUp()
                    .withGuide(other)
                    .withPickupOhm(pickupOhm.orElse(before.setUp().pickupOhm()));
            return new Build(setUp, before.trim().withFitted(PartPlace.BRAID, name));
        }

        @Override
        public String sentence(Build before) {
            return "braids%s fitted".formatted(Say.named(name));
        }
    }

    /** The pivot goes elsewhere and the weight stays: a balance by two scales would move with the pivot, so it becomes a length. */
    private static SetUp lengthened(SetUp setUp, Reading length) {
        Chassis was = setUp.chassis();
        Chassis chassis =
                new Chassis(length, was.wheelbaseMm(), was.rearTrackMm(), was.frontTrackMm(), was.frontWheels());
        WeighedCar mass = setUp.mass();
        if (!(mass.balance() instanceof Balance.OnTwoScales scales)) {
            return setUp.withChassis(chassis);
        }
        double at = was.guideToRearAxleMm().value();
        double sum = scales.guideG().value() + scales.rearAxleG().value();
        double doubt = at
                * Math.hypot(
                        scales.rearAxleG().value() * scales.guideG().plusMinus(),
                        scales.guideG().value() * scales.rearAxleG().plusMinus())
                / (sum * sum);
        WeighedCar kept = new WeighedCar(
                mass.totalG(),
                new Balance.AsLength(new Reading(mass.balance().aheadOfRearAxleMm(at), doubt)),
                mass.cgLeftMm(),
                mass.cgHeightMm(),
                mass.yawInertiaGmm2());
        return new SetUp(
                setUp.name(),
                chassis,
                kept,
                setUp.ballast(),
                setUp.guide(),
                setUp.rearTyre(),
                setUp.gears(),
                setUp.motor(),
                setUp.magnet(),
                setUp.drag(),
                setUp.pickupOhm());
    }
}
