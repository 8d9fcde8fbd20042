package org.lapwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.lapwright.app.usecase.GarageStore.ExampleState;
import org.lapwright.app.usecase.GarageStore.SetUpRun;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.ladder.LaneRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * Reads comparisons back, inside a transaction that is open already.
 *
 * <p>Whatever is in the rows goes through the same checks as what a racer types; rows that fail them throw
 * {@link IllegalArgumentException}.
 */
final class ComparisonReader {
    private static final String STAYING =
            "CASE WHEN c.stays = 'after' THEN c.after_set_up_id ELSE c.before_set_up_id END";

    /** The set-up that a car has now: what stayed on it after the last comparison that is not archived. */
    static final String PRESENT_SET_UP = "SELECT " + STAYING + " AS set_up_id FROM comparison c"
            + " WHERE c.car_id = :car AND c.archived_at IS NULL ORDER BY c.id DESC LIMIT 1";

    private static final String VISIBLE = "c.archived_at IS NULL";
    private static final String PAGE = "c.id IN (SELECT id FROM comparison WHERE archived_at IS NULL"
            + " ORDER BY saved_at DESC, id DESC LIMIT :most OFFSET :from)";
    private static final String ARCHIVED = "c.archived_at IS NOT NULL";
    private static final String NUMBERED = "c.id = :id";

    private static final String HEADS = """
            SELECT c.id, c.saved_at, car.name AS car, track.name AS track, lane.name AS lane, driver.name AS driver,
                after_set_up.note AS change, c.conditions, c.stays, c.example, c.alpha, c.level_margin, c.hand_timed, c.plan,
                c.prior_autocorrelation, c.prior_autocorrelation_laps, c.prior_run_share, c.prior_sessions
            FROM comparison c
            JOIN car ON car.id = c.car_id
            JOIN set_up after_set_up ON after_set_up.id = c.after_set_up_id
            JOIN track ON track.id = c.track_id
            LEFT JOIN lane ON lane.id = c.lane_id
            LEFT JOIN driver ON driver.id = c.driver_id
            WHERE <which>
            ORDER BY c.saved_at DESC, c.id DESC""";

    private static final String RUNS = """
            SELECT cr.comparison_id, cr.side, cr.run_id
            FROM comparison_run cr
            JOIN comparison c ON c.id = cr.comparison_id
            WHERE <which>
            ORDER BY cr.comparison_id, cr.position""";

    private static final String LAPS = """
            SELECT l.run_id, l.lap_number, l.seconds
            FROM comparison_run cr
            JOIN comparison c ON c.id = cr.comparison_id
            JOIN raw_lap l ON l.run_id = cr.run_id
            WHERE <which>
            ORDER BY l.run_id, l.position""";

    private static final String WORDS = """
            SELECT o.run_id, o.lap_number, o.kind, o.reason
            FROM comparison_run cr
            JOIN comparison c ON c.id = cr.comparison_id
            JOIN overrule o ON o.run_id = cr.run_id
            WHERE <which>
            ORDER BY o.run_id, o.position""";

    /** Runs with their cars, tracks and, where one was said, lanes. */
    private static final String RUNS_WITH_PLACES = """
            FROM comparison_run cr
            JOIN comparison c ON c.id = cr.comparison_id
            JOIN run ON run.id = cr.run_id
            JOIN track ON track.id = run.track_id
            LEFT JOIN lane ON lane.id = run.lane_id
            JOIN car ON car.id = c.car_id""";

    /** Runs on one track of the set-ups that the cars had at a time. */
    private static final String PRESENT_RUNS = """
            SELECT car.id AS car_id, car.name, car.example, run.id AS run_id, lane.name AS lane
            %s
            JOIN (SELECT newest.car_id, %s AS set_up_id
                  FROM comparison c
                  JOIN (SELECT car_id, MAX(id) AS id FROM comparison WHERE archived_at IS NULL AND saved_at <= :until
                        GROUP BY car_id) newest
                    ON newest.id = c.id) present
              ON present.car_id = c.car_id AND present.set_up_id = run.set_up_id
            WHERE c.archived_at IS NULL AND c.saved_at <= :until AND track.name_key = :track
            ORDER BY run.id""".formatted(RUNS_WITH_PLACES, STAYING);

