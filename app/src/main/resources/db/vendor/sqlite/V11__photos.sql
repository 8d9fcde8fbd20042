-- A photo of a car, as it was encoded anew: the newest takes the place of the one before, and it can be taken away for good.

CREATE TABLE car_photo (
    car_id BIGINT PRIMARY KEY REFERENCES car (id),
    jpeg BLOB NOT NULL,
    saved_at BIGINT NOT NULL
);
