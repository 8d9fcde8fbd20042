package org.lapwright.core.prediction;

import java.util.List;

/**
 * Set-ups drawn from what is known of one.
 *
 * @param drawn what was made of each
 * @param refused how many draws made no sense as a car and were drawn again
 */
public record SetUpDraws<T>(List<T> drawn, int refused) {
    /** Copies the list. */
    public SetUpDraws {
        drawn = List.copyOf(drawn);
    }
}