    private static final String RUNS_OF_CAR = """
            SELECT run.id AS run_id, run.set_up_id, track.name AS track, lane.name AS lane, run.saved_at
            %s
            WHERE c.archived_at IS NULL AND car.name_key = :car AND NOT car.example
            ORDER BY run.id""".formatted(RUNS_WITH_PLACES);

    private static final String TRACKS = """
            SELECT track.name
            FROM comparison c
            JOIN track ON track.id = c.track_id
            WHERE c.archived_at IS NULL AND EXISTS (
                SELECT 1 FROM comparison_run cr JOIN raw_lap l ON l.run_id = cr.run_id WHERE cr.comparison_id = c.id)
            ORDER BY c.saved_at DESC, c.id DESC""";

    private static final String CARS = """
            SELECT car.name
            FROM comparison c
            JOIN car ON car.id = c.car_id
            WHERE c.archived_at IS NULL AND NOT c.example
            ORDER BY c.saved_at DESC, c.id DESC""";

    private static final String IS_EXAMPLE = """
            SELECT COUNT(*) FROM car
            WHERE name_key = :key AND example AND NOT EXISTS (
                SELECT 1 FROM comparison c JOIN car own ON own.id = c.car_id
                WHERE own.name_key = :key AND NOT own.example AND c.archived_at IS NULL)""";

    private static final TimedRun NO_LAPS = new TimedRun(List.of(), List.of());

    private final Handle handle;

    ComparisonReader(Handle handle) {
        this.handle = handle;
    }

    /** All that are not archived, newest first. */
    List<SavedComparison> visible() {
        return read(VISIBLE, Map.of());
    }

    /** Some that are not archived. */
    List<SavedComparison> visible(int from, int most) {
        return read(PAGE, Map.of("from", from, "most", most));
    }

    /** All that are archived, newest first. */
    List<SavedComparison> archived() {
        return read(ARCHIVED, Map.of());
    }

    /** One, archived or not. */
    Optional<SavedComparison> numbered(long id) {
        return read(NUMBERED, Map.of("id", id)).stream().findFirst();
    }

    /** Tracks with laps, the one driven last first. */
    List<String> tracks() {
        return handle.createQuery(TRACKS).mapTo(String.class).stream()
                .distinct()
                .toList();
    }

    /** The racer's own cars, the one kept last first. */
    List<String> carsDriven() {
        return handle.createQuery(CARS).mapTo(String.class).stream().distinct().toList();
    }

    /** For each car on the track: the runs of the set-up it had at a time, µs. */
    List<CarLaps> lapsOnTrack(String track, long until) {
        Map<String, Object> onTrack = Map.of("track", NameKey.of(track), "until", until);
        Map<Long, TimedRun> runs = runs(
                "c.archived_at IS NULL AND c.saved_at <= :until"
                        + " AND c.track_id = (SELECT id FROM track WHERE name_key = :track)",
                onTrack);
        Map<Long, CarOnTrack> cars = new LinkedHashMap<>();
        handle.createQuery(PRESENT_RUNS).bindMap(onTrack).scanResultSet((rows, context) -> {
            for (ResultSet row = rows.get(); row.next(); ) {
                String name = row.getString("name");
                boolean example = row.getBoolean("example");
                cars.computeIfAbsent(row.getLong("car_id"), id -> new CarOnTrack(name, example, new ArrayList<>()))
                        .runs()
                        .add(new LaneRun(textOf(row, "lane"), runs.getOrDefault(row.getLong("run_id"), NO_LAPS)));
            }
            return cars;
        });
        return CarOnTrack.shown(cars.values());
    }

    /** The runs of a car, oldest first. */
    List<SetUpRun> runsOf(String car) {
        Map<String, Object> ofCar = Map.of("car", NameKey.of(car));
        Map<Long, TimedRun> runs = runs(
                "c.archived_at IS NULL AND c.car_id = (SELECT id FROM car WHERE name_key = :car AND NOT example)",
                ofCar);
        return handle.createQuery(RUNS_OF_CAR)
                .bindMap(ofCar)
                .map((row, context) -> new SetUpRun(
                        row.getLong("set_up_id"),
                        row.getString("track"),
                        textOf(row, "lane"),
                        Intake.instant(row.getLong("saved_at")),
                        runs.getOrDefault(row.getLong("run_id"), NO_LAPS)))
                .list();
    }

