package org.lapwright.app.store;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.SqlStatement;
import org.lapwright.app.store.Names.Named;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.Difference;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;
import org.lapwright.core.units.Interval;

/** Writes one comparison with everything that belongs to it, inside a transaction that is open already. */
final class ComparisonWriter {
    private final Handle handle;
    private final long at;
    private final Names names;
    private final StepTables steps;

    /** Where a comparison was driven and by whom; lane and driver may be unnamed. */
    private record Place(Named track, Optional<Named> lane, Optional<Named> driver) {
        <T extends SqlStatement<T>> T bindTo(T statement) {
            return statement
                    .bind("track", track.id())
                    .bind("lane", lane.map(Named::id).orElse(null))
                    .bind("driver", driver.map(Named::id).orElse(null));
        }
    }

    /** The set-ups on either side of a change. */
    private record SetUps(long before, long after) {
        long of(Side side) {
            return side == Side.BEFORE ? before : after;
        }
    }

    /** A writer of what happened at a time, in microseconds since 1970. */
    ComparisonWriter(Handle handle, long at) {
        this.handle = handle;
        this.at = at;
        this.names = new Names(handle, at);
        this.steps = new StepTables(handle, at);
    }

    /** The number of the comparison that this key has saved already. */
    Optional<Long> alreadyKept(String request) {
        return handle.createQuery("SELECT comparison_id FROM request_key WHERE request = :request")
                .bind("request", request)
                .mapTo(Long.class)
                .findOne();
    }

    /**
     * Writes the comparison.
     *
     * @param kept checked by {@link Intake}
     * @param verdict as it was shown
     * @param shown the same as JSON
     * @param request a key that is not used yet
     */
    SavedComparison keep(KeptComparison kept, Verdict verdict, String shown, String request) {
        Named car = names.car(kept.car(), kept.example());
        Named track = names.track(kept.track());
        Place place = new Place(
                track,
                named(kept.lane()).map(lane -> names.lane(track, lane)),
                named(kept.driver()).map(driver -> names.driver(driver)));
        Optional<StepTables.Undriven> logged = steps.undriven(car, kept.change());
        SetUps setUps = setUps(car, kept.change(), logged);
        long id = addComparison(kept, car, place, setUps);
        addRuns(id, kept.session().runs(), place, setUps);
        addVerdict(id, verdict, shown);
        logged.filter(step -> kept.stays() == Side.BEFORE).ifPresent(step -> steps.takeOff(car, kept.example(), step));
        handle.createUpdate("INSERT INTO request_key (request, comparison_id, used_at) VALUES (:request, :id, :at)")
                .bind("request", request)
                .bind("id", id)
                .bind("at", at)
                .execute();
        return new SavedComparison(
                id,
                Intake.instant(at),
                Intake.named(
                        kept,
                        car.name(),
                        track.name(),
                        place.lane().map(Named::name).orElse(""),
                        place.driver().map(Named::name).orElse("")));
    }

    private static Optional<String> named(String name) {
        return name.isEmpty() ? Optional.empty() : Optional.of(name);
    }

    /** The set-up that the car has now, and the one that the change makes of it: that of the step that was logged for it. */
    private SetUps setUps(Named car, String change, Optional<StepTables.Undriven> logged) {
        if (logged.isPresent()) {
            return new SetUps(
                    names.drivenSetUp(car, logged.get().step()), logged.get().setUp());
        }
        long before = names.presentSetUp(car);
        return new SetUps(before, names.addSetUp(car, Optional.of(before), "other", change));
    }

