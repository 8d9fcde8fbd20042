package org.lapwright.core.trial.session;

import java.util.Arrays;
import java.util.Optional;

/** Which set-up a run was driven with. */
public enum Side {
    /** The set-up that was there first: A in a run plan. */
    BEFORE("before", 'A'),
    /** The set-up with the change: B in a run plan. */
    AFTER("after", 'B');

    private final String code;
    private final char letter;

    Side(String code, char letter) {
        this.code = code;
        this.letter = letter;
    }

    /** The name in files, commands and pages; fixed. */
    public String code() {
        return code;
    }

    /** The letter in a run plan. */
    public char letter() {
        return letter;
    }

    /** The side with this code, if there is one. */
    public static Optional<Side> find(String code) {
        return Arrays.stream(values()).filter(side -> side.code.equals(code)).findFirst();
    }
}