    /** Whether the car that goes by this name is one of the example garage. */
    boolean isExample(String car) {
        return handle.createQuery(IS_EXAMPLE)
                        .bind("key", NameKey.of(car))
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    /** What there is of the example garage. */
    ExampleState exampleState() {
        List<Boolean> shown = handle.createQuery(
                        "SELECT archived_at IS NULL AS shown FROM comparison WHERE example GROUP BY archived_at IS NULL")
                .mapTo(Boolean.class)
                .list();
        if (shown.isEmpty()) {
            return ExampleState.ABSENT;
        }
        return shown.contains(true) ? ExampleState.SHOWN : ExampleState.REMOVED;
    }

    private List<SavedComparison> read(String which, Map<String, Object> values) {
        Map<Long, List<DrivenRun>> sessions = sessions(which, values);
        return query(HEADS, which, values)
                .map((row, context) -> {
                    long id = row.getLong("id");
                    return comparison(row, new Session(sessions.getOrDefault(id, List.of())));
                })
                .list();
    }

    private Map<Long, List<DrivenRun>> sessions(String which, Map<String, Object> values) {
        Map<Long, TimedRun> runs = runs(which, values);
        Map<Long, List<DrivenRun>> sessions = new HashMap<>();
        return query(RUNS, which, values).scanResultSet((rows, context) -> {
            for (ResultSet row = rows.get(); row.next(); ) {
                TimedRun run = runs.getOrDefault(row.getLong("run_id"), NO_LAPS);
                sessions.computeIfAbsent(row.getLong("comparison_id"), id -> new ArrayList<>())
                        .add(new DrivenRun(side(row.getString("side")), run));
            }
            return sessions;
        });
    }

    private Map<Long, TimedRun> runs(String which, Map<String, Object> values) {
        Map<Long, List<TimedLap>> laps = new HashMap<>();
        query(LAPS, which, values).scanResultSet((rows, context) -> {
            for (ResultSet row = rows.get(); row.next(); ) {
                laps.computeIfAbsent(row.getLong(1), id -> new ArrayList<>())
                        .add(new TimedLap(row.getInt(2), row.getDouble(3)));
            }
            return laps;
        });
        Map<Long, List<Overrule>> words = new HashMap<>();
        query(WORDS, which, values).scanResultSet((rows, context) -> {
            for (ResultSet row = rows.get(); row.next(); ) {
                words.computeIfAbsent(row.getLong(1), id -> new ArrayList<>())
                        .add(new Overrule(row.getInt(2), kind(row.getString(3)), row.getString(4)));
            }
            return words;
        });
        Map<Long, TimedRun> runs = new HashMap<>();
        words.forEach((run, said) -> runs.put(run, new TimedRun(laps.getOrDefault(run, List.of()), said)));
        laps.forEach((run, timed) -> runs.putIfAbsent(run, new TimedRun(timed, List.of())));
        return runs;
    }

    private Query query(String sql, String which, Map<String, Object> values) {
        return handle.createQuery(sql.replace("<which>", which)).bindMap(values);
    }

    private static SavedComparison comparison(ResultSet row, Session session) throws SQLException {
        KeptComparison kept = new KeptComparison(
                row.getString("car"),
                row.getString("track"),
                textOf(row, "lane"),
                textOf(row, "driver"),
                row.getString("conditions"),
                row.getString("change"),
                side(row.getString("stays")),
                session,
                settings(row),
                row.getBoolean("example"));
        return new SavedComparison(row.getLong("id"), Intake.instant(row.getLong("saved_at")), kept);
    }

    private static TrialSettings settings(ResultSet row) throws SQLException {
        NoisePrior prior = new NoisePrior(
                row.getDouble("prior_autocorrelation"),
                row.getDouble("prior_autocorrelation_laps"),
                row.getDouble("prior_run_share"),
                row.getInt("prior_sessions"));
        return new TrialSettings(
                row.getDouble("alpha"),
                row.getDouble("level_margin"),
                row.getBoolean("hand_timed"),
                Optional.ofNullable(row.getString("plan")).map(RunPlan::parse),
                prior);
    }

    private static String textOf(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column)).orElse("");
    }

    private static Side side(String code) {
        return Side.find(code).orElseThrow(() -> new IllegalArgumentException("'" + code + "' is no side"));
    }

    private static LapKind kind(String code) {
        return LapKind.find(code).orElseThrow(() -> new IllegalArgumentException("'" + code + "' is no kind of lap"));
    }
}
