package org.lapwright.app.usecase.run;

import org.lapwright.core.units.Check;

/**
 * Which gate of this computer is listened to, and how.
 *
 * @param kind what it is
 * @param port name of its serial port; empty where it has none
 * @param leastLevel least height of a pass on the sound card, in full scale
 */
public record GateChoice(Kind kind, String port, double leastLevel) {
    private static final int LONGEST_PORT = 120;

    /** What a gate hangs on. */
    public enum Kind {
        /** The sound card. */
        SOUND,
        /** A serial line. */
        SERIAL
    }

    /** Checks the level, and that a serial line has a port. */
    public GateChoice {
        port = kind == Kind.SERIAL ? Check.text(port, LONGEST_PORT, "port") : "";
        Check.inRange(leastLevel, 0, 1, "least level", "");
    }

    /** The same with another least height of a pass. */
    public GateChoice withLeastLevel(double level) {
        return new GateChoice(kind, port, level);
    }

    /** The gate within a sentence. */
    public String name() {
        return kind == Kind.SOUND ? "the sound card" : port;
    }
}
