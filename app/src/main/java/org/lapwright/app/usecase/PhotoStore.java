package org.lapwright.app.usecase;

import java.time.Instant;
import java.util.Optional;

/** Where a photo of each of the owner's cars lives. What has returned survives a kill. */
public interface PhotoStore {
    /** Longest photo that is taken, in bytes. */
    int LONGEST_PHOTO = 4_000_000;

    /**
     * Keeps the photo of a car, in place of the one before.
     *
     * @param car its name
     * @param jpeg as it is shown
     * @param at when
     */
    void keepPhoto(String car, byte[] jpeg, Instant at);

    /** Takes the photo of a car away for good; harmless when there is none. */
    void removePhoto(String car);

    /** Whether the owner's car of this name has a photo, without reading it. */
    boolean hasPhoto(String car);

    /** The photo of the owner's car of this name, however it is spelt. */
    Optional<byte[]> photo(String car);
}
