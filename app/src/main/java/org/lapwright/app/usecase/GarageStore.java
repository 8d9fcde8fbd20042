package org.lapwright.app.usecase;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.ladder.CarLaps;

/**
 * Where cars, set-ups, tracks, runs, raw laps and verdicts live. What {@code keep} has returned survives a kill.
 *
 * <p>Raw laps are never altered or deleted; removing is archiving. Every method throws {@link StoreException} with a
 * sentence for the racer when the storage fails.
 */
public interface GarageStore
        extends FileStore, HistoryStore, DriveStore, ShelfStore, PhotoStore, OwnListStore, AutoCloseable {
    /**
     * Saves a comparison in one transaction: car, both set-ups with the change between them, track, lane, runs with
     * their raw laps and the racer's word on them, and the verdict as it was shown.
     *
     * <p>The same request key saves once, however often it is sent: later calls return the first result.
     *
     * @param comparison what to save
     * @param verdict the verdict shown for it
     * @param requestKey a key that the sender made up for this save, 1 to 80 characters
     * @param at when
     */
    SavedComparison keep(KeptComparison comparison, Verdict verdict, String requestKey, Instant at);

    /** All comparisons that are not archived, newest first. */
    List<SavedComparison> comparisons();

    /**
     * Some of them.
     *
     * @param from how many of the newest to leave out
     * @param most how many to bring at most
     */
    List<SavedComparison> comparisons(int from, int most);

    /**
     * A number that is another one after anything in here was changed, by this program or by another. It means nothing beyond this
     * object's life.
     */
    long revision();

    /** All comparisons that are archived, newest first. */
    List<SavedComparison> archived();

    /** One comparison, archived or not. */
    Optional<SavedComparison> comparison(long id);

    /** Names of the tracks that have laps and are not archived, the one driven last first. */
    List<String> tracks();

    /** Names of the racer's own cars that have comparisons, the one kept last first. */
    List<String> carsDriven();

    /**
     * For each car on the track that is not archived: the runs of the set-up it has now. Where the racer has laps of
     * their own, only their own cars; else those of the example garage.
     */
    List<CarLaps> lapsOnTrack(String track);

    /** The same as it stood at an instant, by the comparisons kept until then; what was archived since is left out. */
    List<CarLaps> lapsOnTrack(String track, Instant until);

    /** The runs of the racer's own car that are not archived, oldest first. */
    List<SetUpRun> runsOf(String car);

    /**
     * A run, and what was driven.
     *
     * @param setUp number of the set-up
     * @param track its name
     * @param lane its name; may be empty
     * @param at when its comparison was kept
     * @param run its laps
     */
    record SetUpRun(long setUp, String track, String lane, Instant at, TimedRun run) {}

    /** Whether a car is part of the example garage. */
    boolean isExample(String car);

    /** Archives one comparison with its runs; a car without any other leaves the ladder. */
    void archive(long id, Instant at);

    /** Brings an archived comparison back. */
    void restore(long id);

    /** Archives everything that belongs to the example garage. */
    void archiveExample(Instant at);

    /** Brings the example garage back. */
    void restoreExample();

    /** What there is of the example garage. */
    ExampleState exampleState();

    @Override
    void close();

    /** What there is of the example garage in a store. */
    enum ExampleState {
        /** It was never put in. */
        ABSENT,
        /** It is there. */
        SHOWN,
        /** The racer has taken it out; it can be brought back. */
        REMOVED
    }
}
