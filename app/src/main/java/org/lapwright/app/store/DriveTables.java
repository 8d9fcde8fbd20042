package org.lapwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.lapwright.app.usecase.DriveStore;
import org.lapwright.app.usecase.DriveStore.Drive;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Passed;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Pressed;
import org.lapwright.app.usecase.DriveStore.Mark;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.DriveStore.Press;
import org.lapwright.app.usecase.DriveStore.Written;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;
import org.lapwright.core.trial.session.RunPlan;

/** Reads and writes drives, inside a transaction that is open already. */
final class DriveTables {
    private static final String PASS = "pass";
    private static final String OPEN = """
            SELECT d.id FROM drive d
            WHERE d.id = (SELECT MAX(id) FROM drive) AND NOT EXISTS (
                SELECT 1 FROM drive_event e WHERE e.drive_id = d.id AND e.kind IN ('kept', 'dropped'))""";
    private static final String ADD_PASS = """
            INSERT INTO drive_event (drive_id, kind, source, boot, sequence, lane, gate, clock, time_ns, arrival_ns, sigma_s,
                happened_at)
            VALUES (:drive, 'pass', :source, :boot, :sequence, :lane, :gate, :clock, :time, :arrival, :sigma, :at)
            ON CONFLICT DO NOTHING""";
    private static final String ADD_PRESS = """
            INSERT INTO drive_event (drive_id, kind, request, happened_at) VALUES (:drive, :kind, :request, :at)
            ON CONFLICT DO NOTHING""";

    private final Handle handle;

    DriveTables(Handle handle) {
        this.handle = handle;
    }

    Drive begin(NewDrive drive, String request, long at) {
        Optional<Long> already = handle.createQuery("SELECT id FROM drive WHERE request = :request")
                .bind("request", request)
                .mapTo(Long.class)
                .findOne();
        long id =
                already.orElseGet(() -> handle.createQuery("INSERT INTO drive (request, car, change_words, track, lane,"
                                + " lane_number, driver, conditions, plan, warm_up, started_at) VALUES (:request, :car, :change,"
                                + " :track, :lane, :number, :driver, :conditions, :plan, :warmUp, :at) RETURNING id")
                        .bind("request", request)
                        .bind("car", drive.car())
                        .bind("change", drive.change())
                        .bind("track", drive.track())
                        .bind("lane", drive.lane())
                        .bind("number", drive.laneNumber())
                        .bind("driver", drive.driver())
                        .bind("conditions", drive.conditions())
                        .bind("plan", drive.plan().text())
                        .bind("warmUp", drive.warmUp())
                        .bind("at", at)
                        .mapTo(Long.class)
                        .one());
        return numbered(id).orElseThrow();
    }

    Optional<Drive> open() {
        return handle.createQuery(OPEN).mapTo(Long.class).findOne().flatMap(this::numbered);
    }

    Optional<Drive> numbered(long id) {
        return handle.createQuery("SELECT * FROM drive WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> drive(row, events(id)))
                .findOne();
    }

    OptionalLong keptAs(long comparison) {
        return handle
                .createQuery("SELECT request FROM request_key WHERE comparison_id = :id")
                .bind("id", comparison)
                .mapTo(String.class)
                .stream()
                .map(request -> DriveStore.driveToKeep(request))
                .flatMapToLong(OptionalLong::stream)
                .findFirst();
    }

    Mark mark() {
        return handle.createQuery("SELECT (SELECT COALESCE(MAX(id), 0) FROM drive) AS drive,"
                        + " (SELECT COALESCE(MAX(id), 0) FROM drive_event) AS event")
                .map((row, context) -> new Mark(row.getLong("drive"), row.getLong("event")))
                .one();
    }

    /** Whether there is such a drive and it is not over: known without reading all that happened in it. */
    boolean goesOn(long id) {
        return handle.createQuery("SELECT COUNT(*) FROM drive WHERE id = :id AND NOT EXISTS ("
                                + "SELECT 1 FROM drive_event WHERE drive_id = :id AND request IS NOT NULL"
                                + " AND kind IN ('kept', 'dropped'))")
                        .bind("id", id)
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    Written add(long id, List<DriveEvent> events, long at) {
        Mark before = mark();
        List<DriveEvent> fresh = new ArrayList<>();
        List<DriveEvent> batched = new ArrayList<>();
        PreparedBatch passes = handle.prepareBatch(ADD_PASS);
        for (DriveEvent event : events) {
            if (event instanceof Passed passed) {
                bind(passes, passed.pass()).bind("drive", id).bind("at", at).add();
                batched.add(event);
            } else if (event instanceof Pressed pressed) {
                // What came before it has to stand before it.
                flush(passes, batched, fresh);
                int added = handle.createUpdate(ADD_PRESS)
                        .bind("drive", id)
                        .bind("kind", pressed.press().code())
                        .bind("request", pressed.requestKey())
                        .bind("at", at)
                        .execute();
                if (added > 0) {
                    fresh.add(event);
                }
            }
        }
        flush(passes, batched, fresh);
        return new Written(before, fresh, mark());
    }

    private static void flush(PreparedBatch passes, List<DriveEvent> batched, List<DriveEvent> fresh) {
        if (!batched.isEmpty()) {
            int[] added = passes.execute();
            for (int i = 0; i < added.length; i++) {
                if (added[i] > 0) {
                    fresh.add(batched.get(i));
                }
            }
            batched.clear();
        }
    }

    private static PreparedBatch bind(PreparedBatch batch, Pass pass) {
        return batch.bind("source", pass.source())
                .bind("boot", pass.boot())
                .bind("sequence", pass.sequence())
                .bind("lane", pass.lane())
                .bind("gate", pass.gate())
                .bind("clock", pass.stamp().clock().name())
                .bind("time", pass.stamp().timeNs())
                .bind("arrival", pass.stamp().arrivalNs())
                .bind("sigma", pass.stamp().sigmaS());
    }

    private List<DriveEvent> events(long id) {
        return handle.createQuery("SELECT * FROM drive_event WHERE drive_id = :id ORDER BY id")
                .bind("id", id)
                .map((row, context) -> event(row))
                .list();
    }

    private static Drive drive(ResultSet row, List<DriveEvent> events) throws SQLException {
        return new Drive(
                row.getLong("id"),
                new NewDrive(
                        row.getString("car"),
                        row.getString("change_words"),
                        row.getString("track"),
                        row.getString("lane"),
                        row.getInt("lane_number"),
                        row.getString("driver"),
                        row.getString("conditions"),
                        RunPlan.parse(row.getString("plan")),
                        row.getInt("warm_up")),
                Intake.instant(row.getLong("started_at")),
                events);
    }

    private static DriveEvent event(ResultSet row) throws SQLException {
        String kind = row.getString("kind");
        if (!kind.equals(PASS)) {
            return new Pressed(Press.find(kind).orElseThrow(), row.getString("request"));
        }
        return new Passed(new Pass(
                row.getString("source"),
                row.getString("boot"),
                row.getLong("sequence"),
                row.getInt("lane"),
                row.getInt("gate"),
                new PassStamp(
                        PassClock.valueOf(row.getString("clock")),
                        row.getLong("time_ns"),
                        row.getLong("arrival_ns"),
                        row.getDouble("sigma_s"))));
    }
}
