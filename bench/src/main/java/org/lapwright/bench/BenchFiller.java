package org.lapwright.bench;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalLong;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.ChangeJson;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.store.SqliteGarage;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.bench.LogChange;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.BallastChange;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.units.Reading;

/** Fills a garage with many cars that each have a long history, and with laps of them. */
public final class BenchFiller {
    private static final Instant AT = Instant.parse("2026-01-01T00:00:00Z");

    private final SqliteGarage store;
    private final LogChange log;
    private final OwnGarage garage;

    private BenchFiller(SqliteGarage store) {
        this.store = store;
        Clock clock = Clock.fixed(AT, ZoneOffset.UTC);
        log = new LogChange(store, clock);
        garage = new OwnGarage(store, clock);
    }

    /** Fills the file named first with so many cars, set-ups of each, and comparisons of 60 laps. */
    public static void main(String[] arguments) {
        try (SqliteGarage store = SqliteGarage.open(Path.of(arguments[0]))) {
            BenchFiller filler = new BenchFiller(store);
            filler.track();
            for (int car = 0; car < Integer.parseInt(arguments[1]); car++) {
                filler.car("car " + car, Integer.parseInt(arguments[2]));
            }
            filler.laps(Integer.parseInt(arguments[3]), Integer.parseInt(arguments[1]));
        }
    }

    private void track() {
        garage.keepTrack("track", TrackFile.of(InventedCars.track()).text().replace("\"loop\"", "\"track\""));
    }

    /** Every second change puts the piece back to where it was before. */
    private void car(String name, int setUps) {
        String first = CarFile.of(named(name)).text();
        garage.keepCar(name, first);
        CarFile file = CarFile.read(first).accepted().orElseThrow();
        OptionalLong onto = OptionalLong.empty();
        for (int i = 1; i < setUps; i++) {
            Change change = new BallastChange.Moved(
                    "lead", Reading.exact(20 + i % 40), Reading.exact(i % 9 - 4), Reading.exact(3));
            LogChange.Doing doing = new LogChange.Doing(name, onto, file.text(), file.build(), change, "");
            file = file.with(change.apply(file.build()));
            StoredHistory history = log.log(doing, ChangeJson.write(change, ""), file.text(), "fill " + name + " " + i);
            onto = OptionalLong.of(history.present());
        }
    }

    private static SetUp named(String name) {
        SetUp low = InventedCars.lowSetUp();
        Ballast lead = new Ballast("lead", Reading.exact(5), Reading.exact(20), Reading.exact(0), Reading.exact(3));
        return new SetUp(
                name,
                low.chassis(),
                low.mass(),
                List.of(lead),
                low.guide(),
                low.rearTyre(),
                low.gears(),
                low.motor(),
                low.magnet(),
                low.drag(),
                low.pickupOhm());
    }

    private void laps(int comparisons, int cars) {
        for (int i = comparisons; i > 0; i--) {
            store.keep(GarageFiller.comparison(i, cars), GarageFiller.VERDICT, "fill laps " + i, AT.plusSeconds(i));
        }
    }
}
