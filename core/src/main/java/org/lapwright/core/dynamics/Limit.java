package org.lapwright.core.dynamics;

/** What stops a car from being faster at a place, by the name that a racer knows. */
public enum Limit {
    /** The rear tyres would slide. */
    SLIDE("slide"),
    /** The motor gives no more. */
    POWER("power"),
    /** The motor brakes no harder. */
    BRAKE("brake"),
    /** The guide would lift. */
    NOSE("nose"),
    /** The car would tip over its outer wheels. */
    TIP("tip");

    private final String word;

    Limit(String word) {
        this.word = word;
    }

    /** The word in files and messages. */
    public String word() {
        return word;
    }
}
