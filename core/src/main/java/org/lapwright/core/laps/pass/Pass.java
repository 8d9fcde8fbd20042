package org.lapwright.core.laps.pass;

import java.util.Objects;
import org.lapwright.core.units.Check;

/**
 * Something crossed a gate. Raw and never altered: laps and faults are derived from it.
 *
 * @param source which sender: a port, a device's name, a phone; at most {@value #LONGEST_NAME} characters
 * @param boot one run of the sender's clock, as long at most: stamps of different boots have nothing in common
 * @param sequence the sender's count of passes in this boot, from 0; a gap means that passes were lost
 * @param lane lane number, 1 to {@value #MOST_LANES}
 * @param gate which gate on the lap: 0 the timing line, 1 to {@value #MOST_GATES} a section gate
 * @param stamp when
 */
public record Pass(String source, String boot, long sequence, int lane, int gate, PassStamp stamp) {
    /** More lanes than any home track has. */
    public static final int MOST_LANES = 16;

    /** Greatest number of a section gate. */
    public static final int MOST_GATES = 31;

    /** Longest name of a source or boot. */
    public static final int LONGEST_NAME = 64;

    /** Checks names and numbers. */
    public Pass {
        Check.text(source, LONGEST_NAME, "source");
        Check.text(boot, LONGEST_NAME, "boot");
        if (sequence < 0) {
            throw new IllegalArgumentException("sequence must not be negative, not " + sequence);
        }
        Check.inRange(lane, 1, MOST_LANES, "lane");
        Check.inRange(gate, 0, MOST_GATES, "gate");
        Objects.requireNonNull(stamp, "stamp");
    }
}
