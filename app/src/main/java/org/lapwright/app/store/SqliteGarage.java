package org.lapwright.app.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jdbi.v3.core.statement.Update;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.core.car.shelf.Part;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.ladder.CarLaps;

/**
 * The garage in one SQLite file. What {@link #keep} has returned is on disk.
 *
 * <p>One connection writes, one reads beside it; each serves one thread at a time. Any number of threads may call.
 */
public final class SqliteGarage implements GarageStore {
    /** More commits than one connection ever sees. */
    private static final long CONNECTION = 1L << 32;

    private final SqliteFaults faults;
    private final SqliteLink writing;
    private final SqliteLink reading;

    private SqliteGarage(SqliteDatabase database) {
        this.faults = new SqliteFaults(database.file());
        this.writing = SqliteLink.forWriting(database::writer, faults);
        this.reading = SqliteLink.forReading(database::reader, faults);
    }

    /**
     * Opens the garage in a file, or makes a new one; an older one is backed up and upgraded.
     *
     * @param file the file; its folder has to be there
     * @throws StoreException if it cannot be used: damaged, foreign, of a newer version, locked, not to be written
     */
    public static SqliteGarage open(Path file) {
        return open(SqliteDatabase.of(file), SqliteSchema.SHIPPED);
    }

    static SqliteGarage open(SqliteDatabase database, SqliteSchema schema) {
        new SqliteOpening(database, schema).prepare();
        return new SqliteGarage(database);
    }

    @Override
    public SavedComparison keep(KeptComparison comparison, Verdict verdict, String requestKey, Instant at) {
        KeptComparison checked = Intake.checked(comparison);
        String request = Intake.requestKey(requestKey);
        long micros = Intake.micros(at);
        String shown = VerdictJson.write(verdict);
        return writing.inTransaction(handle -> {
            ComparisonWriter writer = new ComparisonWriter(handle, micros);
            return writer.alreadyKept(request)
                    .map(id -> sound(
                            () -> new ComparisonReader(handle).numbered(id).orElseThrow()))
                    .orElseGet(() -> writer.keep(checked, verdict, shown, request));
        });
    }

    @Override
    public List<SavedComparison> comparisons() {
        return read(ComparisonReader::visible);
    }

    @Override
    public List<SavedComparison> comparisons(int from, int most) {
        return read(reader -> reader.visible(from, most));
    }

    /** SQLite counts what others have committed for each connection anew: those opened count as well. */
    @Override
    public long revision() {
        return reading.inTransaction(handle -> reading.opened() * CONNECTION
                + handle.createQuery("PRAGMA data_version").mapTo(Long.class).one());
    }

    @Override
    public List<SavedComparison> archived() {
        return read(ComparisonReader::archived);
    }

    @Override
    public Optional<SavedComparison> comparison(long id) {
        return read(reader -> reader.numbered(id));
    }

    @Override
    public List<String> tracks() {
        return read(ComparisonReader::tracks);
    }

    @Override
    public List<String> carsDriven() {
        return read(ComparisonReader::carsDriven);
    }

    @Override
    public List<CarLaps> lapsOnTrack(String track) {
        return read(reader -> reader.lapsOnTrack(track, Long.MAX_VALUE));
    }

    @Override
    public List<CarLaps> lapsOnTrack(String track, Instant until) {
        return read(reader -> reader.lapsOnTrack(track, Intake.micros(until)));
    }

    @Override
    public List<SetUpRun> runsOf(String car) {
        return read(reader -> reader.runsOf(car));
    }

    @Override
    public boolean isExample(String car) {
        return read(reader -> reader.isExample(car));
    }

    @Override
    public void archive(long id, Instant at) {
        long micros = Intake.micros(at);
        requireFound(
                id,
                update(
                        "UPDATE comparison SET archived_at = COALESCE(archived_at, :at) WHERE id = :id",
                        change -> change.bind("at", micros).bind("id", id)));
    }

    @Override
    public void restore(long id) {
        requireFound(
                id, update("UPDATE comparison SET archived_at = NULL WHERE id = :id", change -> change.bind("id", id)));
    }

    @Override
    public void archiveExample(Instant at) {
        long micros = Intake.micros(at);
        update(
                "UPDATE comparison SET archived_at = :at WHERE example AND archived_at IS NULL",
                change -> change.bind("at", micros));
    }

    @Override
    public void restoreExample() {
        update("UPDATE comparison SET archived_at = NULL WHERE example", change -> change);
    }

    @Override
    public ExampleState exampleState() {
        return read(ComparisonReader::exampleState);
    }

    @Override
    public KeptFile keepFile(KeptFile file) {
        KeptFile checked = Intake.checked(file);
        long micros = Intake.micros(file.savedAt());
        return writing.inTransaction(handle -> sound(() -> new FileTables(handle).keep(checked, micros)));
    }

    @Override
    public List<KeptFile> files(Kind kind) {
        return reading.inTransaction(handle -> sound(() -> new FileTables(handle).newest(kind)));
    }

    @Override
    public Optional<KeptFile> file(Kind kind, String name) {
        return reading.inTransaction(handle -> sound(() -> new FileTables(handle).named(kind, name)));
    }

    @Override
    public Optional<StoredHistory> history(String car) {
        return reading.inTransaction(handle -> sound(() -> new StepTables(handle, 0).named(car)));
    }

