package org.lapwright.core.trial;

/** Did the change help on consistency? */
public enum SteadyDecision {
    /** The laps scatter less after the change. */
    STEADIER("steadier"),
    /** The laps scatter more after the change. */
    WILDER("wilder"),
    /** The laps so far cannot tell. */
    MORE_LAPS("more-laps");

    private final String code;

    SteadyDecision(String code) {
        this.code = code;
    }

    /** The name in files, commands and pages; fixed. */
    public String code() {
        return code;
    }
}
