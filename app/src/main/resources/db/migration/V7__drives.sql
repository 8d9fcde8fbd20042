-- Before and after, driven against the clock: what was fixed beforehand, and everything that happened, in its order.

CREATE TABLE drive (
    id ${pk},
    request TEXT NOT NULL UNIQUE,
    car TEXT NOT NULL,
    change_words TEXT NOT NULL,
    track TEXT NOT NULL,
    lane TEXT NOT NULL,
    lane_number INTEGER NOT NULL CHECK (lane_number >= 1),
    driver TEXT NOT NULL,
    conditions TEXT NOT NULL,
    plan TEXT NOT NULL,
    warm_up INTEGER NOT NULL CHECK (warm_up >= 0),
    started_at BIGINT NOT NULL
);

-- A pass of a gate has its source, boot and sequence; the other kinds of happening have none of them.
CREATE TABLE drive_event (
    id ${pk},
    drive_id BIGINT NOT NULL REFERENCES drive (id),
    kind TEXT NOT NULL CHECK (kind IN ('pass', 'came-off', 'next-run', 'kept', 'dropped')),
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

CREATE INDEX drive_event_of_drive ON drive_event (drive_id);
