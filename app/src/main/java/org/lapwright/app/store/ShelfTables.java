package org.lapwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.lapwright.app.usecase.ShelfStore.NewPart;
import org.lapwright.app.usecase.ShelfStore.ShelfRecord;
import org.lapwright.core.car.shelf.Happened;
import org.lapwright.core.car.shelf.LapsDriven;
import org.lapwright.core.car.shelf.Part;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.car.shelf.PartKind;

/** Reads and writes parts, inside a transaction that is open already. */
final class ShelfTables {
    private static final String ADD_EVENT = """
            INSERT INTO part_event (part_id, request, kind, car_id, service, laps, happened_at)
            VALUES (:part, :request, :kind, :car, :service, :laps, :at)
            ON CONFLICT DO NOTHING""";
    private static final String EVENTS = """
            SELECT e.part_id, e.kind, car.name AS car, e.service, e.laps, e.happened_at
            FROM part_event e LEFT JOIN car ON car.id = e.car_id ORDER BY e.id""";

    /** Only cars that a part was ever on: the laps of the others wear nothing that is on the shelf. */
    private static final String DRIVEN = """
            SELECT car.name AS car, r.saved_at, COUNT(*) AS laps
            FROM car JOIN set_up s ON s.car_id = car.id JOIN run r ON r.set_up_id = s.id JOIN raw_lap l ON l.run_id = r.id
            WHERE car.id IN (SELECT car_id FROM part_event WHERE car_id IS NOT NULL)
            GROUP BY r.id ORDER BY r.id""";

    private final Handle handle;

    ShelfTables(Handle handle) {
        this.handle = handle;
    }

    /** The part that a request has added already. */
    Optional<Part> added(String request) {
        return handle.createQuery("SELECT id, kind, name, note FROM part WHERE request = :request")
                .bind("request", request)
                .map((row, context) -> part(row))
                .findOne();
    }

    /** Adds a part; {@code request} is not used yet. */
    Part add(NewPart part, String request, long at) {
        return handle.createQuery("INSERT INTO part (request, kind, name, note, added_at)"
                        + " VALUES (:request, :kind, :name, :note, :at) RETURNING id, kind, name, note")
                .bind("request", request)
                .bind("kind", part.kind().label())
                .bind("name", part.name())
                .bind("note", part.note())
                .bind("at", at)
                .map((row, context) -> part(row))
                .one();
    }

    boolean has(long part) {
        return handle.createQuery("SELECT COUNT(*) FROM part WHERE id = :part")
                        .bind("part", part)
                        .mapTo(Long.class)
                        .one()
                > 0;
    }

    void add(long part, PartEvent event, String request, long at) {
        handle.createUpdate(ADD_EVENT)
                .bind("part", part)
                .bind("request", request)
                .bind("kind", event.code())
                .bind("car", carOf(event, at).orElse(null))
                .bind("service", serviceOf(event).orElse(null))
                .bind("laps", lapsOf(event).orElse(null))
                .bind("at", at)
                .execute();
    }

    ShelfRecord all() {
        List<Part> parts = handle.createQuery("SELECT id, kind, name, note FROM part ORDER BY id")
                .map((row, context) -> part(row))
                .list();
        List<Happened> happened = handle.createQuery(EVENTS)
                .map((row, context) ->
                        new Happened(row.getLong("part_id"), event(row), Intake.instant(row.getLong("happened_at"))))
                .list();
        List<LapsDriven> driven = handle.createQuery(DRIVEN)
                .map((row, context) -> new LapsDriven(
                        row.getString("car"), row.getInt("laps"), Intake.instant(row.getLong("saved_at"))))
                .list();
        return new ShelfRecord(parts, happened, driven);
    }

    private Optional<Long> carOf(PartEvent event, long at) {
        return event instanceof PartEvent.Fitted fitted
                ? Optional.of(new Names(handle, at).car(fitted.car(), false).id())
                : Optional.empty();
    }

    private static Optional<String> serviceOf(PartEvent event) {
        if (event instanceof PartEvent.Reminder reminder) {
            return Optional.of(reminder.service());
        }
        return event instanceof PartEvent.Serviced serviced ? Optional.of(serviced.service()) : Optional.empty();
    }

    private static Optional<Integer> lapsOf(PartEvent event) {
        if (event instanceof PartEvent.Reminder reminder) {
            return Optional.of(reminder.everyLaps());
        }
        return event instanceof PartEvent.LapsAdded added ? Optional.of(added.laps()) : Optional.empty();
    }

    private static Part part(ResultSet row) throws SQLException {
        return new Part(
                row.getLong("id"), new PartKind(row.getString("kind")), row.getString("name"), row.getString("note"));
    }

    private static PartEvent event(ResultSet row) throws SQLException {
        String kind = row.getString("kind");
        return switch (kind) {
            case "fitted" -> new PartEvent.Fitted(row.getString("car"));
            case "off" -> new PartEvent.TakenOff();
            case "laps" -> new PartEvent.LapsAdded(row.getInt("laps"));
            case "reminder" -> new PartEvent.Reminder(row.getString("service"), row.getInt("laps"));
            case "serviced" -> new PartEvent.Serviced(row.getString("service"));
            case "away" -> new PartEvent.PutAway();
            case "back" -> new PartEvent.BroughtBack();
            default -> throw new IllegalArgumentException("a part has the event '" + kind + "'");
        };
    }
}
