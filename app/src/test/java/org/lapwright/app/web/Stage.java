package org.lapwright.app.web;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.ChangeJson;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.DescribeLaps;
import org.lapwright.app.usecase.ExampleGarage;
import org.lapwright.app.usecase.Glossary;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeepComparison;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.KnownDriver;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.OwnListStore.ListKind;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.ShelfStore.NewPart;
import org.lapwright.app.usecase.ShowKept;
import org.lapwright.app.usecase.ShowLadder;
import org.lapwright.app.usecase.advice.BestSetUpSearches;
import org.lapwright.app.usecase.advice.FindBestSetUp;
import org.lapwright.app.usecase.advice.LearnCar;
import org.lapwright.app.usecase.advice.OwnLaps;
import org.lapwright.app.usecase.advice.ScoreForecasts;
import org.lapwright.app.usecase.advice.SuggestChanges;
import org.lapwright.app.usecase.bench.ForeseeChange;
import org.lapwright.app.usecase.bench.KeepPhoto;
import org.lapwright.app.usecase.bench.KeepShelf;
import org.lapwright.app.usecase.bench.LogChange;
import org.lapwright.app.usecase.bench.ShowWear;
import org.lapwright.app.usecase.physics.ForecastLap;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.usecase.physics.PredictLap;
import org.lapwright.app.usecase.physics.WorkOutNumbers;
import org.lapwright.app.usecase.run.DriveLive;
import org.lapwright.app.usecase.run.ListenHere;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.car.shelf.PartKind;
import org.lapwright.core.fit.CarFit;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** The web app on a free port with a garage in memory. */
final class Stage implements AutoCloseable {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-14T19:30:00Z"), ZoneOffset.UTC);

    /** Enough to fill a page. */
    private static final LapForecaster.Settings FEW_DRAWS = new LapForecaster.Settings(0.9, 40, 1);

    private final FakeGarage garage = new FakeGarage();
    private final OwnGarage ownGarage = new OwnGarage(garage, CLOCK);
    private final KnownDriver knownDriver = new KnownDriver(garage);
    private final KeepComparison keepComparison;
    private final FakeGates gates = new FakeGates();
    private final WebApp app;

    Stage() {
        this(0, new JudgeChange());
    }

    private Stage(int port, JudgeChange judge) {
        keepComparison = new KeepComparison(garage, judge, knownDriver, CLOCK);
        DriveLive driveLive = new DriveLive(garage, judge, keepComparison, knownDriver, CLOCK);
        app = new WebApp(new UseCases(
                        new DescribeLaps(),
                        judge,
                        knownDriver,
                        keepComparison,
                        new ShowKept(garage, knownDriver, CLOCK),
                        new ShowLadder(garage, knownDriver, CLOCK),
                        new Glossary(),
                        new PhysicsCases(
                                ownGarage,
                                new OwnList(garage, ListKind.PIECES, CLOCK),
                                new WorkOutNumbers(),
                                new PredictLap(),
                                new ForecastLap(FEW_DRAWS)),
                        new BenchCases(
                                new LogChange(garage, CLOCK),
                                new ForeseeChange(FEW_DRAWS),
                                new SuggestChanges(12),
                                new BestSetUpSearches(new FindBestSetUp(2000, 12)),
                                new OwnLaps(
                                        garage,
                                        knownDriver,
                                        new LearnCar(new CarFit.Settings(2, 500, 100, 0.9, 1)),
                                        new OwnLaps.Reader(
                                                text -> CarFile.read(text)
                                                        .accepted()
                                                        .map(CarFile::setUp),
                                                text -> TrackFile.read(text)
                                                        .accepted()
                                                        .map(TrackFile::track))),
                                new ScoreForecasts(
                                        garage,
                                        judge,
                                        FEW_DRAWS,
                                        new ScoreForecasts.Reader(
                                                text -> CarFile.read(text)
                                                        .accepted()
                                                        .map(CarFile::build),
                                                text -> TrackFile.read(text)
                                                        .accepted()
                                                        .map(TrackFile::track),
                                                text -> ChangeJson.read(text)
                                                        .accepted()
                                                        .map(ChangeJson.Noted::change))),
                                new KeepShelf(garage, CLOCK),
                                new ShowWear(garage, knownDriver),
                                new KeepPhoto(garage, CLOCK),
                                new OwnList(garage, ListKind.CLASSES, CLOCK),
                                new OwnList(garage, ListKind.LABELS, CLOCK)),
                        new RunCases(
                                driveLive,
                                new ListenHere(gates, driveLive),
                                new OwnList(garage, ListKind.GATE, CLOCK),
                                new OwnList(garage, ListKind.SCREENING, CLOCK))))
                .start(port);
    }

