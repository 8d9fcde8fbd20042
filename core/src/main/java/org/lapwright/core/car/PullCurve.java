package org.lapwright.core.car;

/**
 * A magnet's pull against distance, F = F₀ / (1 + z/z₀)^n.
 *
 * @param contactG F₀, the pull in contact, gram-force
 * @param scaleMm z₀, the distance over which it falls, mm
 * @param exponent n, how steeply it falls far out: about 1.4 to 1.9 where steel closes the circuit, 3.9 for a small open
 *     magnet
 */
public record PullCurve(double contactG, double scaleMm, double exponent) {
    /** Checks that it pulls, and less with distance. */
    public PullCurve {
        if (!(contactG > 0 && scaleMm > 0 && exponent > 0 && Double.isFinite(contactG * scaleMm * exponent))) {
            throw new IllegalArgumentException("a magnet with %g g in contact, %g mm and exponent %g does not pull"
                    .formatted(contactG, scaleMm, exponent));
        }
    }

    /**
     * The pull at a distance, gram-force.
     *
     * @param distanceMm between magnet and rails, mm, 0 or more
     */
    public double atG(double distanceMm) {
        return contactG * Math.pow(1 + PullReading.DISTANCE.check(distanceMm) / scaleMm, -exponent);
    }
}
