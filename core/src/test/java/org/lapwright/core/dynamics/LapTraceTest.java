package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LapTraceTest {
    /** Constant pull from standstill over 2 m, and braking back: v² = 2 a s with 4 m/s at 2 m is a = 4 m/s², t = √(2 s / a). */
    @Test
    void timeUnderConstantAcceleration() {
        LapTrace trace = new LapTrace(new double[] {0, 2, 4}, new double[] {0, 4, 0}, new byte[] {0, 0});
        assertThat(trace.timeS(0)).isZero();
        assertThat(trace.timeS(1)).isCloseTo(Math.sqrt(0.5), within(1e-12));
        assertThat(trace.timeS(2)).isCloseTo(1, within(1e-12));
        assertThat(trace.timeS(3)).isCloseTo(2 - Math.sqrt(0.5), within(1e-12));
        assertThat(trace.timeS(4)).isCloseTo(2, within(1e-12));
    }
}
