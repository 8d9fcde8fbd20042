-- Parts owned, and what happened to each in its order. Where a part is and what it has run is worked out from these rows.

CREATE TABLE part (
    id ${pk},
    request TEXT NOT NULL UNIQUE,
    kind TEXT NOT NULL,
    name TEXT NOT NULL,
    note TEXT NOT NULL,
    added_at BIGINT NOT NULL
);

CREATE TABLE part_event (
    id ${pk},
    part_id BIGINT NOT NULL REFERENCES part (id),
    request TEXT NOT NULL UNIQUE,
    kind TEXT NOT NULL CHECK (kind IN ('fitted', 'off', 'laps', 'reminder', 'serviced', 'away', 'back')),
    car_id BIGINT REFERENCES car (id),
    service TEXT,
    laps INTEGER,
    happened_at BIGINT NOT NULL
);

CREATE INDEX part_event_of_part ON part_event (part_id);
