package org.lapwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.lapwright.app.usecase.FileStore.Kind;
import org.lapwright.app.usecase.GarageStore.ExampleState;
import org.lapwright.app.usecase.KeptFile;

/** Reads and writes car and track files, inside a transaction that is open already. */
final class FileTables {
    private static final String CARS = """
            SELECT car.name, car.example, f.content, f.saved_at
            FROM car_file f
            JOIN car ON car.id = f.car_id
            WHERE f.id IN (SELECT MAX(id) FROM car_file GROUP BY car_id)""";

    private static final String TRACKS = """
            SELECT track.name, f.example, f.content, f.saved_at
            FROM track_file f
            JOIN track ON track.id = f.track_id
            WHERE f.id IN (SELECT MAX(id) FROM track_file GROUP BY track_id, example)""";

    private final Handle handle;

    FileTables(Handle handle) {
        this.handle = handle;
    }

    /** The newest of each name, without those of an example garage that was taken out. */
    List<KeptFile> newest(Kind kind) {
        boolean exampleIsOut = new ComparisonReader(handle).exampleState() == ExampleState.REMOVED;
        return shown(all(kind), exampleIsOut);
    }

    Optional<KeptFile> named(Kind kind, String name) {
        String key = NameKey.of(name);
        return newest(kind).stream()
                .filter(file -> NameKey.of(file.name()).equals(key))
                .findFirst();
    }

    /** Writes a file, unless it is what is there already. */
    KeptFile keep(KeptFile file, long at) {
        Names names = new Names(handle, at);
        boolean car = file.kind() == Kind.CAR;
        Names.Named owner = car ? names.car(file.name(), file.example()) : names.track(file.name());
        Optional<KeptFile> there = all(file.kind()).stream()
                .filter(kept -> kept.name().equals(owner.name()) && kept.example() == file.example())
                .filter(kept -> kept.text().equals(file.text()))
                .findFirst();
        if (there.isPresent()) {
            return there.get();
        }
        if (car) {
            add(owner, names.presentSetUp(owner), file, at);
            new StepTables(handle, at).measured(owner, file);
        } else {
            addTrackFile(owner, file, at);
        }
        return file.onRecord(owner.name(), Intake.instant(at));
    }

    /** By name; where the owner has one of a name, that of the example garage is left out. */
    static List<KeptFile> shown(List<KeptFile> files, boolean exampleIsOut) {
        Map<String, KeptFile> byName = new LinkedHashMap<>();
        List<KeptFile> ownLast = new ArrayList<>(files);
        ownLast.removeIf(file -> file.example() && exampleIsOut);
        ownLast.sort(Comparator.comparing((KeptFile file) -> !file.example()));
        ownLast.forEach(file -> byName.put(NameKey.of(file.name()), file));
        return byName.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .toList();
    }

    private List<KeptFile> all(Kind kind) {
        return handle.createQuery(kind == Kind.CAR ? CARS : TRACKS)
                .map((row, context) -> file(kind, row))
                .list();
    }

    private static KeptFile file(Kind kind, ResultSet row) throws SQLException {
        return new KeptFile(
                kind,
                row.getString("name"),
                row.getString("content"),
                row.getBoolean("example"),
                Intake.instant(row.getLong("saved_at")));
    }

    /** Adds the file of a car for one of its set-ups. */
    void add(Names.Named car, long setUp, KeptFile file, long at) {
        handle.createUpdate("INSERT INTO car_file (car_id, set_up_id, content, saved_at)"
                        + " VALUES (:car, :setUp, :content, :at)")
                .bind("car", car.id())
                .bind("setUp", setUp)
                .bind("content", file.text())
                .bind("at", at)
                .execute();
    }

    private void addTrackFile(Names.Named track, KeptFile file, long at) {
        handle.createUpdate("INSERT INTO track_file (track_id, example, content, saved_at)"
                        + " VALUES (:track, :example, :content, :at)")
                .bind("track", track.id())
                .bind("example", file.example())
                .bind("content", file.text())
                .bind("at", at)
                .execute();
    }
}
