package org.lapwright.app.usecase.physics;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.FileStore;
import org.lapwright.app.usecase.FileStore.Kind;
import org.lapwright.app.usecase.KeptFile;

/** Which cars and tracks have I written down, and let me keep one more. */
public final class OwnGarage {
    private final FileStore store;
    private final Clock clock;

    /** The files of {@code store}. */
    public OwnGarage(FileStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** Cars with numbers, by name. */
    public List<KeptFile> cars() {
        return store.files(Kind.CAR);
    }

    /** Tracks that are drawn, by name. */
    public List<KeptFile> tracks() {
        return store.files(Kind.TRACK);
    }

    /** A car's file. */
    public Optional<KeptFile> car(String name) {
        return store.file(Kind.CAR, name);
    }

    /** A track's file. */
    public Optional<KeptFile> track(String name) {
        return store.file(Kind.TRACK, name);
    }

    /**
     * Keeps a car's numbers; when this returns they are on disk.
     *
     * @param name its name
     * @param text its file
     */
    public KeptFile keepCar(String name, String text) {
        return store.keepFile(new KeptFile(Kind.CAR, name, text, false, clock.instant()));
    }

    /**
     * Keeps a track; when this returns it is on disk.
     *
     * @param name its name
     * @param text its file
     */
    public KeptFile keepTrack(String name, String text) {
        return store.keepFile(new KeptFile(Kind.TRACK, name, text, false, clock.instant()));
    }
}
