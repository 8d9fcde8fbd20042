package org.lapwright.app.usecase.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.ChangeJson;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.store.MemoryGarage;
import org.lapwright.app.usecase.HistoryStore.NewStep;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeepComparison;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.KnownDriver;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.change.BallastChange;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.TyreChange;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;
import org.lapwright.core.units.Reading;

class ScoreForecastsTest {
    private static final Instant MORNING = Instant.parse("2026-03-01T08:00:00Z");
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);
    private static final String CAR = resource("dunlin.car.json");
    private static final String TRACK = resource("shed-loop.track.json");

    private final MemoryGarage garage = new MemoryGarage();
    private final KnownDriver driver = new KnownDriver(garage);
    private final KeepComparison keeping = new KeepComparison(garage, new JudgeChange(), driver, NOON);
    private final ScoreForecasts scoring = new ScoreForecasts(
            garage,
            new JudgeChange(),
            new LapForecaster.Settings(0.9, 40, 1),
            new ScoreForecasts.Reader(
                    text -> CarFile.read(text).accepted().map(CarFile::build),
                    text -> TrackFile.read(text).accepted().map(TrackFile::track),
                    text -> ChangeJson.read(text).accepted().map(ChangeJson.Noted::change)));
    private final Track track =
            TrackFile.read(TRACK).accepted().map(TrackFile::track).orElseThrow();

    private static String resource(String name) {
        try (InputStream text = ScoreForecastsTest.class.getResourceAsStream("/example/" + name)) {
            return new String(text.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @BeforeEach
    void keepFiles() {
        OwnGarage files = new OwnGarage(garage, NOON);
        files.keepCar("Dunlin", CAR);
        files.keepCar("Knot", CAR.replace("\"Dunlin\"", "\"Knot\""));
        files.keepTrack(track.name(), TRACK);
    }

    /** Laps about a pace; how they scatter is the same on both sides. */
    private static TimedRun laps(double pace, int run) {
        double[] seconds = new double[15];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = pace * (1 + 0.006 * Math.sin(2.4 * i + run));
        }
        return TimedRun.of(seconds);
    }

    private void drive(String change, double share) {
        double pace = 6.4;
        List<DrivenRun> runs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Side side = i == 0 || i == 3 ? Side.BEFORE : Side.AFTER;
            runs.add(new DrivenRun(side, laps(side == Side.AFTER ? pace * (1 + share) : pace, i)));
        }
        keeping.keep(
                new KeptComparison(
                        "Dunlin",
                        track.name(),
                        "red",
                        "me",
                        change,
                        Side.AFTER,
                        new Session(runs),
                        TrialSettings.DEFAULT,
                        false),
                change);
    }

    private String log(Change change, Instant at) {
        CarFile before = CarFile.read(CAR).accepted().orElseThrow();
        String words = change.sentence(before.build());
        garage.log(
                new NewStep(
                        "Dunlin",
                        OptionalLong.empty(),
                        CAR,
                        change.kind().code(),
                        words,
                        ChangeJson.write(change, ""),
                        before.with(change.apply(before.build())).text(),
                        false,
                        at),
                "key");
        return words;
    }

    @Test
    void withoutADrivenChangeThereIsNothingToScore() {
        log(new TyreChange.Trued(Reading.exact(19.6)), MORNING);
        drive("something that nobody logged", -0.01);
        ScoreForecasts.Score score = scoring.score();
        assertThat(score.rows()).isEmpty();
        assertThat(score.kinds()).isEmpty();
    }

    /** 10 g over the rear axle: the model says what it says, and laps that agree are a hit, laps far off are none. */
    @Test
    void lapsThatAgreeAreAHitAndLapsFarOffAreNot() {
        String words = log(
                new BallastChange.Added(
                        new Ballast("tail", Reading.exact(10), Reading.exact(0), Reading.exact(0), Reading.exact(4))),
                MORNING);
        drive(words, 0);
        double expected = scoring.score().rows().get(0).forecast().orElseThrow().middle();
        assertThat(expected).isBetween(-0.05, 0.05);
        ScoreForecastsTest agreeing = new ScoreForecastsTest();
        agreeing.keepFiles();
        agreeing.log(
                new BallastChange.Added(
                        new Ballast("tail", Reading.exact(10), Reading.exact(0), Reading.exact(0), Reading.exact(4))),
                MORNING);
        agreeing.drive(words, expected);
        assertThat(agreeing.scoring.score().hits()).isEqualTo(1);
        ScoreForecastsTest far = new ScoreForecastsTest();
        far.keepFiles();
        far.log(
                new BallastChange.Added(
                        new Ballast("tail", Reading.exact(10), Reading.exact(0), Reading.exact(0), Reading.exact(4))),
                MORNING);
        far.drive(words, expected + 0.06);
        ScoreForecasts.Score missed = far.scoring.score();
        assertThat(missed.forecasts()).isEqualTo(1);
        assertThat(missed.hits()).isZero();
        ScoreForecasts.OfKind kind = missed.kinds().get(0);
        assertThat(kind.count()).isEqualTo(1);
        assertThat(kind.bias().orElseThrow().middle()).isCloseTo(0.06, within(0.005));
        assertThat(kind.given().middle()).isCloseTo(expected + 0.06, within(0.005));
    }
}
