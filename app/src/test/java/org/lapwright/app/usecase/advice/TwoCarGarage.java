package org.lapwright.app.usecase.advice;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.OptionalLong;
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
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** A garage with two cars and a track; comparisons are kept at noon. */
final class TwoCarGarage {
    static final Instant MORNING = Instant.parse("2026-03-01T08:00:00Z");
    static final Instant EVENING = Instant.parse("2026-03-01T20:00:00Z");
    static final String CAR = resource("dunlin.car.json");
    private static final String TRACK = resource("shed-loop.track.json");
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);

    final MemoryGarage garage = new MemoryGarage();
    final KnownDriver driver = new KnownDriver(garage);
    final Track track = TrackFile.read(TRACK).accepted().map(TrackFile::track).orElseThrow();
    private final KeepComparison keeping = new KeepComparison(garage, new JudgeChange(), driver, NOON);

    TwoCarGarage() {
        OwnGarage files = new OwnGarage(garage, NOON);
        files.keepCar("Dunlin", CAR);
        files.keepCar("Knot", CAR.replace("\"Dunlin\"", "\"Knot\""));
        files.keepTrack(track.name(), TRACK);
    }

    private static String resource(String name) {
        try (InputStream text = TwoCarGarage.class.getResourceAsStream("/example/" + name)) {
            return new String(text.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Keeps a comparison on the red lane. */
    void keep(String car, String by, String change, Side stays, Session session) {
        keeping.keep(
                new KeptComparison(
                        car, track.name(), "red", by, "", change, stays, session, TrialSettings.DEFAULT, false),
                car + by + change);
    }

    /** Logs the first change of the Dunlin; says what was done. */
    String log(Change change, Instant at) {
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
}
