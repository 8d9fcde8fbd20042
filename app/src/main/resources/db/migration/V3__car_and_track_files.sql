-- Numbers as the owner wrote them down, word for word. Measuring or drawing anew adds a row; the newest counts.

-- About one set-up of a car: measuring is no change, a change makes another set-up.
CREATE TABLE car_file (
    id ${pk},
    car_id BIGINT NOT NULL REFERENCES car (id),
    set_up_id BIGINT NOT NULL REFERENCES set_up (id),
    content TEXT NOT NULL,
    saved_at BIGINT NOT NULL
);

CREATE TABLE track_file (
    id ${pk},
    track_id BIGINT NOT NULL REFERENCES track (id),
    example BOOLEAN NOT NULL,
    content TEXT NOT NULL,
    saved_at BIGINT NOT NULL
);

CREATE INDEX car_file_of_car ON car_file (car_id);
CREATE INDEX track_file_of_track ON track_file (track_id, example);
