package org.lapwright.core.car;

import org.lapwright.core.units.NumberKey;

/**
 * A magnet's pull at one distance: the car hung on a scale over a piece of track, or its weight on the rails.
 *
 * @param distanceMm between magnet and rails, mm; 0 when it touches
 * @param pullG pull, gram-force
 */
public record PullReading(double distanceMm, double pullG) {
    /** Distance between magnet and rails. */
    public static final NumberKey DISTANCE = new NumberKey("pull", "distance_mm", 0, 100);

    /** Pull. */
    public static final NumberKey PULL = new NumberKey("pull", "pull_g", 0.01, 3000);

    /** Checks both numbers. */
    public PullReading {
        distanceMm = DISTANCE.check(distanceMm);
        pullG = PULL.check(pullG);
    }
}
