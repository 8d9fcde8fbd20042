package org.lapwright.app.store;

import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Rows that go by a name: found however it is spelt, and made under the first spelling when they are not there. */
final class Names {
    /** A set-up that was written down and never driven. */
    private static final String UNDRIVEN_SET_UP = """
            SELECT s.id FROM set_up s
            WHERE s.car_id = :car AND NOT EXISTS (
                SELECT 1 FROM car_step k WHERE k.set_up_id = s.id AND k.parent_id IS NOT NULL) AND NOT EXISTS (
                SELECT 1 FROM comparison c WHERE c.before_set_up_id = s.id OR c.after_set_up_id = s.id)
            ORDER BY s.id DESC LIMIT 1""";

    private static final String FIRST_OF_STEP = """
            WITH RECURSIVE way (parent_id, set_up_id) AS (
                SELECT parent_id, set_up_id FROM car_step WHERE id = :step
                UNION ALL
                SELECT k.parent_id, k.set_up_id FROM car_step k JOIN way ON k.id = way.parent_id)
            SELECT set_up_id FROM way WHERE parent_id IS NULL""";

    private final Handle handle;
    private final long at;

    /** A row that goes by a name. */
    record Named(long id, String name) {}

    /** Names at a time, in microseconds since 1970. */
    Names(Handle handle, long at) {
        this.handle = handle;
        this.at = at;
    }

    Named car(String name, boolean example) {
        return findOrAdd(
                "SELECT id, name FROM car WHERE name_key = :key AND example = :example",
                "INSERT INTO car (name, name_key, example, created_at) VALUES (:name, :key, :example, :at)"
                        + " RETURNING id, name",
                name,
                Map.of("example", example));
    }

    Named track(String name) {
        return findOrAdd(
                "SELECT id, name FROM track WHERE name_key = :key",
                "INSERT INTO track (name, name_key, created_at) VALUES (:name, :key, :at) RETURNING id, name",
                name,
                Map.of());
    }

    Named lane(Named track, String name) {
        return findOrAdd(
                "SELECT id, name FROM lane WHERE track_id = :track AND name_key = :key",
                "INSERT INTO lane (track_id, name, name_key, created_at) VALUES (:track, :name, :key, :at)"
                        + " RETURNING id, name",
                name,
                Map.of("track", track.id()));
    }

    Named driver(String name) {
        return findOrAdd(
                "SELECT id, name FROM driver WHERE name_key = :key",
                "INSERT INTO driver (name, name_key, created_at) VALUES (:name, :key, :at) RETURNING id, name",
                name,
                Map.of());
    }

    /** The set-up that the car has now; its first one is made when it has none. */
    long presentSetUp(Named car) {
        return setUp(ComparisonReader.PRESENT_SET_UP, car)
                .or(() -> setUp(UNDRIVEN_SET_UP, car))
                .orElseGet(() -> addSetUp(car, Optional.empty(), "first", ""));
    }

    /** What was on the car before a step that was logged: the set-up driven last, else that of the first step. */
    long drivenSetUp(Named car, long step) {
        return setUp(ComparisonReader.PRESENT_SET_UP, car)
                .orElseGet(() -> handle.createQuery(FIRST_OF_STEP)
                        .bind("step", step)
                        .mapTo(Long.class)
                        .one());
    }

    private Optional<Long> setUp(String which, Named car) {
        return handle.createQuery(which).bind("car", car.id()).mapTo(Long.class).findOne();
    }

    long addSetUp(Named car, Optional<Long> parent, String kind, String note) {
        return handle.createQuery("INSERT INTO set_up (car_id, parent_id, kind, note, created_at)"
                        + " VALUES (:car, :parent, :kind, :note, :at) RETURNING id")
                .bind("car", car.id())
                .bind("parent", parent.orElse(null))
                .bind("kind", kind)
                .bind("note", note)
                .bind("at", at)
                .mapTo(Long.class)
                .one();
    }

    private Named findOrAdd(String find, String add, String name, Map<String, ?> more) {
        return one(handle.createQuery(find).bindMap(more), name)
                .or(() -> one(
                        handle.createQuery(add).bindMap(more).bind("name", name).bind("at", at), name))
                .orElseThrow();
    }

    private static Optional<Named> one(Query query, String name) {
        return query.bind("key", NameKey.of(name))
                .map((row, context) -> new Named(row.getLong("id"), row.getString("name")))
                .findOne();
    }
}
