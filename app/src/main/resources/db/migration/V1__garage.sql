-- The garage. Runs on SQLite and PostgreSQL alike: ${pk} is the vendor's generated 64-bit key.
-- Times are microseconds since 1970-01-01T00:00Z. A *_key column holds the name folded for comparison, so that
-- "dunlin" and "Dunlin" are one car on every database. Rows about what happened are added, never edited.

CREATE TABLE car (
    id ${pk},
    name TEXT NOT NULL,
    name_key TEXT NOT NULL,
    example BOOLEAN NOT NULL,
    created_at BIGINT NOT NULL,
    UNIQUE (name_key, example)
);

-- A set-up is never edited: a change makes the next one, whose parent it was made from.
CREATE TABLE set_up (
    id ${pk},
    car_id BIGINT NOT NULL REFERENCES car (id),
    parent_id BIGINT REFERENCES set_up (id),
    kind TEXT NOT NULL,
    note TEXT NOT NULL,
    created_at BIGINT NOT NULL
);

CREATE TABLE track (
    id ${pk},
    name TEXT NOT NULL,
    name_key TEXT NOT NULL UNIQUE,
    created_at BIGINT NOT NULL
);

CREATE TABLE lane (
    id ${pk},
    track_id BIGINT NOT NULL REFERENCES track (id),
    name TEXT NOT NULL,
    name_key TEXT NOT NULL,
    created_at BIGINT NOT NULL,
    UNIQUE (track_id, name_key)
);

CREATE TABLE driver (
    id ${pk},
    name TEXT NOT NULL,
    name_key TEXT NOT NULL UNIQUE,
    created_at BIGINT NOT NULL
);

-- Laps of one set-up on one lane, hands off the car.
CREATE TABLE run (
    id ${pk},
    set_up_id BIGINT NOT NULL REFERENCES set_up (id),
    track_id BIGINT NOT NULL REFERENCES track (id),
    lane_id BIGINT REFERENCES lane (id),
    driver_id BIGINT REFERENCES driver (id),
    saved_at BIGINT NOT NULL
);

-- As timed; position is the order driven from 0, lap_number what the racer counted.
CREATE TABLE raw_lap (
    run_id BIGINT NOT NULL REFERENCES run (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    lap_number INTEGER NOT NULL CHECK (lap_number >= 1),
    seconds DOUBLE PRECISION NOT NULL CHECK (seconds >= 0.001 AND seconds <= 3600),
    PRIMARY KEY (run_id, position)
);

-- The racer's word against the rules, in the order given.
CREATE TABLE overrule (
    run_id BIGINT NOT NULL REFERENCES run (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    lap_number INTEGER NOT NULL CHECK (lap_number >= 1),
    kind TEXT NOT NULL,
    reason TEXT NOT NULL,
    said_at BIGINT NOT NULL,
    PRIMARY KEY (run_id, position)
);

-- One change judged, with everything that was fixed before the laps were looked at.
CREATE TABLE comparison (
    id ${pk},
    car_id BIGINT NOT NULL REFERENCES car (id),
    before_set_up_id BIGINT NOT NULL REFERENCES set_up (id),
    after_set_up_id BIGINT NOT NULL REFERENCES set_up (id),
    stays TEXT NOT NULL CHECK (stays IN ('before', 'after')),
    track_id BIGINT NOT NULL REFERENCES track (id),
    lane_id BIGINT REFERENCES lane (id),
    driver_id BIGINT REFERENCES driver (id),
    example BOOLEAN NOT NULL,
    alpha DOUBLE PRECISION NOT NULL CHECK (alpha >= 0 AND alpha <= 1),
    level_margin DOUBLE PRECISION NOT NULL CHECK (level_margin >= 0 AND level_margin <= 1),
    hand_timed BOOLEAN NOT NULL,
    plan TEXT,
    prior_autocorrelation DOUBLE PRECISION NOT NULL,
    prior_autocorrelation_laps DOUBLE PRECISION NOT NULL,
    prior_run_share DOUBLE PRECISION NOT NULL,
    prior_sessions INTEGER NOT NULL,
    saved_at BIGINT NOT NULL,
    archived_at BIGINT
);

CREATE TABLE comparison_run (
    comparison_id BIGINT NOT NULL REFERENCES comparison (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    side TEXT NOT NULL CHECK (side IN ('before', 'after')),
    run_id BIGINT NOT NULL UNIQUE REFERENCES run (id),
    PRIMARY KEY (comparison_id, position)
);

-- What the racer was shown, as it was shown: shown is JSON, the columns are what one wants to select by.
CREATE TABLE verdict (
    comparison_id BIGINT PRIMARY KEY REFERENCES comparison (id),
    decision TEXT NOT NULL,
    difference_s DOUBLE PRECISION,
    low_s DOUBLE PRECISION,
    high_s DOUBLE PRECISION,
    confidence DOUBLE PRECISION,
    steadiness TEXT,
    decided_at_lap INTEGER,
    shown TEXT NOT NULL,
    shown_at BIGINT NOT NULL
);

-- The same save, sent twice, is kept once.
CREATE TABLE request_key (
    request TEXT PRIMARY KEY,
    comparison_id BIGINT NOT NULL UNIQUE REFERENCES comparison (id),
    used_at BIGINT NOT NULL
);

CREATE INDEX run_of_set_up ON run (set_up_id);
CREATE INDEX comparison_of_car ON comparison (car_id);
