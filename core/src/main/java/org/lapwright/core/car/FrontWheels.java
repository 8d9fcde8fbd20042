package org.lapwright.core.car;

/** Whether the front wheels reach the track when the car stands level in the slot. */
public enum FrontWheels {
    /** They touch, and hold the car up when it leans. */
    TOUCHING("touching"),
    /** They hang clear; the guide alone carries the nose. */
    CLEAR("clear");

    private final String word;

    FrontWheels(String word) {
        this.word = word;
    }

    /** The word in files. */
    public String word() {
        return word;
    }

    /**
     * The kind with this word.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static FrontWheels of(String word) {
        for (FrontWheels kind : values()) {
            if (kind.word.equals(word)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("chassis.front_wheels is '" + word + "'; it must be 'touching' or 'clear'");
    }
}
