package org.lapwright.core.advice;

import java.util.Arrays;
import org.lapwright.core.doubt.SampledDoubt;
import org.lapwright.core.units.Interval;

/**
 * What a change brings on cars drawn from what is known of one.
 *
 * @param interval in which the gain lies with 90 %, s
 * @param chance that the car is faster, one that does not get round counted as slower
 */
record DrawnGains(Interval interval, double chance) {
    private static final double LEVEL = 0.9;

    /** The gain on each of the cars, the first the one as it is written, s; not finite where one does not get round. */
    static DrawnGains of(double[] gainS) {
        double[] finite = Arrays.stream(gainS).filter(Double::isFinite).toArray();
        double faster = Arrays.stream(finite).filter(gain -> gain > 0).count();
        return new DrawnGains(
                finite.length < 2
                        ? new Interval(gainS[0], gainS[0])
                        : SampledDoubt.of(finite).interval(LEVEL),
                faster / gainS.length);
    }
}
