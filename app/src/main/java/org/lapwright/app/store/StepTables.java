package org.lapwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.lapwright.app.store.Names.Named;
import org.lapwright.app.usecase.FileStore.Kind;
import org.lapwright.app.usecase.GarageStore.ExampleState;
import org.lapwright.app.usecase.HistoryStore.NewStep;
import org.lapwright.app.usecase.HistoryStore.StaleBenchException;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.HistoryStore.StoredStep;
import org.lapwright.app.usecase.HistoryStore.Why;
import org.lapwright.app.usecase.KeptFile;

/** Reads and writes the steps of cars, inside a transaction that is open already. */
final class StepTables {
    private static final String FIRST = "first";
    private static final String STEPS = """
            SELECT id, parent_id, kind, words, change_made, content, made_at
            FROM car_step WHERE car_id = :car ORDER BY id""";
    private static final String PRESENT = "SELECT step_id FROM on_bench WHERE car_id = :car ORDER BY id DESC LIMIT 1";

    /** A step that was logged, never driven, and is on the car. */
    private static final String UNDRIVEN = """
            SELECT s.id, s.set_up_id, s.parent_id, s.words
            FROM car_step s
            WHERE s.id = (SELECT step_id FROM on_bench WHERE car_id = :car ORDER BY id DESC LIMIT 1)
                AND s.parent_id IS NOT NULL
                AND NOT EXISTS (SELECT 1 FROM comparison c
                    WHERE c.before_set_up_id = s.set_up_id OR c.after_set_up_id = s.set_up_id)""";

    private final Handle handle;
    private final long at;

    StepTables(Handle handle, long at) {
        this.handle = handle;
        this.at = at;
    }

    /** A step that is on the car and waits to be driven. */
    record Undriven(long step, long setUp, long parent, String words) {}

    /** The history under a name, the owner's before the example's. */
    Optional<StoredHistory> named(String car) {
        boolean exampleIsOut = new ComparisonReader(handle).exampleState() == ExampleState.REMOVED;
        Optional<StoredHistory> own = named(car, false);
        if (own.isPresent() || exampleIsOut || isOwn(car)) {
            return own;
        }
        return named(car, true);
    }

    /** A car of the owner's that was measured but has no steps yet hides the example's. */
    private boolean isOwn(String car) {
        return new FileTables(handle)
                .named(Kind.CAR, car)
                .filter(file -> !file.example())
                .isPresent();
    }

    private Optional<StoredHistory> named(String car, boolean example) {
        return handle.createQuery("SELECT id, name FROM car WHERE name_key = :key AND example = :example")
                .bind("key", NameKey.of(car))
                .bind("example", example)
                .map((row, context) -> new Named(row.getLong("id"), row.getString("name")))
                .findOne()
                .flatMap(found -> of(found, example));
    }

    private Optional<StoredHistory> of(Named car, boolean example) {
        return present(car).map(present -> new StoredHistory(car.name(), example, steps(car), present));
    }

    private List<StoredStep> steps(Named car) {
        return handle.createQuery(STEPS)
                .bind("car", car.id())
                .map((row, context) -> step(row))
                .list();
    }

    private static StoredStep step(ResultSet row) throws SQLException {
        long parent = row.getLong("parent_id");
        OptionalLong from = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(parent);
        return new StoredStep(
                row.getLong("id"),
                from,
                row.getString("kind"),
                row.getString("words"),
                row.getString("change_made"),
                row.getString("content"),
                Intake.instant(row.getLong("made_at")));
    }

    private Optional<Long> present(Named car) {
        return handle.createQuery(PRESENT)
                .bind("car", car.id())
                .mapTo(Long.class)
                .findOne();
    }

    /** Kinds that the owner has logged. */
    Set<String> kindsLogged() {
        return Set.copyOf(handle.createQuery(
                        "SELECT DISTINCT s.kind FROM car_step s JOIN car ON car.id = s.car_id WHERE NOT car.example")
                .mapTo(String.class)
                .list());
    }

    /** Whether a key was used already. */
    boolean isUsed(String request) {
        return handle.createQuery("SELECT COUNT(*) FROM bench_request WHERE request = :request")
                        .bind("request", request)
                        .mapTo(Long.class)
                        .one()
                > 0;
    }

    /** Logs a step; {@code request} is not used yet. */
    StoredHistory log(NewStep step, String request) {
        Names names = new Names(handle, at);
        Named car = names.car(step.car(), step.example());
        requireOn(car, step.example(), step.onto());
        long parent = present(car).orElseGet(() -> addFirst(car, step, names));
        long setUp = names.addSetUp(car, Optional.of(setUpOf(parent)), step.kind(), step.words());
        long id = add(car, Optional.of(parent), setUp, step);
        putOn(car, step.example(), id, step.file(), Why.STEP, Optional.of(request));
        return of(car, step.example()).orElseThrow();
    }

