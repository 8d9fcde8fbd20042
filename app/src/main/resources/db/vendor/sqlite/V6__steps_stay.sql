-- A step that was logged stays as it was logged; undoing puts another one on the car.

CREATE TRIGGER car_step_no_update BEFORE UPDATE ON car_step
BEGIN
    SELECT RAISE(ABORT, 'a step is never altered: a change makes the next one');
END;

CREATE TRIGGER car_step_no_delete BEFORE DELETE ON car_step
BEGIN
    SELECT RAISE(ABORT, 'a step is never deleted: undoing puts another one on the car');
END;

CREATE TRIGGER on_bench_no_update BEFORE UPDATE ON on_bench
BEGIN
    SELECT RAISE(ABORT, 'what was on the bench is never altered');
END;

CREATE TRIGGER on_bench_no_delete BEFORE DELETE ON on_bench
BEGIN
    SELECT RAISE(ABORT, 'what was on the bench is never deleted');
END;

CREATE TRIGGER bench_request_no_update BEFORE UPDATE ON bench_request
BEGIN
    SELECT RAISE(ABORT, 'a used request key is never altered');
END;

CREATE TRIGGER bench_request_no_delete BEFORE DELETE ON bench_request
BEGIN
    SELECT RAISE(ABORT, 'a used request key is never deleted');
END;
