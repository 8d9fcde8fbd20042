package org.lapwright.core.car;

import java.util.List;
import java.util.Optional;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/**
 * The car as weighed, without the entries of the ballast list.
 *
 * @param totalG what the whole car weighs
 * @param balance where it balances along its length
 * @param cgLeftMm centre of gravity left of the centre line
 * @param cgHeightMm centre of gravity above the track
 * @param yawInertiaGmm2 yaw inertia about the centre of gravity; absent when nobody measured it
 */
public record WeighedCar(
        Reading totalG, Balance balance, Reading cgLeftMm, Reading cgHeightMm, Optional<Reading> yawInertiaGmm2) {
    /** Total mass. */
    public static final NumberKey TOTAL = new NumberKey("mass", "total_g", 5, 2000);

    /** Centre of gravity ahead of the rear axle. */
    public static final NumberKey CG_AHEAD = new NumberKey("mass", "cg_ahead_of_rear_axle_mm", 0, 300);

    /** Centre of gravity left of the centre line. */
    public static final NumberKey CG_LEFT = new NumberKey("mass", "cg_left_mm", -100, 100);

    /** Centre of gravity above the track. */
    public static final NumberKey CG_HEIGHT = new NumberKey("mass", "cg_height_mm", 1, 150);

    /** Yaw inertia. */
    public static final NumberKey YAW_INERTIA = new NumberKey("mass", "yaw_inertia_g_mm2", 10, 1e8);

    /** Scale under the guide. */
    public static final NumberKey GUIDE_SCALE = new NumberKey("mass.scales", "guide_g", 0.1, 2000);

    /** Scale under the rear axle. */
    public static final NumberKey REAR_SCALE = new NumberKey("mass.scales", "rear_axle_g", 0.1, 2000);

    /** The keys of its numbers, in the order in which files list them. */
    public static final List<NumberKey> KEYS = List.of(TOTAL, CG_AHEAD, CG_LEFT, CG_HEIGHT, YAW_INERTIA);

    /** The keys of the two scales. */
    public static final List<NumberKey> SCALE_KEYS = List.of(GUIDE_SCALE, REAR_SCALE);

    /** How far two scales may miss the total before one of the three is wrong (common practice, no source). */
    private static final double SCALES_TOLERANCE = 0.05;

    /** Checks each number, and that two scales add up to the total. */
    public WeighedCar {
        TOTAL.check(totalG);
        CG_LEFT.check(cgLeftMm);
        CG_HEIGHT.check(cgHeightMm);
        yawInertiaGmm2.ifPresent(YAW_INERTIA::check);
        if (balance instanceof Balance.OnTwoScales scales) {
            double sum = scales.guideG().value() + scales.rearAxleG().value();
            if (Math.abs(sum - totalG.value()) > SCALES_TOLERANCE * totalG.value()) {
                throw new IllegalArgumentException(
                        "mass.scales add up to %.4g g but mass.total_g is %.4g g; weigh all three again, they must agree within %.0f %%"
                                .formatted(sum, totalG.value(), 100 * SCALES_TOLERANCE));
            }
        }
    }

    /** From the numbers of a file or form; {@code scales} is empty when there are none. */
    public static WeighedCar of(Readings numbers, Optional<Readings> scales) {
        if (scales.isPresent() && numbers.find(CG_AHEAD).isPresent()) {
            throw new IllegalArgumentException(
                    "mass has both scales and " + CG_AHEAD.name() + "; keep the one that you trust");
        }
        Balance balance = scales.<Balance>map(
                        weights -> new Balance.OnTwoScales(weights.require(GUIDE_SCALE), weights.require(REAR_SCALE)))
                .orElseGet(() -> new Balance.AsLength(numbers.require(CG_AHEAD)));
        return new WeighedCar(
                numbers.require(TOTAL),
                balance,
                numbers.orZero(CG_LEFT),
                numbers.require(CG_HEIGHT),
                numbers.find(YAW_INERTIA));
    }

    /** Its numbers by key, without those of the two scales. */
    public Readings readings() {
        Optional<Reading> length =
                balance instanceof Balance.AsLength known ? Optional.of(known.aheadOfRearAxleMm()) : Optional.empty();
        return Readings.none()
                .with(TOTAL, totalG)
                .with(CG_AHEAD, length)
                .with(CG_LEFT, cgLeftMm)
                .with(CG_HEIGHT, cgHeightMm)
                .with(YAW_INERTIA, yawInertiaGmm2);
    }

    /** The numbers of the two scales, if it was weighed so. */
    public Optional<Readings> scales() {
        return balance instanceof Balance.OnTwoScales scales
                ? Optional.of(Readings.none().with(GUIDE_SCALE, scales.guideG()).with(REAR_SCALE, scales.rearAxleG()))
                : Optional.empty();
    }

    /**
     * Mass, centre and inertia of the weighed car. Without a measured yaw inertia it is taken as m L²/12.
     *
     * @param guideToRearAxleMm guide pivot to rear axle, mm
     */
    public MassProperties massProperties(double guideToRearAxleMm) {
        double inertia =
                yawInertiaGmm2.map(Reading::value).orElse(totalG.value() * guideToRearAxleMm * guideToRearAxleMm / 12);
        return new MassProperties(
                totalG.value(),
                balance.aheadOfRearAxleMm(guideToRearAxleMm),
                cgLeftMm.value(),
                cgHeightMm.value(),
                inertia);
    }
}
