package org.lapwright.app.usecase.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.lapwright.app.usecase.FileStore;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.HistoryStore.StoredStep;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.KnownDriver;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.advice.LearnCar.Driven;
import org.lapwright.app.usecase.advice.LearnCar.LaneRun;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.fit.Learned;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.Side;

/** What do all laps kept in the garage tell of a car? Nothing is kept of the answer: it is always that of the laps there are. */
public final class OwnLaps {
    private final GarageStore garage;
    private final KnownDriver driver;
    private final LearnCar learnCar;
    private final Reader reader;

    /**
     * How files are read.
     *
     * @param car a car file; empty when it cannot be read
     * @param track a track file; empty when it cannot be read
     */
    public record Reader(Function<String, Optional<SetUp>> car, Function<String, Optional<Track>> track) {}

    /** Learns from the comparisons of {@code garage}. */
    public OwnLaps(GarageStore garage, KnownDriver driver, LearnCar learnCar, Reader reader) {
        this.garage = garage;
        this.driver = driver;
        this.learnCar = learnCar;
        this.reader = reader;
    }

    /**
     * What was learned, and from what.
     *
     * @param learned what the laps tell
     * @param others names of the other cars whose laps told of the driver
     */
    public record Answer(Learned learned, List<String> others) {
        /** Copies the list. */
        public Answer {
            others = List.copyOf(others);
        }
    }

    /**
     * Learns a car on a track.
     *
     * @param name of the car
     * @param now the car as it is
     * @param track the track
     * @return empty when none of its runs there can be used
     * @throws IllegalArgumentException if the car does not get round, with what would be right
     */
    public Optional<Answer> learn(String name, SetUp now, Track track) {
        List<SavedComparison> all = garage.comparisons();
        List<SavedComparison> own = of(all, name, track.name());
        List<LaneRun> runs = runs(name, now, track, own);
        if (runs.isEmpty()) {
            return Optional.empty();
        }
        String hand = own.get(0).kept().driver();
        Map<String, Driven> others = new LinkedHashMap<>();
        for (SavedComparison each : all) {
            String car = each.kept().car();
            if (!car.equals(name)
                    && !others.containsKey(car)
                    && each.kept().driver().equals(hand)) {
                other(car, each.kept().track(), all).ifPresent(found -> others.put(car, found));
            }
        }
        Learned learned = learnCar.learn(new Driven(now, track, runs), List.copyOf(others.values()), driver.prior());
        return Optional.of(new Answer(learned, List.copyOf(others.keySet())));
    }

    private Optional<Driven> other(String name, String trackName, List<SavedComparison> all) {
        Optional<SetUp> car =
                garage.file(FileStore.Kind.CAR, name).map(KeptFile::text).flatMap(reader.car());
        Optional<Track> track =
                garage.file(FileStore.Kind.TRACK, trackName).map(KeptFile::text).flatMap(reader.track());
        if (car.isEmpty() || track.isEmpty()) {
            return Optional.empty();
        }
        List<LaneRun> runs = runs(name, car.get(), track.get(), of(all, name, trackName));
        return runs.isEmpty() ? Optional.empty() : Optional.of(new Driven(car.get(), track.get(), runs));
    }

    private static List<SavedComparison> of(List<SavedComparison> all, String car, String track) {
        return all.stream()
                .filter(each ->
                        each.kept().car().equals(car) && each.kept().track().equals(track))
                .toList();
    }

    /** Runs of which it is known what was driven: both sides of a logged change; else the side that stayed. */
    private List<LaneRun> runs(String name, SetUp now, Track track, List<SavedComparison> own) {
        List<LaneRun> runs = new ArrayList<>();
        Optional<StoredHistory> history = garage.history(name);
        for (SavedComparison each : own) {
            String lane = track.lanes().stream()
                    .map(Lane::name)
                    .filter(each.kept().lane()::equals)
                    .findFirst()
                    .orElse("");
            for (DrivenRun run : each.kept().session().runs()) {
                setUp(each, run.side(), history, now).ifPresent(setUp -> runs.add(new LaneRun(setUp, lane, run.run())));
            }
        }
        return runs;
    }

    private Optional<SetUp> setUp(SavedComparison of, Side side, Optional<StoredHistory> history, SetUp now) {
        Optional<DrivenStep> step = history.flatMap(found -> DrivenStep.of(found, of));
        if (step.isPresent()) {
            StoredStep driven =
                    side == Side.AFTER ? step.get().after() : step.get().before();
            return reader.car().apply(driven.file());
        }
        return side == of.kept().stays() ? stayed(of, history, now) : Optional.empty();
    }

    /** What stayed on the car: the first set-up if all was logged later, that of now if nothing was; in between nobody knows. */
    private Optional<SetUp> stayed(SavedComparison of, Optional<StoredHistory> history, SetUp now) {
        List<StoredStep> steps = history.map(StoredHistory::steps).orElse(List.of());
        List<StoredStep> logged =
                steps.stream().filter(each -> each.parent().isPresent()).toList();
        if (logged.stream().noneMatch(each -> each.at().isAfter(of.savedAt()))) {
            return Optional.of(now);
        }
        return logged.stream().allMatch(each -> each.at().isAfter(of.savedAt()))
                ? reader.car().apply(steps.get(0).file())
                : Optional.empty();
    }
}
