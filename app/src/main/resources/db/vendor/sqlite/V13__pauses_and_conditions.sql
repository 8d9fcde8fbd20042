-- A drive can be held up and go on, and the conditions of the evening stay with what was kept.

ALTER TABLE comparison ADD COLUMN conditions TEXT NOT NULL DEFAULT '';

CREATE TRIGGER comparison_conditions_no_update BEFORE UPDATE OF conditions ON comparison
BEGIN
    SELECT RAISE(ABORT, 'a comparison is never altered, only archived');
END;

-- What a column may hold cannot be widened in place: the record moves to a table that knows the new words, every row with its number.

DROP TRIGGER drive_event_no_update;

DROP TRIGGER drive_event_no_delete;

CREATE TABLE drive_event_widened (
    id ${pk},
    drive_id BIGINT NOT NULL REFERENCES drive (id),
    kind TEXT NOT NULL CHECK (kind IN ('pass', 'came-off', 'paused', 'goes-on', 'next-run', 'kept', 'dropped')),
    request TEXT UNIQUE,
    source TEXT,
    boot TEXT,
    sequence BIGINT,
    lane INTEGER,
    gate INTEGER,
    clock TEXT,
    time_ns BIGINT,
    arrival_ns BIGINT,
    sigma_s DOUBLE PRECISION,
    happened_at BIGINT NOT NULL,
    UNIQUE (drive_id, source, boot, sequence)
);

INSERT INTO drive_event_widened (id, drive_id, kind, request, source, boot, sequence, lane, gate, clock, time_ns, arrival_ns, sigma_s,
    happened_at)
SELECT id, drive_id, kind, request, source, boot, sequence, lane, gate, clock, time_ns, arrival_ns, sigma_s, happened_at
FROM drive_event;

DROP TABLE drive_event;

ALTER TABLE drive_event_widened RENAME TO drive_event;

CREATE INDEX drive_event_of_drive ON drive_event (drive_id);

CREATE TRIGGER drive_event_no_update BEFORE UPDATE ON drive_event
BEGIN
    SELECT RAISE(ABORT, 'raw passes are never altered');
END;

CREATE TRIGGER drive_event_no_delete BEFORE DELETE ON drive_event
BEGIN
    SELECT RAISE(ABORT, 'raw passes are never deleted');
END;
