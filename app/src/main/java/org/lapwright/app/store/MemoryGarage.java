package org.lapwright.app.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import org.lapwright.app.usecase.DriveStore;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.core.car.shelf.LapsDriven;
import org.lapwright.core.car.shelf.Part;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.ladder.LaneRun;
import org.lapwright.core.trial.session.Side;

/** A garage that lives as long as the program: for trying things out, and the plain statement of what a store does. */
public final class MemoryGarage implements GarageStore {
    private final Map<String, String> names = new HashMap<>();
    private final Map<Long, Entry> entries = new TreeMap<>();
    private final Map<String, Long> requests = new HashMap<>();
    private final Map<String, KeptFile> files = new HashMap<>();
    private final MemorySteps steps = new MemorySteps();
    private final MemoryDrives drives = new MemoryDrives();
    private final Map<String, byte[]> photos = new HashMap<>();
    private final Map<ListKind, String> lists = new EnumMap<>(ListKind.class);
    private final MemoryShelf shelf = new MemoryShelf();
    private long setUps;
    private boolean closed;

    /**
     * A comparison on record.
     *
     * @param carKey which car, as a key
     * @param before number of the set-up before the change
     * @param after number of the set-up with it
     */
    private record Entry(SavedComparison saved, String carKey, long before, long after, boolean archived) {
        KeptComparison kept() {
            return saved.kept();
        }

        long setUp(Side side) {
            return side == Side.BEFORE ? before : after;
        }

        boolean isOn(String track) {
            return NameKey.of(kept().track()).equals(NameKey.of(track));
        }

        Entry archived(boolean now) {
            return new Entry(saved, carKey, before, after, now);
        }
    }

    /** An empty garage. */
    public MemoryGarage() {}

    @Override
    public synchronized SavedComparison keep(
            KeptComparison comparison, Verdict verdict, String requestKey, Instant at) {
        requireOpen();
        KeptComparison checked = Intake.checked(comparison);
        String request = Intake.requestKey(requestKey);
        Instant savedAt = Intake.instant(Intake.micros(at));
        Long already = requests.get(request);
        if (already != null) {
            return entry(already).saved();
        }
        KeptComparison named = named(checked);
        String carKey = carKey(named.car(), named.example());
        long before =
                latest(carKey).map(entry -> entry.setUp(entry.kept().stays())).orElseGet(() -> ++setUps);
        SavedComparison saved = new SavedComparison(entries.size() + 1L, savedAt, named);
        entries.put(saved.id(), new Entry(saved, carKey, before, ++setUps, false));
        requests.put(request, saved.id());
        steps.drive(carKey, named.change(), named.stays() == Side.AFTER)
                .ifPresent(step -> putFile(carKey, named.example(), step.file(), savedAt));
        return saved;
    }

    @Override
    public synchronized List<SavedComparison> comparisons() {
        requireOpen();
        return newestFirst(false);
    }

    @Override
    public synchronized List<SavedComparison> comparisons(int from, int most) {
        return comparisons().stream().skip(from).limit(most).toList();
    }

    /** Comparisons are added or altered as a whole: the garage is small, so what they come to is worked out anew. */
    @Override
    public synchronized long revision() {
        requireOpen();
        return entries.hashCode() * 31L + files.hashCode();
    }

    @Override
    public synchronized List<SavedComparison> archived() {
        requireOpen();
        return newestFirst(true);
    }

    @Override
    public synchronized Optional<SavedComparison> comparison(long id) {
        requireOpen();
        return Optional.ofNullable(entries.get(id)).map(Entry::saved);
    }

    @Override
    public synchronized List<String> tracks() {
        return comparisons().stream()
                .filter(saved -> saved.kept().session().laps() > 0)
                .map(saved -> saved.kept().track())
                .distinct()
                .toList();
    }

    @Override
    public synchronized List<String> carsDriven() {
        return comparisons().stream()
                .map(SavedComparison::kept)
                .filter(kept -> !kept.example())
                .map(KeptComparison::car)
                .distinct()
                .toList();
    }

