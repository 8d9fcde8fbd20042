package org.lapwright.core.laps.pass;

/** Which clock stamped a pass; stamps of different clocks are never subtracted from each other. */
public enum PassClock {
    /** The sender's own timer. */
    DEVICE,
    /** The operating system's stamp of an edge. */
    KERNEL,
    /** The sample count of a sound device. */
    AUDIO,
    /** The receiving machine's monotonic clock when the message came in: a fallback. */
    ARRIVAL,
    /** The browser's monotonic timer. */
    BROWSER,
    /** A thumb on a stopwatch or screen. */
    HAND
}
