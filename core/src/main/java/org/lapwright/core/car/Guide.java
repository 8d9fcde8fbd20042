package org.lapwright.core.car;

import java.util.List;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/**
 * Guide and braids.
 *
 * @param bladeDepthMm depth of the blade below the track surface
 * @param slotFriction friction of the blade against the slot wall
 * @param braidDragG drag of the braids along the rails
 * @param minGuideLoadG least load on the guide that keeps the braids down
 */
public record Guide(Reading bladeDepthMm, Reading slotFriction, Reading braidDragG, Reading minGuideLoadG) {
    /** Depth of the blade. */
    public static final NumberKey BLADE_DEPTH = new NumberKey("guide", "blade_depth_mm", 0, 20);

    /** Friction in the slot. */
    public static final NumberKey SLOT_FRICTION = new NumberKey("guide", "slot_friction", 0, 1);

    /** Drag of the braids. */
    public static final NumberKey BRAID_DRAG = new NumberKey("guide", "braid_drag_g", 0, 100);

    /** Least load on the guide. */
    public static final NumberKey MIN_GUIDE_LOAD = new NumberKey("guide", "min_guide_load_g", 0, 200);

    /** The keys of its numbers, in the order in which files list them. */
    public static final List<NumberKey> KEYS = List.of(BLADE_DEPTH, SLOT_FRICTION, BRAID_DRAG, MIN_GUIDE_LOAD);

    /** Checks each number. */
    public Guide {
        BLADE_DEPTH.check(bladeDepthMm);
        SLOT_FRICTION.check(slotFriction);
        BRAID_DRAG.check(braidDragG);
        MIN_GUIDE_LOAD.check(minGuideLoadG);
    }

    /** From the numbers of a file or form. */
    public static Guide of(Readings numbers) {
        return new Guide(
                numbers.require(BLADE_DEPTH),
                numbers.require(SLOT_FRICTION),
                numbers.require(BRAID_DRAG),
                numbers.require(MIN_GUIDE_LOAD));
    }

    /** Its numbers by key. */
    public Readings readings() {
        return Readings.none()
                .with(BLADE_DEPTH, bladeDepthMm)
                .with(SLOT_FRICTION, slotFriction)
                .with(BRAID_DRAG, braidDragG)
                .with(MIN_GUIDE_LOAD, minGuideLoadG);
    }
}
