-- The set-ups of a car as a tree: each step made from another by a change, and which of them is on the car.

-- content is the whole car file after the step, word for word; change_made what was given for it, as JSON.
CREATE TABLE car_step (
    id ${pk},
    car_id BIGINT NOT NULL REFERENCES car (id),
    parent_id BIGINT REFERENCES car_step (id),
    set_up_id BIGINT NOT NULL REFERENCES set_up (id),
    kind TEXT NOT NULL,
    words TEXT NOT NULL,
    change_made TEXT NOT NULL,
    content TEXT NOT NULL,
    made_at BIGINT NOT NULL
);

-- The last row of a car says which step is on it.
CREATE TABLE on_bench (
    id ${pk},
    car_id BIGINT NOT NULL REFERENCES car (id),
    step_id BIGINT NOT NULL REFERENCES car_step (id),
    why TEXT NOT NULL CHECK (why IN ('step', 'undo', 'back', 'verdict')),
    put_at BIGINT NOT NULL
);

-- The same log or undo, sent twice, is done once.
CREATE TABLE bench_request (
    request TEXT PRIMARY KEY,
    on_bench_id BIGINT NOT NULL UNIQUE REFERENCES on_bench (id),
    used_at BIGINT NOT NULL
);

CREATE INDEX car_step_of_car ON car_step (car_id);
CREATE INDEX on_bench_of_car ON on_bench (car_id);
