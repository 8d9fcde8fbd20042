package org.lapwright.app.web;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.lapwright.app.store.MemoryGarage;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.core.car.shelf.Part;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.ladder.CarLaps;

/** The garage in memory, which can be told to fail at saving. */
final class FakeGarage implements GarageStore {
    private final GarageStore garage = new MemoryGarage();
    private volatile String failure = "";

    /** From now on saving fails with this sentence; an empty one mends it. */
    void failWith(String sentence) {
        failure = sentence;
    }

    int size() {
        return garage.comparisons().size();
    }

    @Override
    public SavedComparison keep(KeptComparison comparison, Verdict verdict, String requestKey, Instant at) {
        if (!failure.isEmpty()) {
            throw new StoreException(failure);
        }
        return garage.keep(comparison, verdict, requestKey, at);
    }

    @Override
    public List<SavedComparison> comparisons() {
        return garage.comparisons();
    }

    @Override
    public List<SavedComparison> comparisons(int from, int most) {
        return garage.comparisons(from, most);
    }

    @Override
    public long revision() {
        return garage.revision();
    }

    @Override
    public List<SavedComparison> archived() {
        return garage.archived();
    }

    @Override
    public Optional<SavedComparison> comparison(long id) {
        return garage.comparison(id);
    }

    @Override
    public List<String> tracks() {
        return garage.tracks();
    }

    @Override
    public List<String> carsDriven() {
        return garage.carsDriven();
    }

    @Override
    public List<CarLaps> lapsOnTrack(String track) {
        return garage.lapsOnTrack(track);
    }

    @Override
    public List<CarLaps> lapsOnTrack(String track, Instant until) {
        return garage.lapsOnTrack(track, until);
    }

    @Override
    public List<SetUpRun> runsOf(String car) {
        return garage.runsOf(car);
    }

    @Override
    public boolean isExample(String car) {
        return garage.isExample(car);
    }

    @Override
    public void archive(long id, Instant at) {
        garage.archive(id, at);
    }

    @Override
    public void restore(long id) {
        garage.restore(id);
    }

    @Override
    public void archiveExample(Instant at) {
        garage.archiveExample(at);
    }

    @Override
    public void restoreExample() {
        garage.restoreExample();
    }

    @Override
    public ExampleState exampleState() {
        return garage.exampleState();
    }

    @Override
    public KeptFile keepFile(KeptFile file) {
        if (!failure.isEmpty()) {
            throw new StoreException(failure);
        }
        return garage.keepFile(file);
    }

    @Override
    public List<KeptFile> files(Kind kind) {
        return garage.files(kind);
    }

    @Override
    public Optional<KeptFile> file(Kind kind, String name) {
        return garage.file(kind, name);
    }

    @Override
    public Optional<StoredHistory> history(String car) {
        return garage.history(car);
    }

    @Override
    public StoredHistory log(NewStep step, String requestKey) {
        if (!failure.isEmpty()) {
            throw new StoreException(failure);
        }
        return garage.log(step, requestKey);
    }

    @Override
    public StoredHistory putOn(String car, long from, long to, Why why, String requestKey, Instant at) {
        if (!failure.isEmpty()) {
            throw new StoreException(failure);
        }
        return garage.putOn(car, from, to, why, requestKey, at);
    }

    @Override
    public Set<String> kindsLogged() {
        return garage.kindsLogged();
    }

    @Override
    public Drive begin(NewDrive drive, String requestKey, Instant at) {
        return garage.begin(drive, requestKey, at);
    }

    @Override
    public Written happened(long drive, List<DriveEvent> events, Instant at) {
        if (!failure.isEmpty()) {
            throw new StoreException(failure);
        }
        return garage.happened(drive, events, at);
    }

    @Override
    public Mark mark() {
        return garage.mark();
    }

    @Override
    public Optional<Drive> open() {
        return garage.open();
    }

    @Override
    public OptionalLong driveKeptAs(long comparison) {
        return garage.driveKeptAs(comparison);
    }

    @Override
    public Optional<Drive> drive(long id) {
        return garage.drive(id);
    }

    @Override
    public Part addPart(NewPart part, String requestKey, Instant at) {
        if (!failure.isEmpty()) {
            throw new StoreException(failure);
        }
        return garage.addPart(part, requestKey, at);
    }

    @Override
    public void partHappened(long part, PartEvent event, String requestKey, Instant at) {
        if (!failure.isEmpty()) {
            throw new StoreException(failure);
        }
        garage.partHappened(part, event, requestKey, at);
    }

    @Override
    public void keepPhoto(String car, byte[] jpeg, Instant at) {
        if (!failure.isEmpty()) {
            throw new StoreException(failure);
        }
        garage.keepPhoto(car, jpeg, at);
    }

    @Override
    public void removePhoto(String car) {
        garage.removePhoto(car);
    }

    @Override
    public boolean hasPhoto(String car) {
        return garage.hasPhoto(car);
    }

    @Override
    public Optional<byte[]> photo(String car) {
        return garage.photo(car);
    }

    @Override
    public void keepList(ListKind kind, String text, Instant at) {
        if (!failure.isEmpty()) {
            throw new StoreException(failure);
        }
        garage.keepList(kind, text, at);
    }

    @Override
    public Optional<String> list(ListKind kind) {
        return garage.list(kind);
    }

    @Override
    public ShelfRecord shelf() {
        return garage.shelf();
    }

    @Override
    public void close() {
        garage.close();
    }
}