    private long addComparison(KeptComparison kept, Named car, Place place, SetUps setUps) {
        TrialSettings settings = kept.settings();
        return place.bindTo(handle.createQuery("""
                        INSERT INTO comparison (car_id, before_set_up_id, after_set_up_id, stays, track_id, lane_id,
                            driver_id, conditions, example, alpha, level_margin, hand_timed, plan, prior_autocorrelation,
                            prior_autocorrelation_laps, prior_run_share, prior_sessions, saved_at)
                        VALUES (:car, :before, :after, :stays, :track, :lane, :driver, :conditions, :example, :alpha, :margin, :byHand,
                            :plan, :autocorrelation, :autocorrelationLaps, :runShare, :sessions, :at)
                        RETURNING id"""))
                .bind("car", car.id())
                .bind("before", setUps.before())
                .bind("after", setUps.after())
                .bind("stays", kept.stays().code())
                .bind("conditions", kept.conditions())
                .bind("example", kept.example())
                .bind("alpha", settings.alpha())
                .bind("margin", settings.levelMargin())
                .bind("byHand", settings.handTimed())
                .bind("plan", settings.plan().map(RunPlan::text).orElse(null))
                .bind("autocorrelation", settings.prior().autocorrelation())
                .bind("autocorrelationLaps", settings.prior().autocorrelationLaps())
                .bind("runShare", settings.prior().runShare())
                .bind("sessions", settings.prior().sessions())
                .bind("at", at)
                .mapTo(Long.class)
                .one();
    }

    private void addRuns(long comparison, List<DrivenRun> runs, Place place, SetUps setUps) {
        PreparedBatch laps = handle.prepareBatch("INSERT INTO raw_lap (run_id, position, lap_number, seconds)"
                + " VALUES (:run, :position, :number, :seconds)");
        PreparedBatch words =
                handle.prepareBatch("INSERT INTO overrule (run_id, position, lap_number, kind, reason, said_at)"
                        + " VALUES (:run, :position, :number, :kind, :reason, :at)");
        for (int i = 0; i < runs.size(); i++) {
            DrivenRun driven = runs.get(i);
            long run = addRun(place, setUps.of(driven.side()));
            handle.createUpdate("INSERT INTO comparison_run (comparison_id, position, side, run_id)"
                            + " VALUES (:comparison, :position, :side, :run)")
                    .bind("comparison", comparison)
                    .bind("position", i)
                    .bind("side", driven.side().code())
                    .bind("run", run)
                    .execute();
            addTo(laps, words, run, driven.run());
        }
        laps.execute();
        words.execute();
    }

    private long addRun(Place place, long setUp) {
        return place.bindTo(handle.createQuery("INSERT INTO run (set_up_id, track_id, lane_id, driver_id, saved_at)"
                        + " VALUES (:setUp, :track, :lane, :driver, :at) RETURNING id"))
                .bind("setUp", setUp)
                .bind("at", at)
                .mapTo(Long.class)
                .one();
    }

    private void addTo(PreparedBatch laps, PreparedBatch words, long run, TimedRun timed) {
        for (int i = 0; i < timed.laps().size(); i++) {
            TimedLap lap = timed.laps().get(i);
            laps.bind("run", run)
                    .bind("position", i)
                    .bind("number", lap.number())
                    .bind("seconds", lap.seconds())
                    .add();
        }
        for (int i = 0; i < timed.overrules().size(); i++) {
            Overrule word = timed.overrules().get(i);
            words.bind("run", run)
                    .bind("position", i)
                    .bind("number", word.lap())
                    .bind("kind", word.kind().code())
                    .bind("reason", word.reason())
                    .bind("at", at)
                    .add();
        }
    }

    private void addVerdict(long comparison, Verdict verdict, String shown) {
        Optional<Interval> interval = verdict.difference().map(Difference::intervalS);
        handle.createUpdate("""
                        INSERT INTO verdict (comparison_id, decision, difference_s, low_s, high_s, confidence, steadiness,
                            decided_at_lap, shown, shown_at)
                        VALUES (:comparison, :decision, :difference, :low, :high, :confidence, :steadiness, :decidedAt,
                            :shown, :at)""")
                .bind("comparison", comparison)
                .bind("decision", verdict.decision().code())
                .bind(
                        "difference",
                        verdict.difference().map(Difference::seconds).orElse(null))
                .bind("low", interval.map(Interval::low).orElse(null))
                .bind("high", interval.map(Interval::high).orElse(null))
                .bind(
                        "confidence",
                        verdict.difference().map(Difference::confidence).orElse(null))
                .bind(
                        "steadiness",
                        verdict.consistency().map(it -> it.decision().code()).orElse(null))
                .bind(
                        "decidedAt",
                        verdict.decidedAtLap().stream().boxed().findFirst().orElse(null))
                .bind("shown", shown)
                .bind("at", at)
                .execute();
    }
}
