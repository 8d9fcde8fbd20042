package org.lapwright.core.numbers;

/** What a car does first when a curve is driven faster and faster. */
public enum Yield {
    /** The rear tyres slide. */
    SLIDE("slide"),
    /** The car tips over its outer wheels. */
    TIP("tip");

    private final String word;

    Yield(String word) {
        this.word = word;
    }

    /** The word in files and messages. */
    public String word() {
        return word;
    }
}
