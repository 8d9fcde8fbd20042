package org.lapwright.app.files;

import java.util.List;

/**
 * Runs that belong together.
 *
 * @param name what the text calls the session, or empty when it has only one
 * @param runs its runs in the order driven
 */
public record ReadSession(String name, List<ReadRun> runs) {
    /** Copies the list. */
    public ReadSession {
        runs = List.copyOf(runs);
    }
}
