package org.lapwright.core.advice;

import org.lapwright.core.car.change.ChangeKind;

/**
 * What a kind of change takes on the bench. Common practice, no source.
 *
 * @param minutes of work
 * @param reversible whether the car can be put back as it was
 */
record Effort(double minutes, boolean reversible) {
    static Effort of(ChangeKind kind) {
        return switch (kind) {
            case BALLAST_ADDED, BALLAST_MOVED, BALLAST_REMOVED -> new Effort(2, true);
            case SHIM_ADDED, SHIM_REMOVED -> new Effort(5, true);
            case TYRES_TRUED -> new Effort(15, false);
            case TYRES_FITTED -> new Effort(10, true);
            case GUIDE_FITTED -> new Effort(8, true);
            case GEARS_FITTED -> new Effort(10, true);
            case MOTOR_FITTED -> new Effort(20, true);
            case MAGNET_FITTED, MAGNET_REMOVED -> new Effort(4, true);
            case TRACK_WIDTH -> new Effort(8, true);
            case BODY_FLOAT, BRAID_FITTED, OILED, NOTED, FRONT_GAP -> new Effort(5, true);
            case MOTOR_BEDDED -> new Effort(30, false);
        };
    }
}
