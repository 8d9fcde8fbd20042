package org.lapwright.app.web.chart;

import org.lapwright.core.laps.LapKind;
import org.lapwright.core.trial.session.Side;

/** The shape that stands for a lap, so that nothing is told by colour alone. */
public enum Symbol {
    /** A clean lap before the change: a disc. */
    BEFORE("before", "clean, before"),
    /** A clean lap after the change: a diamond. */
    AFTER("after", "clean, after"),
    /** First from standstill. */
    FIRST("first", "first from standstill"),
    /** Came off or stopped. */
    OFF("off", "came off or stopped"),
    /** The gate missed a pass. */
    MISSED("missed", "gate missed a pass"),
    /** The gate fired twice. */
    DOUBLE("double", "gate fired twice"),
    /** An off or a missed gate. */
    OFF_OR_MISSED("off-or-missed", "off or missed gate"),
    /** Slow. */
    SLOW("slow", "slow");

    private final String code;
    private final String label;

    Symbol(String code, String label) {
        this.code = code;
        this.label = label;
    }

    /** Part of its name in the drawing. */
    public String code() {
        return code;
    }

    /** What it stands for. */
    public String label() {
        return label;
    }

    /** The shape of a lap. */
    public static Symbol of(Side side, LapKind kind) {
        return switch (kind) {
            case CLEAN -> side == Side.BEFORE ? BEFORE : AFTER;
            case FIRST -> FIRST;
            case OFF -> OFF;
            case MISSED -> MISSED;
            case DOUBLE -> DOUBLE;
            case OFF_OR_MISSED -> OFF_OR_MISSED;
            case SLOW -> SLOW;
        };
    }
}