    @Override
    public synchronized List<CarLaps> lapsOnTrack(String track) {
        return lapsOnTrack(track, Instant.MAX);
    }

    @Override
    public synchronized List<CarLaps> lapsOnTrack(String track, Instant until) {
        requireOpen();
        List<Entry> then = visible().stream()
                .filter(entry -> !entry.saved().savedAt().isAfter(until))
                .toList();
        Map<String, CarOnTrack> cars = new LinkedHashMap<>();
        for (Entry entry : then) {
            if (entry.isOn(track)) {
                CarOnTrack car = cars.computeIfAbsent(
                        entry.carKey(),
                        key -> new CarOnTrack(entry.kept().car(), entry.kept().example(), new ArrayList<>()));
                car.runs().addAll(runsOf(entry, setUpOf(then, entry.carKey())));
            }
        }
        cars.values().removeIf(car -> car.runs().isEmpty());
        return CarOnTrack.shown(cars.values());
    }

    @Override
    public synchronized List<SetUpRun> runsOf(String car) {
        requireOpen();
        return entries.values().stream()
                .filter(entry -> !entry.archived() && entry.carKey().equals(carKey(car, false)))
                .flatMap(entry -> entry.kept().session().runs().stream()
                        .map(run -> new SetUpRun(
                                entry.setUp(run.side()),
                                entry.kept().track(),
                                entry.kept().lane(),
                                entry.saved().savedAt(),
                                run.run())))
                .toList();
    }

    @Override
    public synchronized boolean isExample(String car) {
        requireOpen();
        boolean own = visible().stream().anyMatch(entry -> entry.carKey().equals(carKey(car, false)));
        boolean example =
                entries.values().stream().anyMatch(entry -> entry.carKey().equals(carKey(car, true)));
        return example && !own;
    }

    @Override
    public synchronized void archive(long id, Instant at) {
        requireOpen();
        entries.put(id, entry(id).archived(true));
    }

    @Override
    public synchronized void restore(long id) {
        requireOpen();
        entries.put(id, entry(id).archived(false));
    }

    @Override
    public synchronized void archiveExample(Instant at) {
        requireOpen();
        entries.replaceAll((id, entry) -> entry.kept().example() ? entry.archived(true) : entry);
    }

    @Override
    public synchronized void restoreExample() {
        requireOpen();
        entries.replaceAll((id, entry) -> entry.kept().example() ? entry.archived(false) : entry);
    }

    @Override
    public synchronized ExampleState exampleState() {
        requireOpen();
        if (entries.values().stream().noneMatch(entry -> entry.kept().example())) {
            return ExampleState.ABSENT;
        }
        return visible().stream().anyMatch(entry -> entry.kept().example()) ? ExampleState.SHOWN : ExampleState.REMOVED;
    }

    @Override
    public synchronized KeptFile keepFile(KeptFile file) {
        requireOpen();
        KeptFile checked = Intake.checked(file);
        boolean car = file.kind() == Kind.CAR;
        String key = (car ? carKey(file.name(), file.example()) : "track " + NameKey.of(file.name()));
        KeptFile kept =
                checked.onRecord(firstSpelling(key, file.name()), Intake.instant(Intake.micros(file.savedAt())));
        String shelf = key + (file.example() ? " of the example" : "");
        KeptFile there = files.get(shelf);
        if (there == null || !there.text().equals(kept.text())) {
            files.put(shelf, kept);
            if (car) {
                steps.measured(key, kept.text(), kept.savedAt());
            }
        }
        return files.getOrDefault(shelf, kept);
    }

    @Override
    public synchronized List<KeptFile> files(Kind kind) {
        requireOpen();
        List<KeptFile> ofKind =
                files.values().stream().filter(file -> file.kind() == kind).toList();
        return FileTables.shown(ofKind, exampleState() == ExampleState.REMOVED);
    }

