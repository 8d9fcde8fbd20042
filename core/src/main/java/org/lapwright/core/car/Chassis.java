package org.lapwright.core.car;

import java.util.List;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/**
 * The lengths of the chassis.
 *
 * @param guideToRearAxleMm from the guide's pivot back to the rear axle
 * @param wheelbaseMm from the front axle back to the rear axle
 * @param rearTrackMm between the centres of the rear tyres' contacts
 * @param frontTrackMm between the centres of the front tyres' contacts
 * @param frontWheels whether the front wheels touch the track
 */
public record Chassis(
        Reading guideToRearAxleMm,
        Reading wheelbaseMm,
        Reading rearTrackMm,
        Reading frontTrackMm,
        FrontWheels frontWheels) {
    /** Guide pivot to rear axle. */
    public static final NumberKey GUIDE_TO_REAR_AXLE = key("guide_to_rear_axle_mm", 20, 300);

    /** Front axle to rear axle. */
    public static final NumberKey WHEELBASE = key("wheelbase_mm", 15, 300);

    /** Rear track. */
    public static final NumberKey REAR_TRACK = key("rear_track_mm", 10, 200);

    /** Front track. */
    public static final NumberKey FRONT_TRACK = key("front_track_mm", 5, 200);

    /** The keys of its numbers, in the order in which files list them. */
    public static final List<NumberKey> KEYS = List.of(GUIDE_TO_REAR_AXLE, WHEELBASE, REAR_TRACK, FRONT_TRACK);

    /** Checks each length. */
    public Chassis {
        GUIDE_TO_REAR_AXLE.check(guideToRearAxleMm);
        WHEELBASE.check(wheelbaseMm);
        REAR_TRACK.check(rearTrackMm);
        FRONT_TRACK.check(frontTrackMm);
    }

    /** From the numbers of a file or form. */
    public static Chassis of(Readings numbers, FrontWheels frontWheels) {
        return new Chassis(
                numbers.require(GUIDE_TO_REAR_AXLE),
                numbers.require(WHEELBASE),
                numbers.require(REAR_TRACK),
                numbers.require(FRONT_TRACK),
                frontWheels);
    }

    /** Its numbers by key. */
    public Readings readings() {
        return Readings.none()
                .with(GUIDE_TO_REAR_AXLE, guideToRearAxleMm)
                .with(WHEELBASE, wheelbaseMm)
                .with(REAR_TRACK, rearTrackMm)
                .with(FRONT_TRACK, frontTrackMm);
    }

    private static NumberKey key(String name, double min, double max) {
        return new NumberKey("chassis", name, min, max);
    }
}
