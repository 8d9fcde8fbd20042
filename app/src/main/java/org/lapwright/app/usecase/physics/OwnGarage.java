package org.lapwright.app.usecase.physics;

import java.time.Clock;
import java.util.Comparator;
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

    /** Cars with numbers, by name: numbers in a name by their size. */
    public List<KeptFile> cars() {
        return byName(Kind.CAR);
    }

    /** Tracks that are drawn, by name: numbers in a name by their size. */
    public List<KeptFile> tracks() {
        return byName(Kind.TRACK);
    }

    private List<KeptFile> byName(Kind kind) {
        return store.files(kind).stream()
                .sorted(Comparator.comparing(KeptFile::name, NaturalOrder.OF_NAMES))
                .toList();
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
