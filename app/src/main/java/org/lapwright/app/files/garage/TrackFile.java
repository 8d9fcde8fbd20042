package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.lapwright.core.track.Track;

/** A track file: the track in it, and everything else that it says. Immutable. */
public final class TrackFile {
    /** The format that this version reads and writes. */
    public static final String FORMAT = "lapwright-track/1";

    private final Track track;
    private final ObjectNode json;

    TrackFile(Track track, ObjectNode json) {
        this.track = track;
        this.json = json;
    }

    /** A file for a track that was in none. */
    public static TrackFile of(Track track) {
        return new TrackFile(track, TrackWriter.updated(Document.empty(), track));
    }

    /**
     * Reads a file.
     *
     * @param text all of it
     */
    public static FileReading<TrackFile> read(String text) {
        return TrackReader.read(text);
    }

    /** The track. */
    public Track track() {
        return track;
    }

    /** The same file with another track: what did not change stays as it was written, unknown keys included. */
    public TrackFile with(Track changed) {
        return new TrackFile(changed, TrackWriter.updated(json.deepCopy(), changed));
    }

    /** The file's text. */
    public String text() {
        return Document.text(json);
    }
}
