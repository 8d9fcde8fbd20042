package org.lapwright.core.trial;

/** Did the change help on pace? */
public enum Decision {
    /** The whole interval is on the faster side. */
    FASTER("faster"),
    /** The whole interval is on the slower side. */
    SLOWER("slower"),
    /** Whatever difference there is lies inside the racer's margin. */
    LEVEL("level"),
    /** The laps so far cannot tell. */
    MORE_LAPS("more-laps");

    private final String code;

    Decision(String code) {
        this.code = code;
    }

    /** The name in files, commands and pages; fixed. */
    public String code() {
        return code;
    }
}