    private long addFirst(Named car, NewStep step, Names names) {
        NewStep first = new NewStep(
                step.car(),
                OptionalLong.empty(),
                step.base(),
                FIRST,
                FIRST,
                "",
                step.base(),
                step.example(),
                step.at());
        return add(car, Optional.empty(), names.presentSetUp(car), first);
    }

    private void requireOn(Named car, boolean example, OptionalLong onto) {
        Optional<Long> present = present(car);
        if (present.isPresent() && (onto.isEmpty() || onto.getAsLong() != present.get())) {
            throw new StaleBenchException(of(car, example).orElseThrow());
        }
        if (present.isEmpty() && onto.isPresent()) {
            throw new IllegalArgumentException("this car has no step number " + onto.getAsLong());
        }
    }

    /** Puts a step of the owner's car on it again; {@code request} is not used yet. */
    StoredHistory putOn(String name, long from, long to, Why why, String request) {
        Names names = new Names(handle, at);
        Named car = names.car(name, false);
        if (present(car).isEmpty()) {
            throw new IllegalArgumentException("nothing was logged for “%s” yet".formatted(name));
        }
        requireOn(car, false, OptionalLong.of(from));
        String file =
                contentOf(car, to).orElseThrow(() -> new IllegalArgumentException("this car has no step number " + to));
        putOn(car, false, to, file, why, Optional.of(request));
        return of(car, false).orElseThrow();
    }

    /** The numbers were measured anew: for a car with steps, that is one more of them. */
    void measured(Named car, KeptFile file) {
        Optional<Long> parent = present(car);
        if (parent.isEmpty()) {
            return;
        }
        NewStep step = new NewStep(
                car.name(),
                OptionalLong.of(parent.get()),
                file.text(),
                "measured",
                "measured anew",
                "",
                file.text(),
                file.example(),
                file.savedAt());
        addOnBench(car, add(car, parent, setUpOf(parent.get()), step), Why.STEP);
    }

    /** The step on the car, if it was logged with these words and not driven yet. */
    Optional<Undriven> undriven(Named car, String words) {
        return handle.createQuery(UNDRIVEN)
                .bind("car", car.id())
                .map((row, context) -> new Undriven(
                        row.getLong("id"), row.getLong("set_up_id"), row.getLong("parent_id"), row.getString("words")))
                .findOne()
                .filter(step -> step.words().equals(words));
    }

    /** What was logged was driven and did not stay. */
    void takeOff(Named car, boolean example, Undriven step) {
        String file = contentOf(car, step.parent()).orElseThrow();
        putOn(car, example, step.parent(), file, Why.VERDICT, Optional.empty());
    }

    private Optional<String> contentOf(Named car, long step) {
        return handle.createQuery("SELECT content FROM car_step WHERE id = :id AND car_id = :car")
                .bind("id", step)
                .bind("car", car.id())
                .mapTo(String.class)
                .findOne();
    }

    private void putOn(Named car, boolean example, long step, String file, Why why, Optional<String> request) {
        long row = addOnBench(car, step, why);
        new FileTables(handle)
                .add(car, setUpOf(step), new KeptFile(Kind.CAR, car.name(), file, example, Intake.instant(at)), at);
        request.ifPresent(key -> handle.createUpdate(
                        "INSERT INTO bench_request (request, on_bench_id, used_at) VALUES (:request, :row, :at)")
                .bind("request", key)
                .bind("row", row)
                .bind("at", at)
                .execute());
    }

    private long addOnBench(Named car, long step, Why why) {
        return handle.createQuery("INSERT INTO on_bench (car_id, step_id, why, put_at)"
                        + " VALUES (:car, :step, :why, :at) RETURNING id")
                .bind("car", car.id())
                .bind("step", step)
                .bind("why", why.code())
                .bind("at", at)
                .mapTo(Long.class)
                .one();
    }

    private long add(Named car, Optional<Long> parent, long setUp, NewStep step) {
        return handle.createQuery("INSERT INTO car_step"
                        + " (car_id, parent_id, set_up_id, kind, words, change_made, content, made_at)"
                        + " VALUES (:car, :parent, :setUp, :kind, :words, :change, :content, :at) RETURNING id")
                .bind("car", car.id())
                .bind("parent", parent.orElse(null))
                .bind("setUp", setUp)
                .bind("kind", step.kind())
                .bind("words", step.words())
                .bind("change", step.change())
                .bind("content", step.file())
                .bind("at", Intake.micros(step.at()))
                .mapTo(Long.class)
                .one();
    }

    private long setUpOf(long step) {
        return handle.createQuery("SELECT set_up_id FROM car_step WHERE id = :id")
                .bind("id", step)
                .mapTo(Long.class)
                .one();
    }
}
