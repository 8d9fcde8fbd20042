package org.lapwright.core.car.change;

/** A place on the car that holds one part (or one pair) at a time. */
public enum PartPlace {
    /** Rear tyres. */
    REAR_TYRES("rear_tyres", "rear tyres"),
    /** Guide. */
    GUIDE("guide", "guide"),
    /** Braids. */
    BRAID("braid", "braid"),
    /** Motor. */
    MOTOR("motor", "motor"),
    /** Magnet. */
    MAGNET("magnet", "magnet"),
    /** Gears. */
    GEARS("gears", "gears");

    private final String code;
    private final String label;

    PartPlace(String code, String label) {
        this.code = code;
        this.label = label;
    }

    /** The word in files. */
    public String code() {
        return code;
    }

    /** The word for people. */
    public String label() {
        return label;
    }
}
