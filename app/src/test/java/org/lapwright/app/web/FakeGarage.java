package org.lapwright.app.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.session.DrivenRun;

/** A store in memory that can be told to fail. */
final class FakeGarage implements GarageStore {
    private final List<SavedComparison> saved = new ArrayList<>();
    private final Map<String, SavedComparison> byKey = new HashMap<>();
    private final Set<Long> archived = new HashSet<>();
    private ExampleState example = ExampleState.ABSENT;
    private String failure = "";

    /** From now on saving fails with this sentence; an empty one mends it. */
    synchronized void failWith(String sentence) {
        failure = sentence;
    }

    synchronized void putExample(ExampleState state) {
        example = state;
    }

    synchronized int size() {
        return saved.size();
    }

    @Override
    public synchronized SavedComparison keep(
            KeptComparison comparison, Verdict verdict, String requestKey, Instant at) {
        if (!failure.isEmpty()) {
            throw new StoreException(failure);
        }
        if (requestKey.isEmpty() || requestKey.length() > 80) {
            throw new StoreException("the request key has " + requestKey.length() + " characters");
        }
        return byKey.computeIfAbsent(requestKey, key -> {
            SavedComparison added = new SavedComparison(saved.size() + 1, at, comparison);
            saved.add(added);
            return added;
        });
    }

    @Override
    public synchronized List<SavedComparison> comparisons() {
        List<SavedComparison> newestFirst = new ArrayList<>();
        saved.stream().filter(this::isListed).forEach(one -> newestFirst.add(0, one));
        return newestFirst;
    }

    @Override
    public synchronized Optional<SavedComparison> comparison(long id) {
        return saved.stream().filter(one -> one.id() == id).findFirst();
    }

    @Override
    public synchronized List<String> tracks() {
        return comparisons().stream().map(one -> one.kept().track()).distinct().toList();
    }

    @Override
    public synchronized List<CarLaps> lapsOnTrack(String track) {
        Map<String, List<TimedRun>> cars = new LinkedHashMap<>();
        for (SavedComparison one : comparisons()) {
            KeptComparison kept = one.kept();
            if (kept.track().equals(track)) {
                List<TimedRun> runs = cars.computeIfAbsent(kept.car(), car -> new ArrayList<>());
                kept.session().runs().stream()
                        .filter(run -> run.side() == kept.stays())
                        .map(DrivenRun::run)
                        .forEach(runs::add);
            }
        }
        return cars.entrySet().stream()
                .map(car -> new CarLaps(car.getKey(), car.getValue()))
                .toList();
    }

    @Override
    public synchronized boolean isExample(String car) {
        return saved.stream()
                .anyMatch(one -> one.kept().car().equals(car) && one.kept().example());
    }

    @Override
    public synchronized void archive(long id, Instant at) {
        archived.add(id);
    }

    @Override
    public synchronized void restore(long id) {
        archived.remove(id);
    }

    @Override
    public synchronized void archiveExample(Instant at) {
        example = ExampleState.REMOVED;
    }

    @Override
    public synchronized void restoreExample() {
        example = ExampleState.SHOWN;
    }

    @Override
    public synchronized ExampleState exampleState() {
        return example;
    }

    @Override
    public void close() {}

    private boolean isListed(SavedComparison one) {
        return !archived.contains(one.id()) && (!one.kept().example() || example == ExampleState.SHOWN);
    }
}
