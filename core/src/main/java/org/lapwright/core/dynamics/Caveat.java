package org.lapwright.core.dynamics;

import org.lapwright.core.track.ClosingGap;

/** Something to know before believing a predicted lap. */
public sealed interface Caveat {
    /**
     * The layout's end misses its start; the lap was reckoned as if they met.
     *
     * @param gap by how much
     */
    record OpenLayout(ClosingGap gap) implements Caveat {}

    /**
     * The tail hangs out so far that the small terms left out of the wall force begin to count.
     *
     * @param angleRad widest angle between car and slot, rad
     */
    record TailFarOut(double angleRad) implements Caveat {}
}
