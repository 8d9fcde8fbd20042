-- What happened stays as it happened. A later word or a later set-up is another row; removing is archiving.
-- SQLite's own trigger syntax; another database gets the same promises under the same version in its own folder.

CREATE TRIGGER run_no_update BEFORE UPDATE ON run
BEGIN
    SELECT RAISE(ABORT, 'a run is never altered');
END;

CREATE TRIGGER run_no_delete BEFORE DELETE ON run
BEGIN
    SELECT RAISE(ABORT, 'a run is never deleted');
END;

CREATE TRIGGER raw_lap_no_update BEFORE UPDATE ON raw_lap
BEGIN
    SELECT RAISE(ABORT, 'raw laps are never altered');
END;

CREATE TRIGGER raw_lap_no_delete BEFORE DELETE ON raw_lap
BEGIN
    SELECT RAISE(ABORT, 'raw laps are never deleted');
END;

CREATE TRIGGER overrule_no_update BEFORE UPDATE ON overrule
BEGIN
    SELECT RAISE(ABORT, 'the racer''s word is added to, never altered');
END;

CREATE TRIGGER overrule_no_delete BEFORE DELETE ON overrule
BEGIN
    SELECT RAISE(ABORT, 'the racer''s word is added to, never deleted');
END;

CREATE TRIGGER set_up_no_update BEFORE UPDATE ON set_up
BEGIN
    SELECT RAISE(ABORT, 'a set-up is never altered: a change makes the next one');
END;

CREATE TRIGGER set_up_no_delete BEFORE DELETE ON set_up
BEGIN
    SELECT RAISE(ABORT, 'a set-up is never deleted: a change makes the next one');
END;

CREATE TRIGGER comparison_run_no_update BEFORE UPDATE ON comparison_run
BEGIN
    SELECT RAISE(ABORT, 'the runs of a comparison are never altered');
END;

CREATE TRIGGER comparison_run_no_delete BEFORE DELETE ON comparison_run
BEGIN
    SELECT RAISE(ABORT, 'the runs of a comparison are never deleted');
END;

CREATE TRIGGER verdict_no_update BEFORE UPDATE ON verdict
BEGIN
    SELECT RAISE(ABORT, 'a verdict is never altered');
END;

CREATE TRIGGER verdict_no_delete BEFORE DELETE ON verdict
BEGIN
    SELECT RAISE(ABORT, 'a verdict is never deleted');
END;

CREATE TRIGGER request_key_no_update BEFORE UPDATE ON request_key
BEGIN
    SELECT RAISE(ABORT, 'a used request key is never altered');
END;

CREATE TRIGGER request_key_no_delete BEFORE DELETE ON request_key
BEGIN
    SELECT RAISE(ABORT, 'a used request key is never deleted');
END;

-- Archiving is the only change that a comparison knows.
CREATE TRIGGER comparison_no_update BEFORE UPDATE OF
    id, car_id, before_set_up_id, after_set_up_id, stays, track_id, lane_id, driver_id, example, alpha, level_margin,
    hand_timed, plan, prior_autocorrelation, prior_autocorrelation_laps, prior_run_share, prior_sessions, saved_at
ON comparison
BEGIN
    SELECT RAISE(ABORT, 'a comparison is never altered, only archived');
END;

CREATE TRIGGER comparison_no_delete BEFORE DELETE ON comparison
BEGIN
    SELECT RAISE(ABORT, 'a comparison is never deleted, only archived');
END;
