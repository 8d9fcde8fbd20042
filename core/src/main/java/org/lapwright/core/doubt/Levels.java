package org.lapwright.core.doubt;

/** What a level of confidence may be. */
final class Levels {
    private Levels() {}

    static double check(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("level is " + level + "; it must be above 0 and below 1, as 0.9");
        }
        return level;
    }
}
