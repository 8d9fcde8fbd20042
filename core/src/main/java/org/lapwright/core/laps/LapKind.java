package org.lapwright.core.laps;

import java.util.Arrays;
import java.util.Optional;

/** What a lap was. Only {@link #CLEAN} laps count for pace and spread; the others stay on record. */
public enum LapKind {
    /** A lap like the others. */
    CLEAN("clean"),
    /** The first lap of a run, out of line because the car started from standstill. */
    FIRST("first"),
    /** Came off the track or stopped. */
    OFF("off"),
    /** The gate missed a pass: two or more laps in one. */
    MISSED("missed"),
    /** The gate fired twice: one lap in two. */
    DOUBLE("double"),
    /** An off or a missed gate: time alone cannot tell. */
    OFF_OR_MISSED("off-or-missed"),
    /** Slower than the driver's scatter explains, with no better name. */
    SLOW("slow");

    private final String code;

    LapKind(String code) {
        this.code = code;
    }

    /** The name in files, commands and pages; fixed. */
    public String code() {
        return code;
    }

    /** Whether laps of this kind count for pace and spread. */
    public boolean counts() {
        return this == CLEAN;
    }

    /** Whether the car lost time on the track, as far as time can tell. */
    public boolean isOff() {
        return this == OFF || this == OFF_OR_MISSED;
    }

    /** The kind with this code, if there is one. */
    public static Optional<LapKind> find(String code) {
        return Arrays.stream(values()).filter(kind -> kind.code.equals(code)).findFirst();
    }
}