    @Override
    public synchronized Optional<KeptFile> file(Kind kind, String name) {
        return files(kind).stream()
                .filter(file -> NameKey.of(file.name()).equals(NameKey.of(name)))
                .findFirst();
    }

    @Override
    public synchronized Optional<StoredHistory> history(String car) {
        requireOpen();
        Optional<StoredHistory> own = steps.of(carKey(car, false));
        boolean ownFile = files.containsKey(carKey(car, false));
        return own.isPresent() || ownFile || exampleState() == ExampleState.REMOVED ? own : steps.of(carKey(car, true));
    }

    @Override
    public synchronized StoredHistory log(NewStep step, String requestKey) {
        requireOpen();
        NewStep checked = Intake.checked(step);
        String request = Intake.requestKey(requestKey);
        if (steps.isUsed(request)) {
            return history(step.car()).orElseThrow();
        }
        String key = carKey(step.car(), step.example());
        Instant at = Intake.instant(Intake.micros(step.at()));
        StoredHistory now = steps.log(key, firstSpelling(key, step.car()), checked, at, request);
        putFile(key, step.example(), step.file(), at);
        return now;
    }

    @Override
    public synchronized StoredHistory putOn(String car, long from, long to, Why why, String requestKey, Instant at) {
        requireOpen();
        String request = Intake.requestKey(requestKey);
        if (steps.isUsed(request)) {
            return history(car).orElseThrow();
        }
        String key = carKey(car, false);
        StoredHistory now = steps.putOn(key, from, to, request);
        putFile(key, false, now.presentStep().file(), Intake.instant(Intake.micros(at)));
        return now;
    }

    @Override
    public synchronized Set<String> kindsLogged() {
        requireOpen();
        return steps.kindsLogged();
    }

    @Override
    public synchronized Drive begin(NewDrive drive, String requestKey, Instant at) {
        requireOpen();
        return drives.begin(Intake.checked(drive), Intake.requestKey(requestKey), Intake.instant(Intake.micros(at)));
    }

    @Override
    public synchronized Written happened(long drive, List<DriveEvent> events, Instant at) {
        requireOpen();
        List<DriveEvent> checked = events.stream().map(Intake::checked).toList();
        return drives.add(Intake.requireGoesOn(drive, drives.numbered(drive), checked), checked);
    }

    @Override
    public synchronized Mark mark() {
        requireOpen();
        return drives.mark();
    }

    @Override
    public synchronized Optional<Drive> open() {
        requireOpen();
        return drives.open();
    }

    @Override
    public synchronized OptionalLong driveKeptAs(long comparison) {
        requireOpen();
        return requests.entrySet().stream()
                .filter(request -> request.getValue() == comparison)
                .map(request -> DriveStore.driveToKeep(request.getKey()))
                .flatMapToLong(OptionalLong::stream)
                .findFirst();
    }

    @Override
    public synchronized Optional<Drive> drive(long id) {
        requireOpen();
        return drives.numbered(id);
    }

    @Override
    public synchronized Part addPart(NewPart part, String requestKey, Instant at) {
        requireOpen();
        return shelf.add(Intake.checked(part), Intake.requestKey(requestKey));
    }

    @Override
    public synchronized void partHappened(long part, PartEvent event, String requestKey, Instant at) {
        requireOpen();
        PartEvent checked = Intake.checked(event);
        String request = Intake.requestKey(requestKey);
        Intake.requirePart(part, shelf.has(part));
        if (!shelf.isSaid(request)) {
            PartEvent named =
                    checked instanceof PartEvent.Fitted fitted ? new PartEvent.Fitted(carSpelt(fitted.car())) : checked;
            shelf.add(part, named, request, Intake.instant(Intake.micros(at)));
        }
    }

