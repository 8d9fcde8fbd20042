package org.lapwright.app.usecase.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
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
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.TyreChange;
import org.lapwright.core.fit.CarFit;
import org.lapwright.core.fit.Learned;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;
import org.lapwright.core.units.Reading;

class OwnLapsTest {
    private static final Instant MORNING = Instant.parse("2026-03-01T08:00:00Z");
    private static final Instant EVENING = Instant.parse("2026-03-01T20:00:00Z");
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);
    private static final String CAR = resource("dunlin.car.json");
    private static final String TRACK = resource("shed-loop.track.json");

    private final MemoryGarage garage = new MemoryGarage();
    private final KnownDriver driver = new KnownDriver(garage);
    private final KeepComparison keeping = new KeepComparison(garage, new JudgeChange(), driver, NOON);
    private final OwnLaps ownLaps = new OwnLaps(
            garage,
            driver,
            new LearnCar(new CarFit.Settings(2, 500, 100, 0.9, 1)),
            new OwnLaps.Reader(
                    text -> CarFile.read(text).accepted().map(CarFile::setUp),
                    text -> TrackFile.read(text).accepted().map(TrackFile::track)));
    private final Track track =
            TrackFile.read(TRACK).accepted().map(TrackFile::track).orElseThrow();

    private static String resource(String name) {
        try (InputStream text = OwnLapsTest.class.getResourceAsStream("/example/" + name)) {
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

    private static TimedRun laps(double pace) {
        double[] seconds = new double[20];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = pace * (1 + 0.01 * Math.sin(2.4 * i));
        }
        return TimedRun.of(seconds);
    }

    private void keep(String car, String by, String change, Side stays) {
        Session session = Session.of(laps(6.4), laps(6.3));
        keeping.keep(
                new KeptComparison(car, track.name(), "red", by, change, stays, session, TrialSettings.DEFAULT, false),
                car + by + change);
    }

    private Optional<OwnLaps.Answer> learn() {
        return ownLaps.learn(
                "Dunlin", CarFile.read(CAR).accepted().orElseThrow().setUp(), track);
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
    void withoutLapsNothingIsLearned() {
        assertThat(learn()).isEmpty();
    }

    /** Of a change that was never logged only the side that stayed is known. */
    @Test
    void theSideThatStayedIsTheCarAsItIs() {
        keep("Dunlin", "me", "something", Side.AFTER);
        Learned learned = learn().orElseThrow().learned();
        assertThat(learned.diagnosis().paces()).isEqualTo(1);
        assertThat(learned.lanes().get(0).measuredS().orElseThrow()).isBetween(6.25, 6.35);
    }

    @Test
    void ofALoggedChangeBothSidesAreKnown() {
        String words = log(new TyreChange.Trued(Reading.exact(19.6)), MORNING);
        keep("Dunlin", "me", words, Side.AFTER);
        assertThat(learn().orElseThrow().learned().diagnosis().paces()).isEqualTo(2);
    }

    /** What was logged later was not on the car when it was driven. */
    @Test
    void lapsBeforeAllChangesAreThoseOfTheFirstSetUp() {
        keep("Dunlin", "me", "something", Side.BEFORE);
        log(new TyreChange.Trued(Reading.exact(19.6)), EVENING);
        Learned learned = learn().orElseThrow().learned();
        assertThat(learned.diagnosis().paces()).isEqualTo(1);
        assertThat(learned.lanes().get(0).measuredS().orElseThrow()).isBetween(6.35, 6.45);
    }

    /** The same hand on another car tells of the driver; another hand does not. */
    @Test
    void otherCarsOfTheSameDriverTellOfTheDriver() {
        keep("Dunlin", "me", "something", Side.AFTER);
        keep("Knot", "my daughter", "something", Side.AFTER);
        assertThat(learn().orElseThrow().others()).isEmpty();
        keep("Knot", "me", "something else", Side.AFTER);
        assertThat(learn().orElseThrow().others()).isEqualTo(List.of("Knot"));
    }
}
