package org.lapwright.app.main;

import java.time.Clock;
import java.util.Map;
import org.lapwright.app.capture.Gates;
import org.lapwright.app.cli.Commands;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.ChangeJson;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.store.DataFolder;
import org.lapwright.app.store.GarageUpkeep;
import org.lapwright.app.store.SqliteGarage;
import org.lapwright.app.usecase.DescribeLaps;
import org.lapwright.app.usecase.ExampleGarage;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.Glossary;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeepComparison;
import org.lapwright.app.usecase.KnownDriver;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.OwnListStore.ListKind;
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
import org.lapwright.app.web.BenchCases;
import org.lapwright.app.web.PhysicsCases;
import org.lapwright.app.web.RunCases;
import org.lapwright.app.web.UseCases;
import org.lapwright.core.fit.CarFit;
import org.lapwright.core.prediction.LapForecaster;

/** Puts the rooms together, by hand. */
final class Wiring {
    /** A command starts cold, and every car drawn costs: an end is then off by about 0.2 standard deviations. */
    private static final LapForecaster.Settings FOR_A_COMMAND = new LapForecaster.Settings(0.9, 100, 1);
    /** A page has to come while somebody waits: an end of the interval is then off by about 0.12 standard deviations. */
    private static final LapForecaster.Settings FOR_A_PAGE = new LapForecaster.Settings(0.9, 300, 1);

    /** While somebody types: what is drawn twice parts little, so fewer cars do. */
    private static final LapForecaster.Settings FOR_A_CHANGE = new LapForecaster.Settings(0.9, 80, 1);

    /** A best set-up takes a few seconds of two processors. */
    private static final int BEST_PREDICTIONS = 60_000;

    /** The finalists are tried on so many cars. */
    private static final int ADVICE_DRAWS = 200;

    private static final OwnLaps.Reader READER = new OwnLaps.Reader(
            text -> CarFile.read(text).accepted().map(CarFile::setUp),
            text -> TrackFile.read(text).accepted().map(TrackFile::track));

    private static final ScoreForecasts.Reader SCORE_READER = new ScoreForecasts.Reader(
            text -> CarFile.read(text).accepted().map(CarFile::build),
            READER.track(),
            text -> ChangeJson.read(text).accepted().map(ChangeJson.Noted::change));

    private final Map<String, String> environment;
    private final Clock clock = Clock.systemUTC();
    private final JudgeChange judgeChange = new JudgeChange();
    private final DescribeLaps describeLaps = new DescribeLaps();
    private final WorkOutNumbers workOutNumbers = new WorkOutNumbers();
    private final PredictLap predictLap = new PredictLap();
    private final ForecastLap forecastLap = new ForecastLap(FOR_A_PAGE);
    private final SuggestChanges suggestChanges = new SuggestChanges(ADVICE_DRAWS);
    private final FindBestSetUp findBestSetUp = new FindBestSetUp(BEST_PREDICTIONS, ADVICE_DRAWS);
    private final LearnCar learnCar = new LearnCar(CarFit.Settings.USUAL);
    private final Glossary glossary = new Glossary();

    Wiring(Map<String, String> environment) {
        this.environment = environment;
    }

    Commands.LapQuestions lapQuestions() {
        return new Commands.LapQuestions(describeLaps, judgeChange);
    }

    Commands.PhysicsQuestions physicsQuestions() {
        return new Commands.PhysicsQuestions(
                workOutNumbers, new ForecastLap(FOR_A_COMMAND), suggestChanges, findBestSetUp, learnCar);
    }

    Glossary glossary() {
        return glossary;
    }

    /** The data folder, made when it is not there yet. */
    DataFolder dataFolder() {
        return DataFolder.of(environment, System.getProperty("user.home")).create();
    }

    GarageStore openGarage(DataFolder folder) {
        return SqliteGarage.open(folder.garage());
    }

    /** What looks after the garage on disk; the garage itself stays closed. */
    GarageUpkeep upkeep() {
        return new GarageUpkeep(dataFolder().garage());
    }

    GarageStore openGarage() {
        return openGarage(dataFolder());
    }

    ExampleGarage exampleGarage(GarageStore garage) {
        return new ExampleGarage(garage, judgeChange, clock, ExampleEvening::on);
    }

    UseCases useCases(GarageStore garage) {
        KnownDriver knownDriver = new KnownDriver(garage);
        KeepComparison keepComparison = new KeepComparison(garage, judgeChange, knownDriver, clock);
        DriveLive driveLive = new DriveLive(garage, judgeChange, keepComparison, knownDriver, clock);
        return new UseCases(
                describeLaps,
                judgeChange,
                knownDriver,
                keepComparison,
                new ShowKept(garage, knownDriver, clock),
                new ShowLadder(garage, knownDriver, clock),
                glossary,
                new PhysicsCases(
                        new OwnGarage(garage, clock),
                        new OwnList(garage, ListKind.PIECES, clock),
                        workOutNumbers,
                        predictLap,
                        new ForecastLap(FOR_A_PAGE)),
                new BenchCases(
                        new LogChange(garage, clock),
                        new ForeseeChange(FOR_A_CHANGE),
                        suggestChanges,
                        new BestSetUpSearches(findBestSetUp),
                        new OwnLaps(garage, knownDriver, learnCar, READER),
                        new ScoreForecasts(garage, judgeChange, FOR_A_CHANGE, SCORE_READER),
                        new KeepShelf(garage, clock),
                        new ShowWear(garage, knownDriver),
                        new KeepPhoto(garage, clock),
                        new OwnList(garage, ListKind.CLASSES, clock),
                        new OwnList(garage, ListKind.LABELS, clock)),
                new RunCases(
                        driveLive,
                        new ListenHere(new Gates(System::nanoTime), driveLive),
                        new OwnList(garage, ListKind.GATE, clock),
                        new OwnList(garage, ListKind.SCREENING, clock)));
    }
}