    @Override
    public synchronized ShelfRecord shelf() {
        requireOpen();
        List<LapsDriven> driven = new ArrayList<>();
        for (Entry entry : entries.values()) {
            if (!entry.kept().example()) {
                entry.kept()
                        .session()
                        .runs()
                        .forEach(run -> driven.add(new LapsDriven(
                                carSpelt(entry.kept().car()),
                                run.run().laps().size(),
                                entry.saved().savedAt())));
            }
        }
        return shelf.all(driven);
    }

    @Override
    public synchronized void keepList(ListKind kind, String text, Instant at) {
        requireOpen();
        lists.put(kind, Intake.list(text));
    }

    @Override
    public synchronized Optional<String> list(ListKind kind) {
        requireOpen();
        return Optional.ofNullable(lists.get(kind));
    }

    @Override
    public synchronized void keepPhoto(String car, byte[] jpeg, Instant at) {
        requireOpen();
        photos.put(NameKey.of(car), Intake.photo(car, jpeg));
    }

    @Override
    public synchronized void removePhoto(String car) {
        requireOpen();
        photos.remove(NameKey.of(car));
    }

    @Override
    public synchronized boolean hasPhoto(String car) {
        requireOpen();
        return photos.containsKey(NameKey.of(car));
    }

    @Override
    public synchronized Optional<byte[]> photo(String car) {
        requireOpen();
        return Optional.ofNullable(photos.get(NameKey.of(car))).map(byte[]::clone);
    }

    private void putFile(String key, boolean example, String text, Instant at) {
        String name = Optional.ofNullable(names.get(key)).orElseThrow();
        files.put(key + (example ? " of the example" : ""), new KeptFile(Kind.CAR, name, text, example, at));
    }

    @Override
    public synchronized void close() {
        closed = true;
    }

    private void requireOpen() {
        if (closed) {
            throw new StoreException("The garage is closed. Nothing was changed. Start Lapwright again.");
        }
    }

    private Entry entry(long id) {
        return Optional.ofNullable(entries.get(id)).orElseThrow(() -> Intake.noComparison(id));
    }

    private List<Entry> visible() {
        return entries.values().stream().filter(entry -> !entry.archived()).toList();
    }

    private List<SavedComparison> newestFirst(boolean archived) {
        return entries.values().stream()
                .filter(entry -> entry.archived() == archived)
                .map(Entry::saved)
                .sorted(Comparator.comparing(SavedComparison::savedAt)
                        .thenComparing(SavedComparison::id)
                        .reversed())
                .toList();
    }

    private Optional<Entry> latest(String carKey) {
        return latest(visible(), carKey);
    }

    private static Optional<Entry> latest(List<Entry> entries, String carKey) {
        return entries.stream().filter(entry -> entry.carKey().equals(carKey)).reduce((older, newer) -> newer);
    }

    private static long setUpOf(List<Entry> entries, String carKey) {
        return latest(entries, carKey)
                .map(entry -> entry.setUp(entry.kept().stays()))
                .orElse(0L);
    }

    private static List<LaneRun> runsOf(Entry entry, long setUp) {
        return entry.kept().session().runs().stream()
                .filter(run -> entry.setUp(run.side()) == setUp)
                .map(run -> new LaneRun(entry.kept().lane(), run.run()))
                .toList();
    }

    private static String carKey(String car, boolean example) {
        return (example ? "example car " : "car ") + NameKey.of(car);
    }

    private KeptComparison named(KeptComparison kept) {
        String trackKey = NameKey.of(kept.track());
        return Intake.named(
                kept,
                firstSpelling(carKey(kept.car(), kept.example()), kept.car()),
                firstSpelling("track " + trackKey, kept.track()),
                firstSpelling("lane " + trackKey + '\n' + NameKey.of(kept.lane()), kept.lane()),
                firstSpelling("driver " + NameKey.of(kept.driver()), kept.driver()));
    }

    private String carSpelt(String name) {
        return firstSpelling(carKey(name, false), name);
    }

    private String firstSpelling(String key, String name) {
        String first = names.putIfAbsent(key, name);
        return first == null ? name : first;
    }
}
