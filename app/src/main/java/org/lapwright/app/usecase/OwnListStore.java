package org.lapwright.app.usecase;

import java.time.Instant;
import java.util.Optional;

/**
 * Where lists live that the owner keeps about all of the garage, word for word. What {@code keepList} has returned from survives a
 * kill; an older version is never altered, the newest counts.
 */
public interface OwnListStore {
    /** Longest list, characters. */
    int LONGEST_LIST = 1_000_000;

    /** What a list is of. */
    enum ListKind {
        /** Kinds of track pieces. */
        PIECES,
        /** Classes with their rules. */
        CLASSES,
        /** The screening that is on, with its laps so far. */
        SCREENING,
        /** Tags of cars, and which are put away. */
        LABELS,
        /** The gate of this computer that is listened to. */
        GATE
    }

    /**
     * Saves a list. The same text again is not saved twice.
     *
     * @param kind what it is of
     * @param text the list
     * @param at when
     */
    void keepList(ListKind kind, String text, Instant at);

    /** The newest list of a kind. */
    Optional<String> list(ListKind kind);
}