    @Override
    public StoredHistory log(NewStep step, String requestKey) {
        NewStep checked = Intake.checked(step);
        String request = Intake.requestKey(requestKey);
        long micros = Intake.micros(step.at());
        return writing.inTransaction(handle -> {
            StepTables steps = new StepTables(handle, micros);
            return steps.isUsed(request)
                    ? sound(() -> steps.named(step.car()).orElseThrow())
                    : steps.log(checked, request);
        });
    }

    @Override
    public StoredHistory putOn(String car, long from, long to, Why why, String requestKey, Instant at) {
        String request = Intake.requestKey(requestKey);
        long micros = Intake.micros(at);
        return writing.inTransaction(handle -> {
            StepTables steps = new StepTables(handle, micros);
            return steps.isUsed(request)
                    ? sound(() -> steps.named(car).orElseThrow())
                    : steps.putOn(car, from, to, why, request);
        });
    }

    @Override
    public Set<String> kindsLogged() {
        return reading.inTransaction(handle -> new StepTables(handle, 0).kindsLogged());
    }

    @Override
    public Drive begin(NewDrive drive, String requestKey, Instant at) {
        NewDrive checked = Intake.checked(drive);
        String request = Intake.requestKey(requestKey);
        long micros = Intake.micros(at);
        return writing.inTransaction(handle -> new DriveTables(handle).begin(checked, request, micros));
    }

    @Override
    public Written happened(long drive, List<DriveEvent> events, Instant at) {
        List<DriveEvent> checked = events.stream().map(Intake::checked).toList();
        long micros = Intake.micros(at);
        return writing.inTransaction(handle -> {
            DriveTables drives = new DriveTables(handle);
            if (!drives.goesOn(drive)) {
                Intake.requireGoesOn(drive, drives.numbered(drive), checked);
            }
            return drives.add(drive, checked, micros);
        });
    }

    @Override
    public Mark mark() {
        return reading.inTransaction(handle -> new DriveTables(handle).mark());
    }

    @Override
    public Optional<Drive> open() {
        return reading.inTransaction(handle -> sound(() -> new DriveTables(handle).open()));
    }

    @Override
    public OptionalLong driveKeptAs(long comparison) {
        return reading.inTransaction(handle -> new DriveTables(handle).keptAs(comparison));
    }

    @Override
    public Optional<Drive> drive(long id) {
        return reading.inTransaction(handle -> sound(() -> new DriveTables(handle).numbered(id)));
    }

    @Override
    public Part addPart(NewPart part, String requestKey, Instant at) {
        NewPart checked = Intake.checked(part);
        String request = Intake.requestKey(requestKey);
        long micros = Intake.micros(at);
        return writing.inTransaction(handle -> {
            ShelfTables shelf = new ShelfTables(handle);
            return sound(() -> shelf.added(request)).orElseGet(() -> shelf.add(checked, request, micros));
        });
    }

    @Override
    public void partHappened(long part, PartEvent event, String requestKey, Instant at) {
        PartEvent checked = Intake.checked(event);
        String request = Intake.requestKey(requestKey);
        long micros = Intake.micros(at);
        writing.inTransaction(handle -> {
            ShelfTables shelf = new ShelfTables(handle);
            Intake.requirePart(part, shelf.has(part));
            shelf.add(part, checked, request, micros);
            return part;
        });
    }

    @Override
    public ShelfRecord shelf() {
        return reading.inTransaction(handle -> sound(() -> new ShelfTables(handle).all()));
    }

    @Override
    public void keepPhoto(String car, byte[] jpeg, Instant at) {
        byte[] checked = Intake.photo(car, jpeg);
        long micros = Intake.micros(at);
        writing.inTransaction(handle -> {
            new PhotoTables(handle).keep(car, checked, micros);
            return car;
        });
    }

    @Override
    public void removePhoto(String car) {
        writing.inTransaction(handle -> {
            new PhotoTables(handle).remove(car);
            return car;
        });
    }

    @Override
    public boolean hasPhoto(String car) {
        return reading.inTransaction(handle -> new PhotoTables(handle).has(car));
    }

    @Override
    public Optional<byte[]> photo(String car) {
        return reading.inTransaction(handle -> new PhotoTables(handle).named(car));
    }

    @Override
    public void keepList(ListKind kind, String text, Instant at) {
        String checked = Intake.list(text);
        long micros = Intake.micros(at);
        writing.inTransaction(handle -> {
            new ListTables(handle).keep(kind, checked, micros);
            return kind;
        });
    }

    @Override
    public Optional<String> list(ListKind kind) {
        return reading.inTransaction(handle -> new ListTables(handle).newest(kind));
    }

    /** Closes the file; harmless when repeated. Whatever is called afterwards is refused. */
    @Override
    public void close() {
        reading.close();
        writing.close();
    }

    private <T> T read(Function<ComparisonReader, T> question) {
        return reading.inTransaction(handle -> sound(() -> question.apply(new ComparisonReader(handle))));
    }

    /** Rows that a racer could not have entered were damaged after they were written. */
    private <T> T sound(Supplier<T> reading) {
        try {
            return reading.get();
        } catch (IllegalArgumentException | NoSuchElementException | NullPointerException e) {
            throw faults.damaged(e);
        }
    }

    private int update(String sql, UnaryOperator<Update> values) {
        return writing.inTransaction(
                handle -> values.apply(handle.createUpdate(sql)).execute());
    }

    private static void requireFound(long id, int rows) {
        if (rows == 0) {
            throw Intake.noComparison(id);
        }
    }
}