    /** On a port of one's choice. */
    static Stage on(int port) {
        return new Stage(port, new JudgeChange());
    }

    /** With a judge that has a fault in it. */
    static Stage thatFails() {
        return new Stage(0, new JudgeChange((session, settings) -> {
            throw new IllegalStateException("secret");
        }));
    }

    /** The reference tracks and cars; one more car has doubts. */
    Stage withReferenceFiles() {
        OwnGarage own = ownGarage;
        for (String track : List.of("hill", "long", "loop")) {
            String text = Reference.text(track + ".track.json");
            own.keepTrack(TrackFile.read(text).accepted().orElseThrow().track().name(), text);
        }
        for (String car : List.of("magnet", "plain", "soft", "tall")) {
            own.keepCar(car, Reference.text(car + ".car.json"));
        }
        own.keepCar(
                "Dunlin",
                Reference.text("plain.car.json")
                        .replace("\"name\": \"plain\"", "\"name\": \"Dunlin\"")
                        .replace("\"grip\": 1.05", "\"grip\": { \"value\": 1.12, \"plus_minus\": 0.04 }"));
        return this;
    }

    /** Cars and tracks on file. */
    OwnGarage ownGarage() {
        return ownGarage;
    }

    KnownDriver knownDriver() {
        return knownDriver;
    }

    FakeGarage garage() {
        return garage;
    }

    FakeGates gates() {
        return gates;
    }

    int port() {
        return app.port();
    }

    String url(String path) {
        return "http://127.0.0.1:" + app.port() + path;
    }

    /** Cars named after wading birds on an invented track. */
    Stage withExampleGarage() {
        new ExampleGarage(garage, new JudgeChange(), CLOCK).putInAtFirstStart();
        return this;
    }

    /** The reference cars and one track on the bench. */
    Stage withBench() {
        for (String car : List.of("plain", "magnet", "soft", "tall")) {
            ownGarage.keepCar(car, Reference.text(car + ".car.json"));
        }
        ownGarage.keepTrack("Shed loop", Reference.text("loop.track.json"));
        return this;
    }

    /** One part, fitted to a car of {@link #withBench}, with a service that is due. */
    Stage withAPart() {
        KeepShelf shelf = new KeepShelf(garage, CLOCK);
        long part = shelf.add(new NewPart(new PartKind("braid"), "wide pair", "from the swap box"), "part")
                .id();
        shelf.happened(part, new PartEvent.Fitted("plain"), "fit");
        shelf.happened(part, new PartEvent.Reminder("new braid", 200), "remind");
        shelf.happened(part, new PartEvent.LapsAdded(250), "laps");
        return this;
    }

    /** A kept comparison of the racer's own, 20 laps a side about these paces, always the same for the same seed. */
    SavedComparison keep(String car, double before, double after, long seed) {
        Session session = Session.of(run(before, seed), run(after, seed + 1000));
        KeptComparison kept = new KeptComparison(
                car, "Shed loop", "red", "", "", "", Side.AFTER, session, TrialSettings.DEFAULT, false);
        return keepComparison.keep(kept, car + " " + seed);
    }

    /** The same car twice on a lane of the racer's own track: a set-up that stays as it is. */
    void keepOn(String lane, String car, double pace, long seed) {
        Session session = Session.of(run(pace, seed), run(pace, seed + 1000));
        KeptComparison kept = new KeptComparison(
                car, "Shed loop", lane, "", "", "", Side.BEFORE, session, TrialSettings.DEFAULT, false);
        keepComparison.keep(kept, car + " " + lane + " " + seed);
    }

    private static TimedRun run(double pace, long seed) {
        return TimedRun.of(Visitor.laps(pace, 20, seed)
                .lines()
                .mapToDouble(Double::parseDouble)
                .toArray());
    }

    @Override
    public void close() {
        app.close();
    }
}
