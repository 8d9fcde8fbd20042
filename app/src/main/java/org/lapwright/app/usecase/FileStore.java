package org.lapwright.app.usecase;

import java.util.List;
import java.util.Optional;

/**
 * Where the owner's car and track files live: the numbers of each car's set-up and the drawing of each track, word for word.
 * What {@code keepFile} has returned survives a kill; an older version is never altered, the newest counts.
 */
public interface FileStore {
    /** What a file is about. */
    enum Kind {
        /** A car: the numbers of the set-up that it has. */
        CAR,
        /** A track. */
        TRACK
    }

    /**
     * Saves a file. The same text again is not saved twice.
     *
     * @param file what to save; its time is when
     * @return what is there now, under the name that was kept first
     */
    KeptFile keepFile(KeptFile file);

    /**
     * The newest file for each name, by name. Those of the example garage are among them while it is shown, marked, and
     * not where the owner has one of the same name.
     */
    List<KeptFile> files(Kind kind);

    /** The newest file under a name, however it is spelt. */
    Optional<KeptFile> file(Kind kind, String name);
}
